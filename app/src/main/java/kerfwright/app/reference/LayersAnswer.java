package kerfwright.app.reference;

import java.util.LinkedHashMap;
import java.util.Map;
import kerfwright.app.words.Say;
import kerfwright.catalogue.stack.UsualStack;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.catalogue.tooth.ToothReading;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * The usual layers of a tooth.
 *
 * @param typed what was typed, by field
 * @param tooth the tooth, or null
 * @param stack the stack, or null
 * @param faults what is wrong, by field
 */
public record LayersAnswer(
    Map<String, String> typed,
    @Nullable Tooth tooth,
    @Nullable UsualStack stack,
    Map<String, Message> faults) {
  public LayersAnswer {
    typed = Map.copyOf(typed);
    faults = Map.copyOf(faults);
  }

  public static LayersAnswer of(Map<String, String> typed) {
    Map<String, Message> faults = new LinkedHashMap<>();
    UsualStacks stacks = UsualStacks.packaged();
    String toothText = typed.getOrDefault("tooth", "").strip();
    Tooth tooth = toothText.isEmpty() ? null : tooth(toothText, faults);
    String restoration = typed.getOrDefault("restoration", UsualStacks.NATURAL);
    if (!stacks.restorations().containsKey(restoration)) {
      faults.put("restoration", Message.of("reference.choose"));
    }
    String procedure = typed.getOrDefault("procedure", "access-cavity");
    if (!stacks.procedures().contains(procedure)) {
      faults.put("procedure", Message.of("reference.choose"));
    }
    Integer age = age(typed.getOrDefault("age", "").strip(), faults);
    UsualStack stack =
        tooth == null || !faults.isEmpty()
            ? null
            : stacks.find(tooth, restoration, procedure, age).orElse(null);
    if (tooth != null && stack == null && faults.isEmpty()) {
      faults.put("restoration", Message.of("reference.no-usual-layers"));
    }
    return new LayersAnswer(typed, tooth, stack, faults);
  }

  private static @Nullable Tooth tooth(String text, Map<String, Message> faults) {
    try {
      ToothReading reading = ToothNotation.parse(text);
      if (reading.ambiguous()) {
        for (ToothReading.Meaning meaning : reading.meanings()) {
          if (String.valueOf(meaning.tooth().fdi()).equals(text)) {
            return meaning.tooth();
          }
        }
        faults.put("tooth", ToothFaults.ambiguous(reading));
        return null;
      }
      return reading.only();
    } catch (IllegalArgumentException none) {
      faults.put("tooth", ToothFaults.unknown(text));
      return null;
    }
  }

  private static @Nullable Integer age(String text, Map<String, Message> faults) {
    if (text.isEmpty()) {
      return null;
    }
    if (!text.matches("\\d{1,3}") || Integer.parseInt(text) > 120) {
      faults.put("age", Message.of("reference.age-unsound", text));
      return null;
    }
    return Integer.valueOf(text);
  }

  public String restoration() {
    return stack == null ? UsualStacks.NATURAL : stack.restorationId();
  }

  public String value(String field) {
    return typed.getOrDefault(field, "");
  }

  public String fault(Say say, String field) {
    Message fault = faults.get(field);
    return fault == null ? "" : say.of(fault);
  }
}
