package kerfwright.app.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import kerfwright.app.plan.Words;
import kerfwright.app.today.UsualSet;
import kerfwright.app.words.Say;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.practice.drawer.StockItem;

/**
 * An instrument whose want refuses a plan, with the form that adds it: what a plan with a usual set
 * beside the drawer would take from that set.
 *
 * @param words what it is
 * @param form address of the form, filled in but for the label and the maximum speed
 */
public record Missing(String words, String form) {
  /** Only to look what would serve: what is added takes its speed from its package. */
  private static final int FRICTION_GRIP_RPM = 450_000;

  private static final int LATCH_RPM = 100_000;
  private static final String MARK = "usual set ";

  /** What to add; empty where more than instruments is wanting. */
  static List<Missing> of(Say say, PlanService service, CutCase cutCase) {
    Map<String, StockItem> usual = new LinkedHashMap<>();
    List<DrawerInstrument> all = new ArrayList<>(service.clean().instruments());
    for (StockItem piece :
        UsualSet.pieces(FRICTION_GRIP_RPM, LATCH_RPM, "", Set.of(), UUID::randomUUID)) {
      String id = MARK + piece.label();
      usual.put(id, piece);
      all.add(new DrawerInstrument(id, piece.properties(), 0, 0, DrawerInstrument.State.CLEAN));
    }
    CutPlan plan = service.plan(cutCase, new DrawerSnapshot(all));
    if (plan.refused()) {
      return List.of();
    }
    return plan.steps().stream()
        .map(PlannedStep::instrument)
        .map(DrawerInstrument::id)
        .distinct()
        .filter(usual::containsKey)
        .map(id -> of(say, java.util.Objects.requireNonNull(usual.get(id))))
        .toList();
  }

  private static Missing of(Say say, StockItem piece) {
    String query =
        DrawerFields.COLUMNS.stream()
            .filter(name -> !name.equals("max_rpm") && !piece.fields().at(name).isEmpty())
            .map(name -> name + "=" + encoded(piece.fields().at(name)))
            .collect(Collectors.joining("&"));
    return new Missing(Words.instrument(say, piece.properties()), "/drawer/new?" + query);
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
