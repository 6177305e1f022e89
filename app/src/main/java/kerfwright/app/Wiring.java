package kerfwright.app;

import java.util.List;
import kerfwright.app.casefile.CaseCatalogue;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.casefile.UsualStackFindings;
import kerfwright.app.cli.ServeOptions;
import kerfwright.app.cli.Terminal;
import kerfwright.app.demo.DemoPractice;
import kerfwright.app.drawerfile.DrawerFile;
import kerfwright.app.drawerfile.InstrumentLookup;
import kerfwright.app.drawerfile.PackagedInstruments;
import kerfwright.app.input.BadInput;
import kerfwright.app.plan.PlanMaker;
import kerfwright.app.web.Serving;
import kerfwright.planner.Planner;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;

/**
 * What is wired to what: the one place where the parts meet, by hand. Nothing is loaded before it
 * is asked for, so that a command that only computes stays quick.
 *
 * @param cases what a case file may name
 * @param instruments what a row of the drawer means
 * @param plans the planner
 * @param demoDrawer the drawer of the invented practice
 * @param demoCases its cases
 * @param server starts the pages
 */
public record Wiring(
    CaseCatalogue cases,
    InstrumentLookup instruments,
    PlanMaker plans,
    Source<DrawerSnapshot> demoDrawer,
    Source<List<CutCase>> demoCases,
    PageServer server) {

  /** The parts as they ship. */
  public static Wiring production() {
    CaseCatalogue cases = new CaseCatalogue();
    InstrumentLookup instruments = new PackagedInstruments();
    return new Wiring(
        cases,
        instruments,
        (cutCase, drawer, options) ->
            UsualStackFindings.addTo(Planner.plan(cutCase, drawer, options)),
        () -> DemoPractice.drawer(new DrawerFile(instruments)),
        () -> DemoPractice.cases(new CaseFile(cases)),
        (wiring, options, terminal) -> Serving.serve(wiring, options, terminal));
  }

  /** Something read when it is needed. */
  @FunctionalInterface
  public interface Source<T> {
    T read() throws BadInput;
  }

  /** Serves the pages until the process ends. */
  @FunctionalInterface
  public interface PageServer {
    int serve(Wiring wiring, ServeOptions options, Terminal terminal) throws BadInput;
  }
}
