package kerfwright.app.reference;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.words.Remarks;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.Shanks;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.number.FieldFault;
import kerfwright.catalogue.number.InstrumentResolver;
import kerfwright.catalogue.number.Resolution;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * An instrument as typed: by number, US size or properties. What a comparison or a drawing needs
 * and nobody said is taken as usual, and told.
 *
 * @param fields what was typed, by column of the drawer file
 * @param properties the instrument, or null where there are faults
 * @param assumed what was taken as usual
 * @param faults what is wrong, by column
 */
public record TypedInstrument(
    Map<String, String> fields,
    @Nullable InstrumentProperties properties,
    List<Message> assumed,
    Map<String, Message> faults) {
  private static final int MOST_FILLED = 4;

  public TypedInstrument {
    fields = Map.copyOf(fields);
    assumed = List.copyOf(assumed);
    faults = Map.copyOf(faults);
  }

  /** Reads what was typed; blank fields are left out. */
  public static TypedInstrument of(Map<String, String> typed) {
    Map<String, String> filled = new LinkedHashMap<>(typed);
    List<Message> assumed = new ArrayList<>();
    if (blank(filled, "kind") && !blank(filled, "us")) {
      filled.put("kind", "carbide");
      assumed.add(Message.of("reference.taken-carbide"));
    }
    Resolution resolution = InstrumentResolver.resolve(new DrawerFields(filled));
    for (int i = 0; i < MOST_FILLED && !resolution.resolved(); i++) {
      if (!fillIn(resolution.faults(), filled, assumed)) {
        break;
      }
      resolution = InstrumentResolver.resolve(new DrawerFields(filled));
    }
    Map<String, Message> faults = new LinkedHashMap<>();
    for (FieldFault fault : resolution.faults()) {
      faults.put(fault.field(), Remarks.of(fault));
    }
    InstrumentProperties properties = resolution.properties();
    List<Message> all = new ArrayList<>(assumed);
    if (properties != null) {
      properties.assumed().forEach(one -> all.add(one.message()));
    }
    return new TypedInstrument(typed, properties, all, faults);
  }

  private static boolean blank(Map<String, String> fields, String name) {
    return fields.getOrDefault(name, "").isBlank();
  }

  /** Fills in one blank that has a usual answer. */
  private static boolean fillIn(
      List<FieldFault> faults, Map<String, String> filled, List<Message> assumed) {
    for (FieldFault fault : faults) {
      if (fault.field().equals("shank") && blank(filled, "shank")) {
        filled.put("shank", "FG");
        assumed.add(Message.of("reference.taken-shank"));
        return true;
      }
    }
    for (FieldFault fault : faults) {
      if (fault.field().equals("overall_mm") && blank(filled, "overall_mm")) {
        ShankType shank = shank(filled);
        double usual =
            switch (shank) {
              case FG -> 19;
              case RA -> 22;
              case HP -> 44.5;
            };
        filled.put("overall_mm", Double.toString(usual));
        assumed.add(
            Message.of(
                "reference.taken-overall",
                Message.of("remark.mm", BigDecimal.valueOf(usual)),
                shank.name()));
        return true;
      }
    }
    return false;
  }

  private static ShankType shank(Map<String, String> filled) {
    String typed = filled.getOrDefault("shank", "").strip().toUpperCase(java.util.Locale.ROOT);
    for (ShankType type : ShankType.values()) {
      if (type.name().equals(typed)) {
        return type;
      }
    }
    String digits = filled.getOrDefault("iso", "").replaceAll("[^0-9]", "");
    return digits.length() >= 15
        ? Shanks.byCode(digits.substring(3, 6))
            .or(() -> Shanks.familyOf(digits.substring(3, 6)))
            .map(shank -> shank.type())
            .orElse(ShankType.FG)
        : ShankType.FG;
  }

  public String value(String field) {
    return fields.getOrDefault(field, "");
  }

  /** What is wrong with a field; empty where nothing is, or nothing was typed. */
  public String fault(Say say, String field) {
    Message fault = faults.get(field);
    return fault == null || !asked() ? "" : say.of(fault);
  }

  /** What was taken as usual, in words. */
  public String assumed(Say say) {
    return String.join("; ", assumed.stream().map(say::of).toList());
  }

  /** Whether anything was typed at all. */
  public boolean asked() {
    return fields.values().stream().anyMatch(value -> !value.isBlank());
  }
}
