package kerfwright.practice.daylist;

import java.util.Locale;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;

/**
 * Names a type of instrument by what it is: kind, grit or blades, shape, size in tenths of a
 * millimetre, and shank or length where they are not the usual ones, for example
 * diamond-coarse-taper-round-end-014 or carbide-6-blade-cylinder-012-long.
 */
public final class TypeName {
  /**
   * Above these overall lengths a shank is longer than the usual one (lengths of ISO 6360 314, 204,
   * 104).
   */
  private static final double FG_USUAL_MM = 20.5;

  private static final double RA_USUAL_MM = 24;
  private static final double HP_USUAL_MM = 50;

  private TypeName() {}

  public static String of(InstrumentProperties p) {
    GritClass grit = p.grit();
    String how = grit != null ? grit.label() : p.blades() == null ? "" : p.blades() + "-blade";
    String words =
        String.join(" ", p.kind().id(), how, p.shape().label())
            + String.format(Locale.ROOT, " %03.0f", p.headDiameter().millimetres() * 10)
            + (p.shank() == ShankType.FG ? "" : " " + p.shank().id())
            + (p.overallLength().millimetres() > usualMm(p.shank()) ? " long" : "");
    return words.trim().replaceAll("[^a-z0-9]+", "-");
  }

  private static double usualMm(ShankType shank) {
    return switch (shank) {
      case FG -> FG_USUAL_MM;
      case RA -> RA_USUAL_MM;
      case HP -> HP_USUAL_MM;
    };
  }
}
