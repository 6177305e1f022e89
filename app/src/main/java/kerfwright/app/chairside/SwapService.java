package kerfwright.app.chairside;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.StoredDocument;
import kerfwright.app.words.Say;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.planner.FixedSteps;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.plan.CutPlan;
import kerfwright.practice.chairside.CutRun;
import kerfwright.practice.drawer.StockItem;
import kerfwright.quantity.Finding;

/** Plans the rest of a run after a swap, and keeps the changed sheet. */
final class SwapService {
  private final ChairsidePages.Parts with;
  private final Say say;

  SwapService(ChairsidePages.Parts with, Say say) {
    this.with = with;
    this.say = say;
  }

  /** The changed sheet, or why the rest cannot be planned so. */
  ObjectNode answer(CutRun run, Swap swap) throws BadInput {
    String query = SheetText.of(run).query();
    CutCase cutCase = with.plans().read(QueryFields.of(query));
    Seen seen = swap.seen();
    if (seen != null) {
      Optional<CutCase> found = seen.in(cutCase);
      if (found.isEmpty()) {
        return refused(say.at("chairside.seen-impossible"));
      }
      query = with.plans().query(found.get());
      cutCase = with.plans().read(QueryFields.of(query));
    }
    ChairStock stock = ChairStock.of(with.drawer(), swap.items());
    CutPlan plan = null;
    for (Handpiece handpiece : fitting(cutCase, stock.item(swap.label()))) {
      CutPlan tried = rest(cutCase, stock, swap, handpiece);
      if (plan == null || better(tried, plan)) {
        plan = tried;
      }
    }
    if (plan == null) {
      return refused(say.at("chairside.swap-not-at-hand", swap.label()));
    }
    if (plan.refused()) {
      return refused(
          plan.findings().stream()
              .filter(one -> one.severity() == Finding.Severity.REFUSE)
              .map(one -> say.of(one.message()))
              .toArray(String[]::new));
    }
    ObjectNode answer = JsonNodeFactory.instance.objectNode();
    // what is chosen at the chair stays chosen there
    ObjectNode handpieces =
        ChairHandpieces.of(cutCase.handpieces(), with.drawer(), swap.items()).json(kind -> "");
    ObjectNode sheet = new RunSheet(say, stock).json(plan, query, handpieces);
    CutRun changed = run.with(StoredDocument.SHEET.text(sheet));
    // somebody swapped on another device: what is planned here counts for this one all the same
    with.runs().change(changed);
    answer.put("version", changed.version());
    answer.set("sheet", sheet);
    return answer;
  }

  private static ObjectNode refused(String... reasons) {
    ObjectNode answer = JsonNodeFactory.instance.objectNode();
    var told = answer.putArray("refused");
    for (String reason : reasons) {
      told.add(reason);
    }
    return answer;
  }

  private static List<Handpiece> fitting(CutCase cutCase, Optional<StockItem> item) {
    return cutCase.handpieces().stream()
        .filter(one -> item.isPresent() && item.get().properties().shank() == one.shank())
        .toList();
  }

  private CutPlan rest(CutCase cutCase, ChairStock stock, Swap swap, Handpiece handpiece) {
    List<FixedSteps.Taken> taken = new ArrayList<>(swap.done());
    taken.add(new FixedSteps.Taken(swap.label(), handpiece.id()));
    DrawerSnapshot snapshot = stock.withTwinsOf(Set.of(swap.label())).with(swap.label()).snapshot();
    return with.plans().rest(cutCase, snapshot, new FixedSteps(taken, swap.out()));
  }

  private static boolean better(CutPlan one, CutPlan than) {
    return !one.refused()
        && (than.refused() || one.totalTimeS().typical() < than.totalTimeS().typical());
  }
}
