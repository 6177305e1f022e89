package kerfwright.planner.tool;

import kerfwright.physics.cutting.BladedCutting;
import kerfwright.physics.cutting.BladedTool;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.physics.material.Substance;
import kerfwright.physics.surface.Roughness;
import kerfwright.physics.wear.EdgeWear;

/** A bur's working part. */
public record BladedPart(BladedTool tool, double sharpness) implements WorkingPart {
  @Override
  public CutResult cut(Substance work, Engagement contact, OperatingPoint point) {
    return BladedCutting.cut(tool, work, contact, point);
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
}
