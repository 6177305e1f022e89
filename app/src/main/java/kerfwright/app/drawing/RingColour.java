package kerfwright.app.drawing;

import java.util.Arrays;
import java.util.Locale;

/** Ring colours as drawn. The name always stands beside the ring. */
public enum RingColour {
  BLACK("#1c1c1c"),
  GREEN("#2e8b4f"),
  BLUE("#2f62b3"),
  RED("#c4382f"),
  YELLOW("#e3b505"),
  WHITE("#ffffff");

  private final String fill;

  RingColour(String fill) {
    this.fill = fill;
  }

  /** The first colour named; white where none is. */
  public static RingColour named(String ring) {
    String first = ring.toUpperCase(Locale.ROOT).split(" ")[0];
    return Arrays.stream(values()).filter(c -> c.name().equals(first)).findFirst().orElse(WHITE);
  }

  public String attributes() {
    return "class=\"d-ring\" fill=\"" + fill + "\" stroke=\"#1f2a30\" stroke-width=\"0.8\"";
  }
}
