package kerfwright.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A constant known by one id in files, forms, bundles and JSON: its name in small letters. */
public interface Identified {
  String name();

  /** Such as {@code read-only} for {@code READ_ONLY}. */
  default String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The ids of all constants, in their order. */
  static <E extends Enum<E> & Identified> List<String> ids(Class<E> all) {
    return Arrays.stream(all.getEnumConstants()).map(one -> one.id()).toList();
  }

  /** The constant of an id; empty where none has it. */
  static <E extends Enum<E> & Identified> Optional<E> of(Class<E> all, @Nullable String id) {
    return Arrays.stream(all.getEnumConstants()).filter(one -> one.id().equals(id)).findFirst();
  }
}
