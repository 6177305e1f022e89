package kerfwright.planner.bench;

import java.util.List;
import java.util.Objects;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.material.Material;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.tool.Instrument;
import kerfwright.planner.tool.WorkingPart;
import kerfwright.quantity.Length;
import kerfwright.quantity.RotationalSpeed;
import org.jspecify.annotations.Nullable;

/**
 * A new instrument at the wall of one layer, by the models a plan uses. The contact is 3 mm long
 * and takes 0.05 mm (project settings).
 *
 * @param layer the layer
 * @param diameterMm head diameter
 * @param loadN load of the hand
 * @param rpm speed under that load
 * @param waterMlPerMin water reaching the tip
 */
public record Bench(
    Material layer, double diameterMm, double loadN, double rpm, double waterMlPerMin) {
  private static final double CONTACT_M = 3e-3;
  private static final double DEPTH_M = 50e-6;
  private static final double HEAD_MM = 4;
  private static final double OVERALL_MM = 19;

  /** The same at another load. */
  public Bench atLoad(double newton) {
    return new Bench(layer, diameterMm, newton, rpm, waterMlPerMin);
  }

  /** The same at another speed. */
  public Bench atRpm(double other) {
    return new Bench(layer, diameterMm, loadN, other, waterMlPerMin);
  }

  /** The same with other water. */
  public Bench withWater(double mlPerMin) {
    return new Bench(layer, diameterMm, loadN, rpm, mlPerMin);
  }

  /** The same in another layer. */
  public Bench in(Material other) {
    return new Bench(other, diameterMm, loadN, rpm, waterMlPerMin);
  }

  public Engagement contact() {
    return new Engagement(diameterMm * 1e-3, CONTACT_M, DEPTH_M);
  }

  public double rimMPerS() {
    return Math.PI * diameterMm * 1e-3 * rpm / 60;
  }

  /** A new diamond instrument of this size. */
  public WorkingPart diamond(GritClass grit) {
    return part(tool(InstrumentKind.DIAMOND, grit, null));
  }

  /** A new carbide bur of this size. */
  public WorkingPart carbide(int blades) {
    return part(tool(InstrumentKind.CARBIDE, null, blades));
  }

  /** An instrument of this size, a taper with a round end. */
  public InstrumentProperties tool(
      InstrumentKind kind, @Nullable GritClass grit, @Nullable Integer blades) {
    return tool(kind, grit, blades, diameterMm, null);
  }

  /** The same of any size and with the maker's limit. */
  public static InstrumentProperties tool(
      InstrumentKind kind,
      @Nullable GritClass grit,
      @Nullable Integer blades,
      double headMm,
      @Nullable RotationalSpeed maximum) {
    return new InstrumentProperties(
        kind,
        null,
        null,
        ShapeFamily.TAPER_ROUND_END,
        "taper, round end",
        grit,
        blades,
        false,
        Length.ofMillimetres(headMm),
        Length.ofMillimetres(HEAD_MM),
        ShankType.FG,
        Length.ofMillimetres(OVERALL_MM),
        maximum,
        List.of());
  }

  /** New and never sterilised. */
  public static Instrument fresh(InstrumentProperties tool) {
    var fresh = new DrawerInstrument("new", tool, 0, 0, DrawerInstrument.State.CLEAN);
    return Objects.requireNonNull(Instrument.of(fresh), "grit or blades are not known");
  }

  public static WorkingPart part(InstrumentProperties tool) {
    return fresh(tool).part();
  }

  public CutResult cut(WorkingPart part) {
    return part.cut(
        layer.typical(), contact(), new OperatingPoint(loadN, rimMPerS(), waterMlPerMin, 1));
  }

  /** Rate, mm3 a minute. */
  public double rateMm3PerMin(WorkingPart part) {
    return cut(part).removalM3PerS() * 60e9;
  }

  /** Roughness left, micrometres. */
  public double raUm(WorkingPart part) {
    return part.raM(layer.typical(), cut(part)) * 1e6;
  }

  /** What a new instrument cuts of the layer until it is worn out, mm3. */
  public double lifeMm3(WorkingPart part) {
    return 1e9 / part.livesPerM3(layer.typical(), rimMPerS());
  }
}
