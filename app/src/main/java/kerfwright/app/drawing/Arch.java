package kerfwright.app.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the crowns of an arch stand, seen facing the patient: the patient's right is on the left.
 *
 * <p>Mean crown widths along the arch (mesiodistal) and across it (buccolingual) are from memory of
 * dental anatomy texts, rounded; they shape pictures and nothing else.
 */
final class Arch {
  private static final double[] UPPER_ALONG = {8.5, 6.5, 7.5, 7, 7, 10, 9, 8.5};
  private static final double[] UPPER_ACROSS = {7, 6, 8, 9, 9, 11, 11, 10};
  private static final double[] LOWER_ALONG = {5, 5.5, 7, 7, 7, 11, 10.5, 10};
  private static final double[] LOWER_ACROSS = {6, 6.5, 7.5, 7.5, 8, 10.5, 10, 9.5};
  private static final double[] PRIMARY_UPPER_ALONG = {6.5, 5.1, 7, 7.3, 8.2};
  private static final double[] PRIMARY_UPPER_ACROSS = {5, 4.5, 7, 8.5, 10};
  private static final double[] PRIMARY_LOWER_ALONG = {4.2, 4.6, 5.5, 7.7, 9.9};
  private static final double[] PRIMARY_LOWER_ACROSS = {4.2, 4.5, 5, 7, 8.7};

  /**
   * One crown.
   *
   * @param fdi FDI number
   * @param x middle, from the midline, mm; negative on the patient's right
   * @param depth middle, from the front of the arch backwards, mm
   * @param turn how far the crown is turned in the picture, rad
   * @param along width along the arch, mm
   * @param across width across it, mm
   */
  record Crown(int fdi, double x, double depth, double turn, double along, double across) {
    /** Place from the midline, 0 for a central incisor. */
    int position() {
      return fdi % 10 - 1;
    }
  }

  private Arch() {}

  /** The crowns of one jaw. */
  static List<Crown> crowns(boolean permanent, boolean upper) {
    double[] along =
        permanent
            ? (upper ? UPPER_ALONG : LOWER_ALONG)
            : upper ? PRIMARY_UPPER_ALONG : PRIMARY_LOWER_ALONG;
    double[] across =
        permanent
            ? (upper ? UPPER_ACROSS : LOWER_ACROSS)
            : upper ? PRIMARY_UPPER_ACROSS : PRIMARY_LOWER_ACROSS;
    List<double[]> places = places(along, upper, permanent);
    List<Crown> crowns = new ArrayList<>();
    int right = (upper ? 1 : 4) + (permanent ? 0 : 4);
    int left = (upper ? 2 : 3) + (permanent ? 0 : 4);
    // quadrant by quadrant, as they are numbered
    for (boolean patientsRight : new boolean[] {upper, !upper}) {
      int quadrant = patientsRight ? right : left;
      for (int i = 0; i < along.length; i++) {
        double[] place = places.get(i);
        crowns.add(
            new Crown(
                10 * quadrant + i + 1,
                (patientsRight ? -1 : 1) * place[0],
                place[1],
                place[2] * (patientsRight == upper ? -1 : 1),
                along[i],
                across[i]));
      }
    }
    return crowns;
  }

  /** Middle of each crown from the midline on: across, deep, and how far the arch has turned. */
  private static List<double[]> places(double[] along, boolean upper, boolean permanent) {
    double half = permanent ? (upper ? 27 : 25) : upper ? 19 : 17.5;
    double deep = permanent ? (upper ? 38 : 36) : 24;
    List<double[]> places = new ArrayList<>();
    double t = 0;
    double walked = 0;
    double wanted = 0;
    double x = 0;
    double y = 0;
    for (int i = 0; i < along.length; i++) {
      wanted += i == 0 ? along[0] / 2 : (along[i - 1] + along[i]) / 2;
      while (walked < wanted) {
        double dx = t < Math.PI / 2 ? half * Math.cos(t) * 0.001 : 0;
        double dy = t < Math.PI / 2 ? deep * Math.sin(t) * 0.001 : 0.03;
        t += 0.001;
        x += dx;
        y += dy;
        walked += Math.hypot(dx, dy);
      }
      double turn =
          t < Math.PI / 2 ? Math.atan2(deep * Math.sin(t), half * Math.cos(t)) : Math.PI / 2;
      places.add(new double[] {x, y, turn});
    }
    return places;
  }
}
