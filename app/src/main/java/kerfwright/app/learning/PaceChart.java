package kerfwright.app.learning;

import java.util.Locale;
import kerfwright.planner.casework.OwnPace.Factor;

/**
 * One factor with its interval on an axis from a hundredth to a hundred times, the literature in
 * the middle.
 */
public final class PaceChart {
  private static final double WIDTH = 240;
  private static final double HEIGHT = 28;

  private PaceChart() {}

  /** The drawing; what it shows stands in words beside it. */
  public static String of(Factor factor) {
    return String.format(
        Locale.ROOT,
        "<svg class=\"drawing\" viewBox=\"0 0 %1$.0f %2$.0f\" width=\"%1$.0f\" height=\"%2$.0f\""
            + " aria-hidden=\"true\" focusable=\"false\"><path class=\"pace-axis\" d=\"M0 14H%1$.0f"
            + "M%3$.1f 2V26\"/><path class=\"pace-band\" d=\"M%4$.1f 14H%5$.1f\"/><circle"
            + " class=\"pace-dot\" cx=\"%6$.1f\" cy=\"14\" r=\"6\"/></svg>",
        WIDTH,
        HEIGHT,
        x(1),
        x(factor.low()),
        x(factor.high()),
        x(factor.typical()));
  }

  private static double x(double factor) {
    double share = (Math.log(factor) / Math.log(Factor.BOUND) + 1) / 2;
    return 8 + share * (WIDTH - 16);
  }
}
