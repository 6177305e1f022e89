package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.words.Say;
import kerfwright.physics.cutting.Drive;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;

/** Speed that holds against the torque that holds it back, and the power that goes with it. */
public final class SpeedChart {
  private static final double WIDTH = 320;
  private static final double HEIGHT = 190;
  private static final double LEFT = 44;
  private static final double RIGHT = 308;
  private static final double TOP = 28;
  private static final double BOTTOM = 142;
  private static final int STATIONS = 60;

  private SpeedChart() {}

  public static String draw(Say say, String id, String label, Drive drive) {
    double stall = drive.stallTorque().newtonMillimetres();
    double free = drive.freeSpeed().rpm();
    List<Svg.Point> line = new ArrayList<>();
    double power = 0;
    for (int i = 0; i < STATIONS; i++) {
      double torque = stall * i / STATIONS;
      double rpm = at(drive, torque);
      power = Math.max(power, torque * 1e-3 * rpm * 2 * Math.PI / 60);
      line.add(new Svg.Point(x(torque, stall), y(rpm, free)));
    }
    line.add(new Svg.Point(x(stall, stall), y(at(drive, stall * (1 - 1e-9)), free)));
    line.add(new Svg.Point(x(stall, stall), BOTTOM));
    Svg svg =
        Svg.image(
            id,
            WIDTH,
            HEIGHT,
            say.at("drawn.speed-title", label),
            say.at(
                "drawn.speed-about", Math.round(free), Figures.of(say, stall), Math.round(power)));
    svg.text(4, 14, Anchor.START, Type.PLAIN, say.at("drawn.speed-speed"));
    double upright = Figures.tick((BOTTOM - TOP) / (free / 1000 * 1.1), 26);
    for (double k = 0; k <= free / 1000 * 1.1; k += upright) {
      svg.line(LEFT - 3, y(k * 1000, free), LEFT, y(k * 1000, free), Pen.THIN);
      svg.text(LEFT - 6, y(k * 1000, free) + 3.5, Anchor.END, Type.PLAIN, Figures.of(say, k));
    }
    double level = Figures.tick((RIGHT - LEFT) / (stall * 1.15), 40);
    for (double t = 0; t <= stall * 1.15; t += level) {
      svg.line(x(t, stall), BOTTOM, x(t, stall), BOTTOM + 3, Pen.THIN);
      svg.text(x(t, stall), BOTTOM + 15, Anchor.MIDDLE, Type.PLAIN, Figures.of(say, t));
    }
    svg.polyline(
        List.of(
            new Svg.Point(LEFT, TOP), new Svg.Point(LEFT, BOTTOM), new Svg.Point(RIGHT, BOTTOM)),
        Pen.THIN);
    svg.polyline(line, Pen.ACCENT, "speed");
    svg.text(
        RIGHT, 14, Anchor.END, Type.STRONG, say.at("drawn.speed-stall", Figures.of(say, stall)));
    svg.text(RIGHT, BOTTOM + 32, Anchor.END, Type.PLAIN, say.at("drawn.speed-torque"));
    return svg.finish();
  }

  private static double at(Drive drive, double torqueNMm) {
    return drive
        .speedUnder(
            Torque.ofNewtonMillimetres(torqueNMm), RotationalSpeed.ofRpm(drive.freeSpeed().rpm()))
        .rpm();
  }

  private static double x(double torque, double stall) {
    return LEFT + (RIGHT - LEFT) * torque / (stall * 1.15);
  }

  private static double y(double rpm, double free) {
    return BOTTOM - (BOTTOM - TOP) * rpm / (free * 1.1);
  }
}
