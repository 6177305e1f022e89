package kerfwright.app.form;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import kerfwright.app.words.Say;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.catalogue.tooth.ToothNotation;
import org.jspecify.annotations.Nullable;

/** What somebody looks for, field by field as it was typed, and the keys of what is wrong in it. */
public final class SearchFields {
  private final Map<String, String> values = new LinkedHashMap<>();
  private final List<String> faults = new ArrayList<>();

  public SearchFields(Function<String, @Nullable String> sent, String... fields) {
    for (String field : fields) {
      String value = sent.apply(field);
      values.put(field, value == null ? "" : value.strip());
    }
  }

  public String at(String field) {
    return values.getOrDefault(field, "");
  }

  public List<String> faults() {
    return faults;
  }

  /** True where nothing in particular is looked for. */
  public boolean everything() {
    return values.values().stream().allMatch(String::isEmpty);
  }

  /** The fields that are filled in, as an address carries them, each with an ampersand before. */
  public String address() {
    return values.entrySet().stream()
        .filter(one -> !one.getValue().isEmpty())
        .map(
            one ->
                "&"
                    + one.getKey()
                    + "="
                    + URLEncoder.encode(one.getValue(), StandardCharsets.UTF_8))
        .collect(Collectors.joining());
  }

  /** Null where nothing was typed. */
  public @Nullable String text(String field) {
    return at(field).isEmpty() ? null : at(field);
  }

  /** Null where nothing was typed, or nothing is found by it, which is a fault. */
  public <T> @Nullable T found(String field, String fault, Function<String, Optional<T>> find) {
    Optional<T> found = Optional.ofNullable(text(field)).flatMap(find);
    if (found.isEmpty() && !at(field).isEmpty()) {
      faults.add(fault);
    }
    return found.orElse(null);
  }

  public @Nullable Tooth tooth(Say say) {
    return found("tooth", "record.fault-tooth", typed -> tooth(typed, say));
  }

  private static Optional<Tooth> tooth(String typed, Say say) {
    try {
      return Optional.of(ToothNotation.parse(typed, say.teeth()));
    } catch (IllegalArgumentException none) {
      return Optional.empty();
    }
  }

  public @Nullable LocalDate day(String field) {
    return found(field, "record.fault-day", Day::of);
  }
}
