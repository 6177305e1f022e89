package kerfwright.catalogue.tooth;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kerfwright.quantity.SourceKey;

/**
 * Names of teeth in FDI, Universal and Palmer notation, permanent and primary.
 *
 * <p>FDI: quadrant, then position i from the midline (ISO 3950, read in standards-s34 and
 * standards-s35). Universal counts 1 to 32 from the upper right third molar along the upper arch
 * and back along the lower one, primary teeth A to T the same way (read in standards-s36 to
 * standards-s38; the formulas restate that order): quadrants 1 to 4 give 9 - i, 8 + i, 25 - i, 24 +
 * i; quadrants 5 to 8 letter number 6 - i, 5 + i, 16 - i, 15 + i. Palmer: 1 to 8 or A to E with the
 * sign of the quadrant's corner, typed UR, UL, LR, LL (read in standards-s35, standards-s37,
 * standards-s39).
 */
public final class ToothNotation {
  /** Where the three notations were read. */
  public static final List<SourceKey> SOURCES =
      List.of(
          new SourceKey("standards-s34"),
          new SourceKey("standards-s35"),
          new SourceKey("standards-s36"),
          new SourceKey("standards-s37"),
          new SourceKey("standards-s38"),
          new SourceKey("standards-s39"));

  private static final String[] CORNERS = {"UR", "UL", "LL", "LR"};
  private static final char[] SIGNS = {'\u2518', '\u2514', '\u250c', '\u2510'};
  private static final int[] UNIVERSAL_BASE = {9, 8, 25, 24, 6, 5, 16, 15};
  private static final List<Tooth> ALL = every();
  private static final Map<String, Tooth> FDI = names(ToothSystem.FDI);
  private static final Map<String, Tooth> UNIVERSAL = names(ToothSystem.UNIVERSAL);
  private static final Map<String, Tooth> PALMER = names(ToothSystem.PALMER);

  private ToothNotation() {}

  /** The tooth a text names in one system. */
  public static Tooth parse(String text, ToothSystem system) {
    return read(text.strip(), system)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "'"
                        + shortened(text)
                        + "' is no tooth in "
                        + system.label()
                        + "; expected "
                        + expected(system)));
  }

  /** What a text may mean in any system; says so where that is more than one tooth. */
  public static ToothReading parse(String text) {
    List<ToothReading.Meaning> meanings = new ArrayList<>();
    for (ToothSystem system : ToothSystem.values()) {
      read(text.strip(), system)
          .ifPresent(tooth -> meanings.add(new ToothReading.Meaning(system, tooth)));
    }
    if (meanings.isEmpty()) {
      throw new IllegalArgumentException(
          "'"
              + shortened(text)
              + "' names no tooth; expected FDI "
              + expected(ToothSystem.FDI)
              + ", or Universal "
              + expected(ToothSystem.UNIVERSAL)
              + ", or Palmer "
              + expected(ToothSystem.PALMER));
    }
    return new ToothReading(text.strip(), meanings);
  }

  public static String write(Tooth tooth, ToothSystem system) {
    return switch (system) {
      case FDI -> String.valueOf(tooth.fdi());
      case UNIVERSAL -> universal(tooth);
      case PALMER -> CORNERS[corner(tooth)] + palmerPosition(tooth);
    };
  }

  /** Palmer with the corner sign: the position stands on the side of the midline. */
  public static String palmerSign(Tooth tooth) {
    char sign = SIGNS[corner(tooth)];
    return tooth.right() ? palmerPosition(tooth) + sign : sign + palmerPosition(tooth);
  }

  /** Name in words, e.g. "permanent upper right first molar". */
  public static String name(Tooth tooth) {
    int i = tooth.position();
    String order =
        switch (tooth.toothClass()) {
          case INCISOR -> i == 1 ? "central " : "lateral ";
          case CANINE -> "";
          case PREMOLAR -> i == 4 ? "first " : "second ";
          case MOLAR -> {
            int first = tooth.primary() ? 4 : 6;
            yield i == first ? "first " : i == first + 1 ? "second " : "third ";
          }
        };
    return (tooth.primary() ? "primary " : "permanent ")
        + (tooth.upper() ? "upper " : "lower ")
        + (tooth.right() ? "right " : "left ")
        + order
        + tooth.toothClass().id();
  }

  /** All 52 teeth in FDI order. */
  public static List<Tooth> all() {
    return ALL;
  }

  private static List<Tooth> every() {
    List<Tooth> teeth = new ArrayList<>();
    for (int quadrant = 1; quadrant <= 8; quadrant++) {
      for (int i = 1; i <= (quadrant <= 4 ? 8 : 5); i++) {
        teeth.add(new Tooth(10 * quadrant + i));
      }
    }
    return List.copyOf(teeth);
  }

  private static Map<String, Tooth> names(ToothSystem system) {
    Map<String, Tooth> names = new HashMap<>();
    ALL.forEach(tooth -> names.put(write(tooth, system), tooth));
    if (system == ToothSystem.PALMER) {
      ALL.forEach(tooth -> names.put(palmerSign(tooth), tooth));
    }
    return names;
  }

  /** FDI also with a point between quadrant and position, as it is often written. */
  private static Optional<Tooth> read(String text, ToothSystem system) {
    String capitals = text.toUpperCase(Locale.ROOT);
    return Optional.ofNullable(
        switch (system) {
          case FDI -> FDI.get(text.matches("\\d\\.\\d") ? text.replace(".", "") : text);
          case UNIVERSAL -> UNIVERSAL.get(capitals);
          case PALMER -> PALMER.get(capitals.replaceAll("[\\s-]+", ""));
        });
  }

  private static String universal(Tooth tooth) {
    int base = UNIVERSAL_BASE[tooth.fdi() / 10 - 1];
    boolean falling = base == 9 || base == 25 || base == 6 || base == 16;
    int count = falling ? base - tooth.position() : base + tooth.position();
    return tooth.primary() ? String.valueOf((char) ('A' + count - 1)) : String.valueOf(count);
  }

  private static int corner(Tooth tooth) {
    return (tooth.fdi() / 10 - 1) % 4;
  }

  private static String palmerPosition(Tooth tooth) {
    return tooth.primary()
        ? String.valueOf((char) ('A' + tooth.position() - 1))
        : String.valueOf(tooth.position());
  }

  private static String expected(ToothSystem system) {
    return switch (system) {
      case FDI ->
          "11 to 18, 21 to 28, 31 to 38, 41 to 48, primary 51 to 55, 61 to 65, 71 to 75, 81 to 85";
      case UNIVERSAL -> "1 to 32, primary A to T";
      case PALMER -> "UR, UL, LR or LL with 1 to 8, primary A to E (or the corner sign)";
    };
  }

  private static String shortened(String text) {
    return text.length() <= 40 ? text : text.substring(0, 37) + "...";
  }
}
