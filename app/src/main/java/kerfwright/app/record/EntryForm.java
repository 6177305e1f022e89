package kerfwright.app.record;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import kerfwright.app.form.Sent;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.piece.PieceKind;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.label.OwnCode;
import kerfwright.practice.record.Cut;
import kerfwright.practice.record.CutUse;
import kerfwright.practice.record.PlanStep;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.UseReport;
import kerfwright.practice.record.UsedInstrument;
import org.jspecify.annotations.Nullable;

/**
 * The form of one use: what was typed, and what is wrong with it.
 *
 * @param values what was typed, by field
 * @param faults by field, the key of what is wrong
 */
public record EntryForm(Map<String, String> values, Map<String, String> faults) {
  private static final List<String> FIELDS =
      List.of(
          "id",
          "case",
          "tooth",
          "instrument",
          "handpiece",
          "pouch",
          "lot",
          "rpm",
          "cut-s",
          "total-s",
          "load-n",
          "coolant",
          "by",
          "at");
  private static final int FEWEST_ROWS = 2;
  private static final int MOST_ROWS = 6;

  static EntryForm of(Function<String, @Nullable String> sent) {
    Map<String, String> values = new LinkedHashMap<>();
    for (String field : FIELDS) {
      put(values, field, sent);
    }
    for (int row = 1; row <= MOST_ROWS; row++) {
      put(values, "material-" + row, sent);
      put(values, "mm3-" + row, sent);
    }
    return new EntryForm(values, Map.of());
  }

  private static void put(
      Map<String, String> values, String field, Function<String, @Nullable String> sent) {
    String value = sent.apply(field);
    values.put(field, value == null ? "" : value.strip());
  }

  static EntryForm blank(UUID id, String by, Instant now, ZoneId zone) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("id", id.toString());
    values.put("by", by);
    values.put("at", minute(now, zone));
    return new EntryForm(values, Map.of());
  }

  static EntryForm of(RecordEntry entry, UUID id, Say say, ZoneId zone) {
    CutUse use = entry.use();
    Map<String, String> values = new LinkedHashMap<>();
    values.put("id", id.toString());
    values.put("case", use.caseReference());
    values.put("tooth", say.tooth(use.tooth()));
    values.put("instrument", use.instrument().label());
    CutUse.Piece handpiece = use.handpiece();
    values.put("handpiece", handpiece == null ? "" : handpiece.used().label());
    values.put("pouch", use.origin().pouch());
    values.put("lot", use.origin().lot());
    figure(values, "rpm", use.cut().setSpeedRpm(), say);
    figure(values, "cut-s", use.cut().cutSeconds(), say);
    figure(values, "total-s", use.cut().totalSeconds(), say);
    figure(values, "load-n", use.cut().loadN(), say);
    figure(values, "coolant", use.cut().coolantMlPerMin(), say);
    int row = 1;
    for (Map.Entry<String, Double> one : use.cut().mm3ByMaterial().entrySet()) {
      values.put("material-" + row, one.getKey());
      figure(values, "mm3-" + row++, one.getValue(), say);
    }
    values.put("by", use.by());
    values.put("at", minute(use.at(), zone));
    return new EntryForm(values, Map.of());
  }

  private static String minute(Instant at, ZoneId zone) {
    return LocalDateTime.ofInstant(at, zone).truncatedTo(ChronoUnit.MINUTES).toString();
  }

  private static void figure(
      Map<String, String> values, String field, @Nullable Double value, Say say) {
    if (value != null) {
      values.put(field, RecordWords.figure(say, value));
    }
  }

  public String at(String field) {
    return values.getOrDefault(field, "");
  }

  /** Rows of material and volume: all that are filled, and room for two. */
  public int rows() {
    int rows = FEWEST_ROWS;
    for (int row = 1; row <= MOST_ROWS; row++) {
      if (!at("material-" + row).isEmpty() || !at("mm3-" + row).isEmpty()) {
        rows = Math.max(rows, row);
      }
    }
    return rows;
  }

  public String fault(String field) {
    return faults.getOrDefault(field, "");
  }

  EntryForm with(Map<String, String> wrong) {
    return new EntryForm(values, wrong);
  }

  /**
   * The report this form makes, or empty with every fault in {@code wrong}.
   *
   * @param before the entry it corrects: what its form does not ask for stays, and so do seconds of
   *     the time that was not changed
   */
  Optional<UseReport> report(
      Say say,
      Drawer drawer,
      ZoneId zone,
      @Nullable RecordEntry before,
      Map<String, String> wrong) {
    Typed typed = new Typed(this, wrong);
    UUID id = Sent.id(at("id")).orElse(null);
    if (id == null) {
      wrong.put("id", "record.fault-form");
    }
    if (!CutUse.isReference(at("case"))) {
      wrong.put("case", "record.fault-case");
    }
    if (!CutUse.areInitials(at("by"))) {
      wrong.put("by", "record.fault-by");
    }
    if (!UseReport.isCode(at("pouch")) || !UseReport.isCode(at("lot"))) {
      wrong.put(UseReport.isCode(at("pouch")) ? "lot" : "pouch", "record.fault-code");
    }
    Tooth tooth = typed.tooth(say);
    UsedInstrument usedBefore = before == null ? null : before.use().instrument();
    StockItem item = typed.item("instrument", drawer, usedBefore);
    StockItem handpiece = typed.handpiece(drawer, item, before);
    Instant at = typed.time(zone, before);
    Cut cut = typed.cut();
    if (!wrong.isEmpty() || id == null || tooth == null || item == null || at == null) {
      return Optional.empty();
    }
    PlanStep step = before == null ? null : before.use().step();
    return Optional.of(
        new UseReport(
            id,
            at("case"),
            tooth,
            step,
            item.id(),
            handpiece == null ? null : handpiece.id(),
            at("pouch"),
            at("lot"),
            cut,
            at("by"),
            at));
  }

  /** Takes fields for what they mean. */
  private record Typed(EntryForm form, Map<String, String> wrong) {

    @Nullable Tooth tooth(Say say) {
      try {
        return ToothNotation.parse(form.at("tooth"), say.teeth());
      } catch (IllegalArgumentException none) {
        wrong.put("tooth", "record.fault-tooth");
        return null;
      }
    }

    @Nullable StockItem handpiece(
        Drawer drawer, @Nullable StockItem instrument, @Nullable RecordEntry before) {
      if (form.at("handpiece").isEmpty()) {
        return null;
      }
      CutUse.Piece was = before == null ? null : before.use().handpiece();
      StockItem found = item("handpiece", drawer, was == null ? null : was.used());
      boolean one =
          found != null
              && !found.equals(instrument)
              && found.pieceKind().filter(k -> k.sort() == PieceKind.Sort.HANDPIECE).isPresent();
      if (!one) {
        wrong.put("handpiece", "record.fault-handpiece");
      }
      return found;
    }

    @Nullable StockItem item(String field, Drawer drawer, @Nullable UsedInstrument before) {
      String label = form.at(field);
      Optional<StockItem> found =
          OwnCode.read(label)
              .filter(code -> code.kind() == OwnCode.Kind.INSTRUMENT)
              .flatMap(code -> drawer.find(code.id()))
              .or(() -> drawer.labelled(label));
      if (found.isEmpty() && before != null && before.label().equals(label)) {
        // renamed or taken out since
        found = drawer.find(before.id());
      }
      if (found.isEmpty()) {
        wrong.put(field, "record.fault-instrument");
      }
      return found.orElse(null);
    }

    @Nullable Instant time(ZoneId zone, @Nullable RecordEntry before) {
      String typed = form.at("at");
      if (before != null && typed.equals(minute(before.use().at(), zone))) {
        return before.use().at();
      }
      try {
        LocalDateTime time = LocalDateTime.parse(typed);
        if (time.getYear() >= 2000 && time.getYear() < 2200) {
          return time.atZone(zone).toInstant();
        }
      } catch (DateTimeException none) {
        // told below
      }
      wrong.put("at", "record.fault-time");
      return null;
    }

    Cut cut() {
      Double cutS = number("cut-s", Cut.MOST_SECONDS);
      Double totalS = number("total-s", Cut.MOST_SECONDS);
      if (cutS != null && totalS != null && cutS > totalS) {
        wrong.put("total-s", "record.fault-seconds");
        return Cut.UNTOLD;
      }
      Map<String, Double> mm3 = new TreeMap<>();
      for (int row = 1; row <= form.rows(); row++) {
        Double volume = number("mm3-" + row, Cut.MOST_MM3);
        String material = form.at("material-" + row);
        if (volume != null) {
          if (Materials.packaged().find(material).isEmpty()) {
            wrong.put("mm3-" + row, "record.fault-material");
          } else {
            mm3.merge(material, volume, Double::sum);
          }
        }
      }
      return new Cut(
          number("rpm", Cut.MOST_RPM),
          cutS,
          totalS,
          number("load-n", Cut.MOST_N),
          number("coolant", Cut.MOST_ML_PER_MIN),
          mm3);
    }

    private @Nullable Double number(String field, double most) {
      String text = form.at(field).replaceAll("[\\s\u00A0]", "").replace(',', '.');
      if (text.isEmpty()) {
        return null;
      }
      double value = text.matches("\\d{1,9}(\\.\\d{1,9})?") ? Double.parseDouble(text) : -1;
      if (value >= 0 && value <= most) {
        return value;
      }
      wrong.put(field, "record.fault-number");
      return null;
    }
  }
}
