package kerfwright.planner.tool;

import kerfwright.physics.cutting.AbrasiveCutting;
import kerfwright.physics.cutting.AbrasiveTool;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.material.Substance;
import kerfwright.physics.surface.Roughness;
import kerfwright.physics.wear.GrainWear;

/** A working part of grains in a bond: diamond, stone, disc, polisher. */
public record AbrasivePart(AbrasiveTool tool, double reserveLayers, double sharpness)
    implements WorkingPart {
  @Override
  public CutResult cut(Substance work, Engagement contact, OperatingPoint point) {
    return AbrasiveCutting.cut(tool, work, contact, point);
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
    return AbrasiveCutting.forceRatio();
  }

  @Override
  public double greatestForceRatio() {
    return AbrasiveCutting.forceRatio();
  }

  @Override
  public double hardnessPa() {
    return tool.grainHardnessPa();
  }

  /** True for elastic bonds, which polish rather than cut. */
  public boolean polishes() {
    return tool.rigidity() < 1;
  }
}
