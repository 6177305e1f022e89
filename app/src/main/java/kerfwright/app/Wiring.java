package kerfwright.app;

import kerfwright.app.casefile.CaseCatalogue;
import kerfwright.app.cli.ServeOptions;
import kerfwright.app.cli.Terminal;
import kerfwright.app.drawerfile.InstrumentLookup;
import kerfwright.app.input.BadInput;
import kerfwright.app.plan.PlanDrawings;
import kerfwright.app.plan.PlanMaker;
import kerfwright.planner.casework.DrawerSnapshot;

/**
 * What is wired to what: the one place where the parts meet, by hand. Nothing is loaded before it
 * is asked for, so that a command that only computes stays quick.
 *
 * @param cases what a case file may name
 * @param instruments what a row of the drawer means
 * @param plans the planner
 * @param demoDrawer the drawer of the invented practice
 * @param drawings draws plans
 * @param server starts the pages
 */
public record Wiring(
    CaseCatalogue cases,
    InstrumentLookup instruments,
    PlanMaker plans,
    DrawerSource demoDrawer,
    PlanDrawings drawings,
    PageServer server) {

  /** Where a drawer comes from. */
  @FunctionalInterface
  public interface DrawerSource {
    DrawerSnapshot read() throws BadInput;
  }

  /** Serves the pages until the process ends. */
  @FunctionalInterface
  public interface PageServer {
    int serve(ServeOptions options, Terminal terminal) throws BadInput;
  }
}
