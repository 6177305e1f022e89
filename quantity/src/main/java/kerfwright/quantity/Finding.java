package kerfwright.quantity;

import java.util.List;

/**
 * A clinical or physical "no", "take care" or "note" that travels with a plan as a value; web,
 * command line and record print the same one.
 *
 * @param severity refuse, warn or note
 * @param code stable and lower-case with hyphens, so that programs may rely on it
 * @param text one plain sentence or two, figures with their unit
 * @param sources where the statement comes from
 */
public record Finding(Severity severity, String code, String text, List<SourceKey> sources) {
  /** How much a finding weighs. */
  public enum Severity {
    REFUSE,
    WARN,
    NOTE;

    public String label() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  public Finding {
    if (!code.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      throw new IllegalArgumentException("Finding code must be words with hyphens, got " + code);
    }
    if (text.isBlank()) {
      throw new IllegalArgumentException("Finding " + code + " has no text");
    }
    sources = List.copyOf(sources);
  }

  public static Finding refuse(String code, String text, SourceKey... sources) {
    return new Finding(Severity.REFUSE, code, text, List.of(sources));
  }

  public static Finding warn(String code, String text, SourceKey... sources) {
    return new Finding(Severity.WARN, code, text, List.of(sources));
  }

  public static Finding note(String code, String text, SourceKey... sources) {
    return new Finding(Severity.NOTE, code, text, List.of(sources));
  }
}
