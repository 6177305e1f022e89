package kerfwright.planner.alike;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.material.Material;
import kerfwright.physics.cutting.CutResult;
import kerfwright.physics.cutting.Engagement;
import kerfwright.physics.cutting.HardnessRatio;
import kerfwright.physics.cutting.OperatingPoint;
import kerfwright.planner.tool.AbrasivePart;
import kerfwright.planner.tool.Instrument;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;

/**
 * What an instrument does under one hand: 1 N, what most dentists use (DC057), 0.5 N for elastic
 * bonds (project setting), 50 mL/min of water, in the first handpiece of the catalogue that takes
 * its shank, as fast as label, handpiece and whirl allow, its side in contact over at most 2 mm
 * (project setting). Every figure comes from the models a plan uses.
 */
record Behaviour(
    Instrument instrument,
    Handpiece handpiece,
    double rpm,
    double torqueNMm,
    double whirlRpm,
    Map<Material, Cut> cuts) {
  static final double LOAD_N = 1;
  static final double POLISHING_LOAD_N = 0.5;
  static final double WATER_ML_PER_MIN = 50;
  private static final double SIDE_M = 2e-3;
  private static final double DEPTH_M = 50e-6;

  /** What it does in one material. */
  record Cut(double removalMm3PerMin, double raUm, double livesPerM3) {}

  static Behaviour of(Instrument instrument, List<Material> work) {
    Handpiece handpiece =
        Handpieces.all().stream()
            .filter(each -> each.shank() == instrument.properties().shank())
            .findFirst()
            .orElseThrow();
    double load =
        instrument.part() instanceof AbrasivePart a && a.polishes() ? POLISHING_LOAD_N : LOAD_N;
    double diameter = instrument.properties().headDiameter().metres();
    double whirl = instrument.shaft().whirlLimit().rpm();
    RotationalSpeed label = instrument.properties().maximumSpeed();
    double set = Math.min(handpiece.drive().freeSpeed().rpm(), whirl);
    set = label == null ? set : Math.min(set, label.rpm());
    Torque torque = new Torque(instrument.part().greatestForceRatio() * load * diameter / 2);
    double rpm = handpiece.drive().speedUnder(torque, RotationalSpeed.ofRpm(set)).rpm();
    double rim = Math.PI * diameter * rpm / 60;
    double side =
        instrument.properties().headLength().metres()
            * instrument.properties().shape().sideFraction();
    Engagement contact =
        new Engagement(diameter, Math.max(0.2e-3, Math.min(side, SIDE_M)), DEPTH_M);
    OperatingPoint point =
        new OperatingPoint(load, rim, WATER_ML_PER_MIN, instrument.part().sharpness());
    Map<Material, Cut> cuts = new LinkedHashMap<>();
    for (Material material : work) {
      if (HardnessRatio.canCut(instrument.part().hardnessPa(), material.typical().hardnessPa())) {
        CutResult cut = instrument.part().cut(material.typical(), contact, point);
        if (cut.removalM3PerS() > 0) {
          cuts.put(
              material,
              new Cut(
                  cut.removalM3PerS() * 60e9,
                  instrument.part().raM(material.typical(), cut) * 1e6,
                  instrument.part().livesPerM3(material.typical(), rim)));
        }
      }
    }
    return new Behaviour(instrument, handpiece, rpm, torque.newtonMillimetres(), whirl, cuts);
  }
}
