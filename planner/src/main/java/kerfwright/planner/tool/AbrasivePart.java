package kerfwright.planner.tool;

import kerfwright.physics.cutting.AbrasiveCutting;
import kerfwright.physics.cutting.AbrasiveTool;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.CuttingConstants;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.material.Substance;
import kerfwright.physics.surface.Roughness;
import kerfwright.physics.wear.GrainDulling;
import kerfwright.physics.wear.GrainWear;
import kerfwright.physics.wear.WearConstants;

/**
 * A working part of grains in a bond: diamond, stone, disc, polisher.
 *
 * @param tool what cuts
 * @param reserveLayers layers of grain the bond holds
 * @param livesUsed lives used before
 * @param sharpness share of the cut when new
 */
public record AbrasivePart(
    AbrasiveTool tool, double reserveLayers, double livesUsed, double sharpness)
    implements WorkingPart {
  private static final double LEAST_SHARPNESS = 0.05;

  /** A working part with the sharpness that its use and steam leave. */
  public static AbrasivePart used(
      AbrasiveTool tool, double reserveLayers, double livesUsed, double steamLeaves) {
    double after = GrainDulling.after(WearConstants.TYPICAL, tool.grainSizeM(), livesUsed);
    return new AbrasivePart(
        tool, reserveLayers, livesUsed, Math.max(LEAST_SHARPNESS, after * steamLeaves));
  }

  @Override
  public CutResult cut(
      CuttingConstants constants, Substance work, Engagement contact, OperatingPoint point) {
    return AbrasiveCutting.cut(constants, tool, work, contact, point);
  }

  @Override
  public double raM(Substance work, CutResult cut) {
    return Roughness.ofAbrasiveM(tool.grainSizeM(), tool.rigidity(), cut);
  }

  @Override
  public double livesPerM3(Substance work, double rimSpeedMPerS) {
    return GrainWear.livesPerM3(work, tool.grainSizeM(), reserveLayers, rimSpeedMPerS);
  }

  @Override
  public double forceRatio(Substance work, Engagement contact, double loadN) {
    return AbrasiveCutting.forceRatio(
        CuttingConstants.TYPICAL, tool, work, contact, loadN, sharpness);
  }

  @Override
  public double greatestForceRatio() {
    return AbrasiveCutting.greatestForceRatio();
  }

  @Override
  public double hardnessPa() {
    return tool.grainHardnessPa();
  }

  @Override
  public double meanOver(double livesInStep, double steadyShare) {
    if (livesInStep < 1e-9) {
      return 1;
    }
    double d = tool.grainSizeM();
    double now = GrainDulling.after(WearConstants.TYPICAL, d, livesUsed);
    return livesInStep
        / (now * GrainDulling.slowness(WearConstants.TYPICAL, d, livesUsed, livesInStep));
  }

  /** True for elastic bonds, which polish rather than cut. */
  public boolean polishes() {
    return tool.rigidity() < 1;
  }
}
