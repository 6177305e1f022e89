package kerfwright.app.daypage;

import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kerfwright.app.input.BadInput;
import kerfwright.app.kept.Sitting;
import kerfwright.app.words.Say;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DaySetting;
import kerfwright.practice.daylist.TrayTemplate;
import kerfwright.practice.kept.KeptCase;
import org.jspecify.annotations.Nullable;

/**
 * An appointment as typed.
 *
 * @param values fields by name
 * @param faults what is wrong, by field
 */
public record BookingForm(Map<String, String> values, Map<String, String> faults) {
  private static final int USUAL_MINUTES = 60;
  private static final List<String> FIELDS =
      List.of("id", "reference", "tooth", "chair", "start", "minutes", "tray", "case");

  /** Reads what was sent. */
  static BookingForm of(Function<String, @Nullable String> sent) {
    Map<String, String> values = new LinkedHashMap<>();
    for (String name : FIELDS) {
      String value = sent.apply(name);
      values.put(name, value == null ? "" : value.strip());
    }
    return new BookingForm(values, Map.of());
  }

  /** A new appointment for a kept case. */
  static BookingForm of(KeptCase kept, LocalTime start) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("reference", kept.reference());
    values.put("tooth", Integer.toString(kept.tooth().fdi()));
    values.put("start", start.toString());
    values.put("minutes", Integer.toString(USUAL_MINUTES));
    values.put("case", Sitting.text(List.of(kept.id())));
    return new BookingForm(values, Map.of());
  }

  /** The same form of other cases. */
  BookingForm of(String cases) {
    Map<String, String> changed = new LinkedHashMap<>(values);
    changed.put("case", cases);
    return new BookingForm(changed, faults);
  }

  /** The form of an appointment there is. */
  static BookingForm of(Booking b, List<TrayTemplate> trays) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("id", b.id());
    values.put("reference", b.caseReference());
    values.put("tooth", b.tooth());
    values.put("chair", b.chair());
    values.put("start", b.start().toString());
    values.put(
        "minutes", Integer.toString((b.end().toSecondOfDay() - b.start().toSecondOfDay()) / 60));
    boolean known = trays.stream().anyMatch(t -> t.name().equals(b.work()));
    values.put("tray", known ? b.work() : "");
    String text = b.caseText();
    values.put("case", text == null ? "" : text);
    return new BookingForm(values, Map.of());
  }

  public String at(String name) {
    return values.getOrDefault(name, "");
  }

  public String fault(String name) {
    return faults.getOrDefault(name, "");
  }

  BookingForm with(Map<String, String> found) {
    return new BookingForm(values, found);
  }

  private static boolean namesATooth(String text) {
    try {
      return !ToothNotation.parse(text).meanings().isEmpty();
    } catch (IllegalArgumentException none) {
      return false;
    }
  }

  /** The appointment, or faults in the map. */
  Optional<Booking> read(
      Say say,
      String id,
      @Nullable Booking before,
      List<TrayTemplate> trays,
      CaseNeeds needs,
      Map<String, String> found) {
    String reference = at("reference");
    if (!reference.matches("[\\p{L}\\p{N}._/#-]{1,40}")) {
      found.put("reference", say.at("day.reference-needed"));
    }
    String tooth = at("tooth");
    if (!tooth.isEmpty() && !namesATooth(tooth)) {
      found.put("tooth", say.at("day.tooth-needed"));
    }
    if (!DaySetting.isTime(at("start"))) {
      found.put("start", say.at("day.time-needed"));
    }
    TrayTemplate tray =
        trays.stream().filter(t -> t.name().equals(at("tray"))).findFirst().orElse(null);
    String minutes =
        at("minutes").isEmpty() && tray != null ? Integer.toString(tray.minutes()) : at("minutes");
    if (!minutes.matches("[1-9]\\d{0,2}") || Integer.parseInt(minutes) < 5) {
      found.put("minutes", say.at("day.minutes-needed"));
    }
    CaseNeeds.Asked asked = new CaseNeeds.Asked(List.of(), List.of());
    String work = "";
    String text = at("case");
    if (!text.isEmpty()) {
      work = say.at("day.by-plan");
      try {
        asked =
            before != null && text.equals(before.caseText())
                ? new CaseNeeds.Asked(before.needs(), before.pieces())
                : needs.of(text);
      } catch (BadInput bad) {
        List<String> all = bad.faults().stream().map(fault -> fault.in(say)).toList();
        found.put("case", String.join("; ", all));
      }
    } else if (tray != null) {
      work = tray.name();
      asked = new CaseNeeds.Asked(tray.needs(), List.of());
    } else if (before != null && !before.needs().isEmpty()) {
      work = before.work();
      asked = new CaseNeeds.Asked(before.needs(), List.of());
    } else {
      found.put("tray", say.at("day.work-needed"));
    }
    if (!found.isEmpty()) {
      return Optional.empty();
    }
    LocalTime start = LocalTime.parse(at("start"));
    LocalTime end = start.plusMinutes(Integer.parseInt(minutes));
    return Optional.of(
        new Booking(
            id,
            at("chair"),
            start,
            end,
            reference,
            tooth,
            work,
            text.isEmpty() ? null : text,
            asked.needs(),
            asked.pieces()));
  }
}
