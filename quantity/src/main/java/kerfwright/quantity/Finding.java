package kerfwright.quantity;

import java.util.List;

/**
 * A clinical or physical "no", "take care" or "note" that travels with a plan as a value; web,
 * command line and record print the same one.
 *
 * @param severity refuse, warn or note
 * @param code stable and lower-case with hyphens, so that programs may rely on it
 * @param message one plain sentence or two, figures with their unit
 * @param sources where the statement comes from
 */
public record Finding(Severity severity, String code, Message message, List<SourceKey> sources) {
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
    sources = List.copyOf(sources);
  }

  public static Finding refuse(String code, Message message, SourceKey... sources) {
    return new Finding(Severity.REFUSE, code, message, List.of(sources));
  }

  public static Finding warn(String code, Message message, SourceKey... sources) {
    return new Finding(Severity.WARN, code, message, List.of(sources));
  }

  public static Finding note(String code, Message message, SourceKey... sources) {
    return new Finding(Severity.NOTE, code, message, List.of(sources));
  }
}
