package kerfwright.physics.cutting;

import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;

/**
 * Electric motor with gears: M_bur = M_motor eta / i, n_bur = i n_motor; the speed set is held up
 * to the torque limit and the instrument stops there.
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>M</td><td>N m</td><td>torque at the motor and at the instrument</td></tr>
 *   <tr><td>n</td><td>1/s</td><td>speed of the motor and of the instrument</td></tr>
 *   <tr><td>i, eta</td><td>-</td><td>gear ratio (above 1 the instrument is the faster), efficiency</td></tr>
 * </table>
 *
 * <p>Valid from standstill to the speed set. Leaves out: the small sag of a real controller.
 * Source: machine design handbooks; figures of the motor from the handpiece row of the catalogue.
 */
public record GearedDrive(RotationalSpeed freeSpeed, Torque stallTorque) implements Drive {
  /** From the motor's figures: gear ratio above one raises the speed and lowers the torque. */
  public static GearedDrive of(
      RotationalSpeed motor, Torque motorTorque, double ratio, double efficiency) {
    return new GearedDrive(
        new RotationalSpeed(motor.revolutionsPerSecond() * ratio),
        new Torque(motorTorque.newtonMetres() * efficiency / ratio));
  }

  @Override
  public RotationalSpeed speedUnder(Torque load, RotationalSpeed set) {
    return load.newtonMetres() >= stallTorque.newtonMetres()
        ? new RotationalSpeed(0)
        : new RotationalSpeed(
            Math.min(set.revolutionsPerSecond(), freeSpeed.revolutionsPerSecond()));
  }
}
