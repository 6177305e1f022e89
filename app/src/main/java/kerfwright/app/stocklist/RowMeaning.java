package kerfwright.app.stocklist;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import kerfwright.app.words.Remarks;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.number.InstrumentResolver;
import kerfwright.catalogue.number.Resolution;
import kerfwright.catalogue.piece.PieceKinds;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.quantity.Identified;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** Tells what the rows of a list mean. Keeps the labels met so far: each may stand once. */
public final class RowMeaning {
  private static final Set<String> YES =
      Set.of("yes", "y", "1", "true", "x", "single", "single-use");
  private static final List<Message> STATES =
      Arrays.stream(InstrumentState.values()).map(RowMeaning::label).toList();
  private static final Set<String> NO = Set.of("", "no", "n", "0", "false");

  private final InstrumentState otherwise;
  private final Supplier<UUID> ids;
  private final Set<String> labels;
  private final Map<DrawerFields, Resolution> known = new HashMap<>();

  /**
   * @param otherwise state of an instrument whose row tells none
   * @param ids makes the ids of the new items
   * @param taken labels that are in the drawer already
   */
  public RowMeaning(InstrumentState otherwise, Supplier<UUID> ids, Set<String> taken) {
    this.otherwise = otherwise;
    this.ids = ids;
    this.labels = new HashSet<>(taken);
  }

  /** Reads every row; none is left out. */
  public List<ListedRow> read(ListTable table, ColumnMapping mapping) {
    List<ListedRow> rows = new ArrayList<>();
    for (int i = 0; i < table.rows().size(); i++) {
      rows.add(read(table, mapping, i));
    }
    return rows;
  }

  /** Reads one row of a table. */
  public ListedRow read(ListTable table, ColumnMapping mapping, int index) {
    return read(
        table.lines().get(index), mapping.cells(table.rows().get(index)), mapping.maps("id"));
  }

  /** Reads one row by the names of the fields. */
  public ListedRow read(int line, Map<String, String> cells, boolean labelled) {
    List<RowProblem> problems = new ArrayList<>();
    List<Message> doubts = new ArrayList<>();
    String label = label(line, cells.getOrDefault("id", ""), labelled, problems, doubts);
    InstrumentProperties what = null;
    boolean rotary = PieceKinds.byId(cells.getOrDefault("kind", "")).isEmpty();
    if (rotary) {
      Resolution meaning =
          known.computeIfAbsent(new DrawerFields(cells), InstrumentResolver::resolve);
      meaning
          .faults()
          .forEach(fault -> problems.add(new RowProblem(fault.field(), Remarks.of(fault))));
      what = meaning.properties();
    } else {
      DrawerFields.COLUMNS.stream()
          .filter(name -> !name.equals("kind") && !cells.getOrDefault(name, "").isBlank())
          .forEach(name -> problems.add(RowProblem.of(name, "listed.rotary-only")));
    }
    if (what != null) {
      doubts.addAll(
          what.assumed().stream().map(one -> Message.of("listed.assumed", one.message())).toList());
      if (what.maximumSpeed() == null) {
        doubts.add(Message.of("listed.no-speed"));
      }
    }
    int uses = count("uses", cells, 0, 0, 100_000, problems);
    int sterilisations = count("sterilisations", cells, 0, 0, 100_000, problems);
    int pieces = count("pieces", cells, 1, 1, StockItem.MOST_PIECES, problems);
    BigDecimal price = price(cells.getOrDefault("price", ""), problems);
    boolean single = singleUse(cells.getOrDefault("single_use", ""), problems);
    InstrumentState state = state(cells.getOrDefault("state", ""), problems, doubts);
    String place = cells.getOrDefault("place", "");
    if (place.length() > 80) {
      problems.add(RowProblem.of("place", "listed.long-place", 80));
    }
    if (single && uses > 0 && state == InstrumentState.CLEAN) {
      problems.add(RowProblem.of("state", "listed.used-up"));
    }
    if (!problems.isEmpty() || rotary && what == null) {
      return new ListedRow(line, cells, null, problems, doubts);
    }
    DrawerFields fields = rotary ? new DrawerFields(cells) : ofKind(cells);
    StockItem item =
        new StockItem(
            ids.get(),
            1,
            label,
            pieces,
            fields,
            what,
            single,
            place,
            price,
            uses,
            sterilisations,
            Map.of(),
            state,
            false);
    return new ListedRow(line, cells, item, problems, doubts);
  }

  /** The kind alone, by its own id. */
  private static DrawerFields ofKind(Map<String, String> cells) {
    String kind = cells.getOrDefault("kind", "").strip().toLowerCase(Locale.ROOT);
    return new DrawerFields(Map.of("kind", kind));
  }

  private String label(
      int line, String given, boolean labelled, List<RowProblem> problems, List<Message> doubts) {
    if (!labelled) {
      String made = "N" + line;
      for (int more = 2; labels.contains(made); more++) {
        made = "N" + line + "-" + more;
      }
      labels.add(made);
      doubts.add(Message.of("listed.label-made", made));
      return made;
    }
    if (!StockItem.labelIsSound(given)) {
      problems.add(
          given.isEmpty()
              ? RowProblem.of("id", "listed.label-blank")
              : RowProblem.of("id", "listed.label-unsound", given));
    } else if (!labels.add(given)) {
      problems.add(RowProblem.of("id", "listed.label-taken", given));
    }
    return given;
  }

  private static int count(
      String field,
      Map<String, String> cells,
      int blank,
      int least,
      int most,
      List<RowProblem> problems) {
    String text = cells.getOrDefault(field, "");
    if (text.isEmpty()) {
      return blank;
    }
    if (!text.matches("\\d{1,6}") || Integer.parseInt(text) < least) {
      problems.add(RowProblem.of(field, "listed.no-count", text, least, most));
      return blank;
    }
    int value = Integer.parseInt(text);
    if (value > most) {
      problems.add(RowProblem.of(field, "listed.no-count", text, least, most));
    }
    return Math.min(value, most);
  }

  private static @Nullable BigDecimal price(String text, List<RowProblem> problems) {
    if (text.isEmpty()) {
      return null;
    }
    if (!text.matches("\\d{1,7}([.,]\\d{1,4})?")) {
      problems.add(RowProblem.of("price", "listed.no-price", text));
      return null;
    }
    return new BigDecimal(text.replace(',', '.'));
  }

  private static boolean singleUse(String text, List<RowProblem> problems) {
    String word = text.toLowerCase(Locale.ROOT);
    if (!YES.contains(word) && !NO.contains(word)) {
      problems.add(RowProblem.of("single_use", "listed.no-yes-or-no", text));
    }
    return YES.contains(word);
  }

  private InstrumentState state(String text, List<RowProblem> problems, List<Message> doubts) {
    String id = text.toLowerCase(Locale.ROOT).replace(' ', '-');
    if (id.isEmpty()) {
      doubts.add(Message.of("listed.state-chosen", label(otherwise)));
      return otherwise;
    }
    if (id.equals("in-reprocessing")) {
      return InstrumentState.CLEANING;
    }
    InstrumentState state = Identified.of(InstrumentState.class, id).orElse(null);
    if (state == null) {
      problems.add(RowProblem.of("state", "listed.no-state", text, STATES));
      return otherwise;
    }
    return state;
  }

  private static Message label(InstrumentState state) {
    return Message.of("label.state-" + state.id());
  }
}
