package kerfwright.physics.wear;

/**
 * Constants of how grit loses its cut, in lives of {@link GrainWear}; each may be drawn from its
 * range. Fitted together to the losses of calibration sources (DC017, DC018, R01, R05, and the
 * steady rate of DC001 to DC011), which differ among themselves.
 *
 * @param runningInLives u_r, lives in which the sharpest tips go: 0.2 (0.05 to 0.4)
 * @param declineLives u_L, lives in which the plateau falls to 1/e: 7 (4 to 12)
 */
public record WearConstants(double runningInLives, double declineLives) {
  /** What the models take unless told otherwise. */
  public static final WearConstants TYPICAL = new WearConstants(0.05, 15);

  public WearConstants {
    if (!(runningInLives > 0 && declineLives > 0)) {
      throw new IllegalArgumentException(
          "Lives of running-in and decline must be above zero, got "
              + runningInLives
              + " and "
              + declineLives);
    }
  }
}
