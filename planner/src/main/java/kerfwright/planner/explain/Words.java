package kerfwright.planner.explain;

import java.util.Locale;
import kerfwright.catalogue.instrument.InstrumentProperties;

/** Numbers and instruments in words, rounded as a clinician reads them. */
public final class Words {
  private Words() {}

  /** Two figures, no exponent. */
  public static String figure(double value) {
    double size = Math.abs(value);
    if (size >= 100) {
      double step = Math.pow(10, Math.floor(Math.log10(size)) - 1);
      return String.format(Locale.ROOT, "%.0f", Math.round(value / step) * step);
    }
    String pattern = size >= 10 ? "%.0f" : size >= 1 ? "%.1f" : size >= 0.1 ? "%.2f" : "%.3f";
    return String.format(Locale.ROOT, pattern, value);
  }

  /** "450 000 rpm". */
  static String rpm(double rpm) {
    return String.format(Locale.ROOT, "%,.0f rpm", rpm).replace(',', ' ');
  }

  /** "350 nm" or "2.1 um". */
  public static String thickness(double metres) {
    return metres < 1e-6 ? figure(metres * 1e9) + " nm" : figure(metres * 1e6) + " um";
  }

  /** "40 s" or "3 min 20 s". */
  public static String time(double seconds) {
    if (seconds < 90) {
      return figure(Math.max(1, seconds)) + " s";
    }
    long whole = Math.round(seconds / 10) * 10;
    long rest = whole % 60;
    return whole / 60 + " min" + (rest == 0 ? "" : " " + rest + " s");
  }

  /** "coarse diamond instrument, taper round end, 1.8 mm". */
  public static String instrument(InstrumentProperties p) {
    StringBuilder words = new StringBuilder();
    if (p.grit() != null) {
      words.append(p.grit().label()).append(' ');
    }
    if (p.blades() != null && p.kind().bladed()) {
      words.append(p.blades()).append("-blade ");
      if (p.crossCut()) {
        words.append("cross-cut ");
      }
    }
    words.append(p.kind().label()).append(", ").append(p.shapeName());
    words.append(String.format(Locale.ROOT, ", %.1f mm", p.headDiameter().millimetres()));
    return words.toString();
  }
}
