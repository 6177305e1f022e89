package kerfwright.app.drawer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import kerfwright.app.stocklist.ColumnMapping;
import kerfwright.app.stocklist.Drafts;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.stocklist.ListedRow;
import kerfwright.app.stocklist.RowMeaning;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Outcome;
import kerfwright.practice.drawer.StockItem;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Lists being written, each on a thread of its own; what counts stands in the database. */
public final class Takeovers {
  private static final Logger LOG = LoggerFactory.getLogger(Takeovers.class);

  /**
   * How far one list is.
   *
   * @param rows rows understood so far
   * @param of rows in all
   * @param running false before it began and after it ended
   * @param problem why it ended without writing, or empty
   */
  public record Progress(int rows, int of, boolean running, String problem) {}

  private final Map<UUID, Progress> running = new ConcurrentHashMap<>();
  private final DrawerService service;
  private final Drafts drafts;

  Takeovers(DrawerService service, Drafts drafts) {
    this.service = service;
    this.drafts = drafts;
  }

  Progress progress(UUID id) {
    return running.getOrDefault(id, new Progress(0, 0, false, ""));
  }

  /** Begins, unless it runs or was done already. */
  void begin(
      UUID id, Drafts.Draft draft, ColumnMapping mapping, InstrumentState otherwise, Say say) {
    Progress first = new Progress(0, draft.table().rows().size(), true, "");
    Progress known = draft.batch() == null ? running.putIfAbsent(id, first) : first;
    boolean again = known != null && !known.running() && running.replace(id, known, first);
    if (known == null || again) {
      Thread thread = new Thread(() -> run(id, draft, mapping, otherwise, say), "takeover");
      thread.setDaemon(true);
      thread.start();
    }
  }

  private void run(
      UUID id, Drafts.Draft draft, ColumnMapping mapping, InstrumentState otherwise, Say say) {
    ListTable table = draft.table();
    int all = table.rows().size();
    String problem = "";
    try {
      RowMeaning meaning =
          new RowMeaning(otherwise, service::newId, labels(service, table, mapping));
      List<StockItem> items = new ArrayList<>();
      for (int i = 0; i < all; i++) {
        ListedRow row = meaning.read(table, mapping, i);
        if (row.item() != null) {
          items.add(row.item());
        }
        running.put(id, new Progress(i + 1, all, true, ""));
      }
      Outcome outcome = service.add(items, say.at("drawer.note-of-list", draft.name()));
      if (outcome.done()) {
        drafts.takenOver(id, Objects.requireNonNull(outcome.batch()));
      } else {
        MoveNotice.Line first = RefusalWords.line(say, outcome.obstacles().get(0));
        problem = say.at("listed.problem", first.label(), first.words());
      }
    } catch (RuntimeException failed) {
      LOG.error("list {} not taken over", id, failed);
      problem = say.at("drawer.takeover-failed");
    }
    running.put(id, new Progress(all, all, false, problem));
  }

  /** Labels of the list that are in the drawer already. */
  static Set<String> labels(DrawerService service, ListTable table, ColumnMapping mapping) {
    int column = mapping.fields().indexOf("id");
    Set<String> wanted = new HashSet<>();
    for (int i = 0; i < table.rows().size(); i++) {
      wanted.add(column < 0 ? "N" + table.lines().get(i) : table.rows().get(i).get(column));
    }
    return service.drawer().taken(wanted);
  }
}
