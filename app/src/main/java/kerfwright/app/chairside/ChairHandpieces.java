package kerfwright.app.chairside;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.piece.PieceKind;
import kerfwright.planner.plan.CutPlan;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;

/**
 * The handpieces of the drawer a run can be cut with, by kind: first what is the run's own already,
 * then what is clean, then what lies on another tray.
 */
public final class ChairHandpieces {
  /** Chosen where somebody turns in one that is not in the drawer. */
  public static final String NONE = "none";

  private final Map<String, List<StockItem>> byKind;

  private ChairHandpieces(Map<String, List<StockItem>> byKind) {
    this.byKind = byKind;
  }

  /**
   * Those of these kinds that are at hand.
   *
   * @param own ids of pieces this run has used, or that are laid out for it
   */
  static ChairHandpieces of(Collection<Handpiece> kinds, Drawer drawer, Set<UUID> own) {
    Set<StockItem> all = new LinkedHashSet<>();
    own.forEach(id -> drawer.find(id).filter(ChairStock::onTheTray).ifPresent(all::add));
    for (InstrumentState state : List.of(InstrumentState.CLEAN, InstrumentState.ON_TRAY)) {
      drawer.in(state).stream().sorted(Comparator.comparing(StockItem::label)).forEach(all::add);
    }
    Map<String, List<StockItem>> byKind = new LinkedHashMap<>();
    kinds.forEach(kind -> byKind.put(kind.id(), new ArrayList<>()));
    for (StockItem item : all) {
      List<StockItem> same = byKind.get(item.pieceKind().map(PieceKind::id).orElse(""));
      if (same != null) {
        same.add(item);
      }
    }
    return new ChairHandpieces(byKind);
  }

  /** The kinds the steps of a plan are cut with, in their order. */
  public static Set<String> kinds(CutPlan plan) {
    Set<String> kinds = new LinkedHashSet<>();
    plan.steps().forEach(step -> kinds.add(step.handpiece().id()));
    return kinds;
  }

  public List<StockItem> ofKind(String kind) {
    return byKind.getOrDefault(kind, List.of());
  }

  /** The id of the one meant: the one asked for, else the first; empty where there is none. */
  public String chosen(String kind, String asked) {
    List<String> ids = ofKind(kind).stream().map(item -> item.id().toString()).toList();
    return asked.equals(NONE) || ids.isEmpty() ? "" : ids.contains(asked) ? asked : ids.get(0);
  }

  /**
   * As the sheet of a run holds them.
   *
   * @param asked gives for a kind what was asked for, empty where nothing was
   */
  ObjectNode json(UnaryOperator<String> asked) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    byKind.forEach(
        (kind, items) -> {
          ObjectNode of = json.putObject(kind);
          of.put("chosen", chosen(kind, asked.apply(kind)));
          var pieces = of.putArray("pieces");
          items.forEach(item -> StepSheet.named(pieces.addObject(), item.label(), item));
        });
    return json;
  }
}
