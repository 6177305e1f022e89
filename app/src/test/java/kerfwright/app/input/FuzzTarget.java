package kerfwright.app.input;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseCatalogue;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.casefile.CaseReader;
import kerfwright.app.chairside.ChairForms;
import kerfwright.app.chairside.QueryFields;
import kerfwright.app.day.DayFile;
import kerfwright.app.daypage.DayForms;
import kerfwright.app.drawer.DrawerForms;
import kerfwright.app.drawerfile.DrawerFile;
import kerfwright.app.heatfile.HeatFile;
import kerfwright.app.label.LabelForms;
import kerfwright.app.learning.OwnCutForm;
import kerfwright.app.record.RecordForms;
import kerfwright.app.stocklist.ColumnMapping;
import kerfwright.app.stocklist.ListFile;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.stocklist.RowMeaning;
import kerfwright.app.stocklist.UnreadableList;
import kerfwright.app.web.caseform.CaseForm;
import kerfwright.app.web.caseform.FormFaults;
import kerfwright.app.web.caseform.FormFix;
import kerfwright.app.web.caseform.Prefill;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.label.ElementString;
import kerfwright.practice.record.CanonicalText;

/**
 * A reader of what comes from outside.
 *
 * @param name what it reads
 * @param group with which others it shares a fuzzer
 * @param reader reads a text; throws only what is a fault
 */
record FuzzTarget(String name, Group group, Reader reader) {
  /**
   * Those that share a fuzzer: a quick reader has its own, so that nothing else takes its turns.
   */
  enum Group {
    TOOTH("kerfwright.catalogue.tooth.**", 100, 6, "-mutate_depth=2"),
    // ASCII alone is half as many characters, so that it comes further in the same time
    LABEL("kerfwright.practice.label.**", 60, 14, "-mutate_depth=2", "-only_ascii=1"),
    RECORD("kerfwright.practice.record.**", 300, 2, "-mutate_depth=2"),
    CASE("kerfwright.app.**:kerfwright.planner.casework.**", 1_000, 14),
    DOCUMENTS("kerfwright.app.**:kerfwright.planner.casework.**", 1_000, 12),
    FORMS("kerfwright.app.**:kerfwright.planner.casework.**:kerfwright.practice.**", 1_000, 12);

    private final String packages;
    private final int longest;
    private final int ofAMinute;
    private final List<String> options;

    Group(String packages, int longest, int ofAMinute, String... options) {
      this.packages = packages;
      this.longest = longest;
      this.ofAMinute = ofAMinute;
      this.options = List.of(options);
    }

    /** What else the fuzzer is told. */
    List<String> options() {
      return options;
    }

    /** The packages whose ways the fuzzer follows. */
    String packages() {
      return packages;
    }

    /** The longest input it makes. */
    int longest() {
      return longest;
    }

    /** Its share of the time, in seconds of a minute. */
    int ofAMinute() {
      return ofAMinute;
    }
  }

  /** Reads a text. */
  interface Reader {
    void read(String text) throws BadInput, UnreadableList;
  }

  private static final Say SAY = Say.in(Language.ENGLISH);

  /** All of a group; what the others need is not loaded. */
  static List<FuzzTarget> of(Group group) {
    Map<String, Reader> readers =
        switch (group) {
          case TOOTH -> Map.of("tooth", text -> argument(() -> ToothNotation.parse(text)));
          case LABEL -> label(LocalDate.now().getYear());
          case RECORD -> Map.of("record", text -> argument(() -> CanonicalText.entry(text, "")));
          case CASE -> cases(new CaseFile(Wiring.production().cases()));
          case DOCUMENTS -> documents(Wiring.production());
          case FORMS -> forms(Wiring.production().cases());
        };
    List<FuzzTarget> all = new ArrayList<>();
    readers.forEach((name, reader) -> all.add(new FuzzTarget(name, group, reader)));
    return all;
  }

  private static Map<String, Reader> label(int year) {
    return Map.of("label", text -> argument(() -> ElementString.read(text, year)));
  }

  private static Map<String, Reader> cases(CaseFile cases) {
    return Map.of("case", text -> cases.yaml(source(text)));
  }

  private static Map<String, Reader> documents(Wiring wiring) {
    DrawerFile drawers = new DrawerFile(wiring.instruments());
    CaseFile cases = new CaseFile(wiring.cases());
    Map<String, Reader> all = new LinkedHashMap<>();
    all.put("case-json", text -> cases.json(source(text)));
    all.put("day", text -> new DayFile(one -> List.of()).read(source(text)));
    all.put("heat", text -> HeatFile.read(source(text)));
    all.put("drawer", text -> drawers.read(source(text)));
    all.put("list", FuzzTarget::list);
    return all;
  }

  private static Map<String, Reader> forms(CaseCatalogue cases) {
    StockItem item = item();
    Drawer drawer = Absent.but(item, Drawer.class);
    Map<String, Reader> all = new LinkedHashMap<>();
    all.put("case-form", text -> caseForm(text, cases));
    all.put("item-form", form(DrawerForms::item));
    all.put("list-form", form(DrawerForms::list));
    all.put("booking-form", form(DayForms::booking));
    all.put("day-form", form(DayForms::settings));
    all.put("sheet-form", form(LabelForms::sheet));
    all.put("use-form", form(sent -> RecordForms.use(sent, drawer)));
    all.put("own-cut-form", form(sent -> ownCut(sent, drawer)));
    all.put("chair-log", text -> ChairForms.log(text, drawer));
    return all;
  }

  private static SourceText source(String text) throws BadInput {
    try {
      return SourceText.of("fuzz", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
  }

  /**
   * A form whose fields come as those of an address, without control characters as from the web.
   */
  private static Reader form(Consumer<UnaryOperator<String>> form) {
    return text -> {
      Map<String, List<String>> fields = QueryFields.of(text);
      form.accept(name -> fields.containsKey(name) ? PlainText.of(fields.get(name).get(0)) : "");
    };
  }

  private static void list(String text) throws UnreadableList {
    ListTable table = ListFile.read("fuzz.csv", text.getBytes(StandardCharsets.UTF_8));
    new RowMeaning(InstrumentState.QUARANTINE, UUID::randomUUID, Set.of())
        .read(table, ColumnMapping.guess(table.header()));
  }

  private static void caseForm(String text, CaseCatalogue cases) {
    CaseForm form = CaseForm.ofQuery(text);
    CaseForm fixed = FormFix.of(form, form.value("do"));
    CaseForm full = new Prefill(cases).of(fixed);
    try {
      new CaseReader(cases).read(full.toNode(), "fuzz");
    } catch (BadInput told) {
      FormFaults.of(SAY, full, told.faults());
    }
  }

  private static void ownCut(UnaryOperator<String> sent, Drawer drawer) {
    Map<String, String> typed = new HashMap<>();
    OwnCutForm.FIELDS.forEach(name -> typed.put(name, sent.apply(name)));
    OwnCutForm.read(typed, drawer);
  }

  private static StockItem item() {
    Map<String, String> cells = Map.of("id", "D1", "iso", "806 314 001 524 012", "pieces", "1");
    StockItem item =
        new RowMeaning(InstrumentState.QUARANTINE, UUID::randomUUID, Set.of())
            .read(1, cells, true)
            .item();
    if (item == null) {
      throw new IllegalStateException("the instrument of the fuzzer is not sound");
    }
    return item;
  }

  /** For parsers whose own fault is this exception, as they document. */
  private static void argument(Runnable reading) {
    try {
      reading.run();
    } catch (IllegalArgumentException | DateTimeException documented) {
      // its own kind of fault
    }
  }
}
