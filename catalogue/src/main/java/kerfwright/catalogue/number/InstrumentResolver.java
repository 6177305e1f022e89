package kerfwright.catalogue.number;

import static java.util.Objects.requireNonNull;

import java.util.List;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.quantity.Length;
import kerfwright.quantity.RotationalSpeed;

/**
 * Turns a row of a drawer list into an instrument: number and catalogue fill what is blank,
 * contradictions are faults, and everything filled in that the number does not say is listed as
 * assumed.
 *
 * <p>The greatest speed is never filled in: it stands on the maker's label. An overall length known
 * from memory only is not filled in either, because the speed an overhanging shaft bears hangs on
 * it. Grit and number of blades stay unknown where neither row, number nor catalogue tells.
 */
public final class InstrumentResolver {
  private static final List<String> ABRASIVES =
      List.of("diamond", "aluminium-oxide", "silicon-carbide", "garnet");

  private InstrumentResolver() {}

  /** The instrument a row means, or every fault in the way. */
  public static Resolution resolve(DrawerFields fields) {
    RowPart row = new RowPart(fields);
    KindAndShape part = new KindAndShape(row);
    InstrumentKind kind = part.kind();
    KindAndShape.ResolvedShape shape = part.shape();
    GritAndBlades cutting = new GritAndBlades(row);
    GritClass grit = cutting.grit(kind);
    Integer blades = cutting.blades(kind);
    Dimensions dimensions = new Dimensions(row);
    Length diameter = dimensions.diameter(kind);
    ShankType shank = dimensions.shank();
    Length overall = dimensions.overall(shank);
    Length headLength = dimensions.headLength(shape, diameter, overall);
    Double maxRpm = row.read.number("max_rpm", fields.at("max_rpm"), 100, 600_000, " per min");
    boolean safeEnd = row.read.yes("safe_end", fields.at("safe_end"));
    String abrasive = row.read.oneOf("abrasive", fields.at("abrasive"), ABRASIVES);
    boolean complete =
        kind != null
            && shape != null
            && diameter != null
            && headLength != null
            && shank != null
            && overall != null;
    if (!complete || !row.read.faults().isEmpty()) {
      return new Resolution(null, row.read.faults());
    }
    return new Resolution(
        new InstrumentProperties(
            requireNonNull(kind),
            row.number == null ? null : row.number.number().encode(),
            row.us == null ? null : row.us.number(),
            requireNonNull(shape).family(),
            shape.name(),
            grit,
            blades,
            cutting.crossCut(),
            safeEnd,
            abrasive,
            requireNonNull(diameter),
            requireNonNull(headLength),
            requireNonNull(shank),
            requireNonNull(overall),
            maxRpm == null ? null : RotationalSpeed.ofRpm(maxRpm),
            row.assumed),
        List.of());
  }
}
