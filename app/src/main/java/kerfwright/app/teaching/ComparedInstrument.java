package kerfwright.app.teaching;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.material.Material;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.StrokeForces;
import kerfwright.physics.cutting.StrokeForces.WorkSide;
import kerfwright.physics.surface.Roughness;
import kerfwright.planner.bench.Bench;
import kerfwright.planner.plan.RatioBand;
import kerfwright.planner.plan.Stroke;
import kerfwright.planner.sequence.Prices;
import kerfwright.planner.tool.AbrasivePart;
import kerfwright.planner.tool.WorkingPart;
import kerfwright.planner.uncertainty.Against;
import kerfwright.quantity.Identified;

/**
 * One instrument at one speed, load and stroke on a layer, as a comparison shows it.
 *
 * @param tool kind with grit or blades, as an address carries it: diamond-coarse, carbide-6
 * @param side where the work lies
 * @param bench layer, size, load, speed and water
 * @param what the instrument
 * @param part its working part
 * @param cut what it does
 */
public record ComparedInstrument(
    String tool,
    WorkSide side,
    Bench bench,
    InstrumentProperties what,
    WorkingPart part,
    CutResult cut) {
  /** Volume that costs are told for, mm3. */
  static final double VOLUME_MM3 = 10;

  private static final int[] BLADES = {4, 6, 8, 12, 16, 30};

  /** Every tool that can be chosen. */
  public static List<String> tools() {
    List<String> tools = new ArrayList<>();
    Stream.of(GritClass.values()).forEach(grit -> tools.add("diamond-" + grit.id()));
    tools.add("sintered-diamond-coarse");
    IntStream.of(BLADES).forEach(blades -> tools.add("carbide-" + blades));
    tools.add("steel-6");
    tools.add("polymer-6");
    return tools;
  }

  static ComparedInstrument of(String tool, WorkSide side, Bench bench) {
    InstrumentProperties what = properties(tool, bench);
    WorkingPart part = Bench.part(what);
    return new ComparedInstrument(tool, side, bench, what, part, bench.cut(part));
  }

  public static InstrumentProperties properties(String tool, Bench bench) {
    for (InstrumentKind kind : InstrumentKind.values()) {
      String start = kind.id() + "-";
      if (tool.startsWith(start)) {
        String rest = tool.substring(start.length());
        return kind.bladed()
            ? bench.tool(kind, null, Integer.parseInt(rest))
            : bench.tool(kind, Identified.of(GritClass.class, rest).orElseThrow(), null);
      }
    }
    throw new IllegalArgumentException("No such tool: " + tool);
  }

  public Stroke stroke() {
    return side == WorkSide.LEFT ? Stroke.AGAINST_ROTATION : Stroke.WITH_ROTATION;
  }

  public boolean cuts() {
    return cut.removalM3PerS() > 0;
  }

  public double rateMm3PerMin() {
    return cut.removalM3PerS() * 60e9;
  }

  /** Its rate over that of another, with the band within one hand and one laboratory. */
  public RatioBand rateOver(ComparedInstrument other) {
    double ratio = cut.removalM3PerS() / other.cut.removalM3PerS();
    return Against.rates(part, other.part, ratio);
  }

  /** Force on the hand along the travel, N: positive pulls on. */
  public double alongTravelN() {
    return StrokeForces.alongTravelN(side, cut.tangentialN(), bench.contact());
  }

  public double energyJPerMm3() {
    return cut.specificEnergyJPerM3() * 1e-9;
  }

  public double raUm() {
    return part.raM(bench.layer().typical(), cut) * 1e6;
  }

  /** Depth the next pass must clear. */
  public double damageUm() {
    double grainN = part instanceof AbrasivePart ? cut.unitLoadN() : 0;
    Material layer = bench.layer();
    return 1e6 * Roughness.damageDepthM(raUm() * 1e-6, grainN, cut.brittleShare(), layer.typical());
  }

  public double lifeMm3() {
    return bench.lifeMm3(part);
  }

  /** What ten cubic millimetres cost, time and wear as seconds of chair time. */
  public double costS() {
    double seconds = VOLUME_MM3 / rateMm3PerMin() * 60;
    return seconds + Prices.ofWear(what.kind(), VOLUME_MM3 / lifeMm3());
  }

  String query(int number) {
    return String.format(
        Locale.ROOT,
        "&tool%1$d=%2$s&rpm%1$d=%3$s&load%1$d=%4$s&stroke%1$d=%5$s",
        number,
        tool,
        Scene.plain(bench.rpm()),
        Scene.plain(bench.loadN()),
        side == WorkSide.LEFT ? "against" : "with");
  }
}
