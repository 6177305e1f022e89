package kerfwright.physics.cutting;

import kerfwright.quantity.Check;
import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;

/**
 * Air turbine: torque falls in a straight line from stall to free running, M = M0 (1 - n/n0).
 *
 * <table>
 *   <caption>Symbols</caption>
 *   <tr><td>M, M0</td><td>N m</td><td>torque, torque at stall</td></tr>
 *   <tr><td>n, n0</td><td>1/s</td><td>speed, speed running free</td></tr>
 * </table>
 *
 * <p>Greatest power M0 (2 pi n0)/4 at half the free speed. Set below its free speed by less drive
 * air, M0 is taken to fall with n0 (both follow the air flow; project setting, no source). Leaves
 * out: dependence of stall torque on the rotor's position, and the partly convex curves measured on
 * some units. Source: Dyson JE, Darvell BW. J Dent 1999;27:573-586 (abstract: dynamic torque
 * closely linear from stall to free running); measured units reach their greatest power at 49 to 79
 * percent of free speed (Brockhurst PJ, Shams R. Aust Dent J 1994;39:33-38, abstract).
 */
public record TurbineDrive(RotationalSpeed freeSpeed, Torque stallTorque) implements Drive {
  public TurbineDrive {
    Check.positive("Free speed", "1/s", freeSpeed.revolutionsPerSecond());
  }

  @Override
  public RotationalSpeed speedUnder(Torque load, RotationalSpeed set) {
    double share = Math.min(1, set.revolutionsPerSecond() / freeSpeed.revolutionsPerSecond());
    double stall = stallTorque.newtonMetres() * share;
    if (stall <= 0 || load.newtonMetres() >= stall) {
      return new RotationalSpeed(0);
    }
    return new RotationalSpeed(
        freeSpeed.revolutionsPerSecond() * share * (1 - load.newtonMetres() / stall));
  }
}
