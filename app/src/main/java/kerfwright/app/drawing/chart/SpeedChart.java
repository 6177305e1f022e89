package kerfwright.app.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.Figures;
import kerfwright.app.words.Say;
import kerfwright.physics.cutting.Drive;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;

/** Speed that holds against the torque that holds it back, up to the torque that stalls it. */
public final class SpeedChart {
  private static final int STATIONS = 60;

  private SpeedChart() {}

  /** The chart of a drive. */
  public static Chart of(Say say, String label, Drive drive) {
    double stall = drive.stallTorque().newtonMillimetres();
    double power = 0;
    List<Double> torques = new ArrayList<>();
    List<Double> speeds = new ArrayList<>();
    for (int i = 0; i < STATIONS; i++) {
      double torque = stall * i / STATIONS;
      double rpm = at(drive, torque);
      power = Math.max(power, torque * 1e-3 * rpm * 2 * Math.PI / 60);
      torques.add(torque);
      speeds.add(rpm / 1000);
    }
    torques.addAll(List.of(stall, stall));
    speeds.addAll(List.of(at(drive, stall * (1 - 1e-9)) / 1000, 0.0));
    return Chart.of(
        say.at("drawn.speed-title", label),
        say.at(
            "drawn.speed-about",
            Math.round(drive.freeSpeed().rpm()),
            Figures.of(say, stall),
            Math.round(power)),
        say.at("drawn.speed-torque"),
        say.at("drawn.speed-speed"),
        List.of(new Chart.Line(say.at("drawn.speed-speed"), torques, speeds)),
        List.of(new Chart.Spot(say.at("drawn.speed-stall", Figures.of(say, stall)), stall, 0)));
  }

  private static double at(Drive drive, double torqueNMm) {
    return drive
        .speedUnder(
            Torque.ofNewtonMillimetres(torqueNMm), RotationalSpeed.ofRpm(drive.freeSpeed().rpm()))
        .rpm();
  }
}
