package kerfwright.catalogue.tooth;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What a text may mean where the system was not said; more than one meaning is an ambiguity the
 * user must settle, never the program.
 *
 * @param text what was typed
 * @param meanings each meaning with its system, at least one
 */
public record ToothReading(String text, List<Meaning> meanings) {
  /** One tooth under one system. */
  public record Meaning(ToothSystem system, Tooth tooth) {
    /** E.g. "11 in Universal: permanent upper left canine (FDI 23)". */
    public String inWords() {
      return ToothNotation.write(tooth, system)
          + " in "
          + system.label()
          + ": "
          + ToothNotation.name(tooth)
          + " (FDI "
          + tooth.fdi()
          + ")";
    }
  }

  public ToothReading {
    meanings = List.copyOf(meanings);
    if (meanings.isEmpty()) {
      throw new IllegalArgumentException("A reading needs a meaning");
    }
  }

  public boolean ambiguous() {
    return meanings.size() > 1;
  }

  /** The only meaning; an ambiguous reading throws, naming both. */
  public Tooth only() {
    if (ambiguous()) {
      throw new IllegalStateException(inWords());
    }
    return meanings.get(0).tooth();
  }

  public String inWords() {
    String all = meanings.stream().map(Meaning::inWords).collect(Collectors.joining("; or "));
    return ambiguous() ? "'" + text + "' is ambiguous: " + all + "; say which system" : all;
  }
}
