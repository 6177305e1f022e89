package kerfwright.app.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kerfwright.app.words.Say;

/** Figures in drawings and how labels find room. */
public final class Figures {
  private Figures() {}

  /** Two significant digits, three from ten up; plain notation. */
  public static String of(Say say, double value) {
    return say.figures(of(value));
  }

  private static String of(double value) {
    if (value == 0) {
      return "0";
    }
    int digits = Math.abs(value) >= 10 ? 3 : 2;
    BigDecimal rounded =
        BigDecimal.valueOf(value).round(new MathContext(digits)).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  public static String mm(Say say, double value) {
    return say.at("drawn.mm", of(say, value));
  }

  /** A depth to a hundredth of a millimetre. */
  static String depth(Say say, double mm) {
    return say.at("drawn.mm", say.figures(Svg.number(mm)));
  }

  /** Distance of ticks, 1, 2 or 5 times a power of ten, at least {@code room} units apart. */
  public static double tick(double perUnit, double room) {
    double wanted = room / perUnit;
    double power = Math.pow(10, Math.floor(Math.log10(wanted)));
    for (double step : new double[] {1, 2, 5}) {
      if (step * power >= wanted * (1 - 1e-9)) {
        return step * power;
      }
    }
    return 10 * power;
  }

  /** With a capital at the beginning. */
  public static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /**
   * Places labels in order, each as near its wish as room allows, none overlapping, none below the
   * floor; above there is no limit, the caller gives room.
   *
   * @param wishes wished centres, rising
   * @param heights height of each
   * @param floor the last one ends here at the latest
   */
  public static double[] spread(
      List<Double> wishes, List<Double> heights, double top, double floor) {
    double[] centres = gathered(wishes, heights);
    double edge = top;
    for (int i = 0; i < centres.length; i++) {
      centres[i] = Math.max(centres[i], edge + heights.get(i) / 2);
      edge = centres[i] + heights.get(i) / 2;
    }
    edge = floor;
    for (int i = centres.length - 1; i >= 0; i--) {
      centres[i] = Math.min(centres[i], edge - heights.get(i) / 2);
      edge = centres[i] - heights.get(i) / 2;
    }
    return centres;
  }

  /** Labels that would overlap are joined to a block about the mean of their wishes. */
  private static double[] gathered(List<Double> wishes, List<Double> heights) {
    double[] centres = new double[wishes.size()];
    List<double[]> blocks = new ArrayList<>(); // top edge, height, first label
    for (int i = 0; i < centres.length; i++) {
      double[] block = {wishes.get(i) - heights.get(i) / 2, heights.get(i), i};
      while (!blocks.isEmpty() && last(blocks)[0] + last(blocks)[1] > block[0]) {
        double[] above = blocks.remove(blocks.size() - 1);
        int members = i + 1 - (int) above[2];
        int later = i + 1 - (int) block[2];
        // a block's top edge is the mean of what its labels wish, each counted once
        double mean = (above[0] * (members - later) + (block[0] - above[1]) * later) / members;
        block = new double[] {mean, above[1] + block[1], above[2]};
      }
      blocks.add(block);
    }
    for (int b = 0; b < blocks.size(); b++) {
      double edge = blocks.get(b)[0];
      int end = b + 1 < blocks.size() ? (int) blocks.get(b + 1)[2] : centres.length;
      for (int i = (int) blocks.get(b)[2]; i < end; i++) {
        centres[i] = edge + heights.get(i) / 2;
        edge += heights.get(i);
      }
    }
    return centres;
  }

  private static double[] last(List<double[]> blocks) {
    return blocks.get(blocks.size() - 1);
  }
}
