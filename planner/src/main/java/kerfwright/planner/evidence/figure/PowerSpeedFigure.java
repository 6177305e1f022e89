package kerfwright.planner.evidence.figure;

import kerfwright.physics.cutting.Drive;
import kerfwright.quantity.Torque;

/** Share of the free speed at which a drive gives most power, percent, by trying torques. */
record PowerSpeedFigure() implements Figure {
  private static final int TRIALS = 200;

  @Override
  public double of(Trial trial, String unit) {
    Drive drive = trial.drive();
    double best = 0;
    double bestPower = 0;
    for (int i = 1; i < TRIALS; i++) {
      Torque torque = new Torque(drive.stallTorque().newtonMetres() * i / TRIALS);
      double speed = drive.speedUnder(torque, drive.freeSpeed()).radiansPerSecond();
      if (speed * torque.newtonMetres() > bestPower) {
        bestPower = speed * torque.newtonMetres();
        best = speed / drive.freeSpeed().radiansPerSecond();
      }
    }
    return best * 100;
  }
}
