package kerfwright.planner.tool;

import kerfwright.physics.cutting.BladedCutting;
import kerfwright.physics.cutting.BladedTool;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.CuttingConstants;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.material.Substance;
import kerfwright.physics.surface.Roughness;
import kerfwright.physics.wear.EdgeDulling;
import kerfwright.physics.wear.EdgeWear;

/**
 * A bur's working part.
 *
 * @param tool what cuts
 * @param livesUsed lives used before
 * @param sharpness share of the cut when new
 */
public record BladedPart(BladedTool tool, double livesUsed, double sharpness)
    implements WorkingPart {
  private static final double LEAST_SHARPNESS = 0.05;

  /** A working part with the sharpness that its use and steam leave. */
  public static BladedPart used(BladedTool tool, double livesUsed, double steamLeaves) {
    return new BladedPart(
        tool, livesUsed, Math.max(LEAST_SHARPNESS, EdgeDulling.after(livesUsed) * steamLeaves));
  }

  @Override
  public CutResult cut(
      CuttingConstants constants, Substance work, Engagement contact, OperatingPoint point) {
    return BladedCutting.cut(constants, tool, work, contact, point);
  }

  @Override
  public double raM(Substance work, CutResult cut) {
    return Roughness.ofBladesM(tool.blades(), work);
  }

  @Override
  public double livesPerM3(Substance work, double rimSpeedMPerS) {
    return EdgeWear.livesPerM3(work, tool.hardnessPa());
  }

  @Override
  public double forceRatio(Substance work, Engagement contact, double loadN) {
    return BladedCutting.forceRatio(tool, work, contact, loadN, sharpness);
  }

  @Override
  public double greatestForceRatio() {
    return BladedCutting.greatestForceRatio();
  }

  @Override
  public double hardnessPa() {
    return tool.hardnessPa();
  }

  @Override
  public double meanOver(double livesInStep, double steadyShare) {
    return livesInStep < 1e-9
        ? 1
        : livesInStep / EdgeDulling.slowness(livesUsed, livesInStep, steadyShare);
  }
}
