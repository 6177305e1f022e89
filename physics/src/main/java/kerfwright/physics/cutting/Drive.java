package kerfwright.physics.cutting;

import kerfwright.quantity.RotationalSpeed;
import kerfwright.quantity.Torque;

/** What turns the instrument: how fast it still turns when a torque holds it back. */
public sealed interface Drive permits TurbineDrive, GearedDrive {
  /** The speed with nothing touching the instrument. */
  RotationalSpeed freeSpeed();

  /** The torque at which it stops or its limit cuts in. */
  Torque stallTorque();

  /**
   * Speed under a torque, for a free speed set at or below {@link #freeSpeed()}; zero when stalled.
   */
  RotationalSpeed speedUnder(Torque load, RotationalSpeed set);
}
