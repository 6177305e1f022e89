package kerfwright.app.drawing.chart;

import java.util.Collections;
import java.util.List;
import kerfwright.app.words.Say;
import org.jspecify.annotations.Nullable;

/**
 * Curves over one axis: as a drawing for paper and pages without script, and as data for the script
 * that draws them on the screen. Both show the same values between the same ends.
 *
 * @param title its name
 * @param about what it shows, for those who do not see it
 * @param across name of the axis across with its unit
 * @param upright name of the upright axis with its unit
 * @param lines curves, the first one the most important
 * @param band spread of the first curve, or null
 * @param level a limit to stay below, or null
 * @param begins where numbered parts begin
 * @param spots single points with a name
 */
public record Chart(
    String title,
    String about,
    String across,
    String upright,
    List<Line> lines,
    @Nullable Band band,
    @Nullable Level level,
    List<Double> begins,
    List<Spot> spots) {
  private static final double AIR = 0.08;

  /** A curve through points that go from left to right. */
  public record Line(String name, List<Double> x, List<Double> y) {
    public Line {
      if (x.size() < 2 || x.size() != y.size()) {
        throw new IllegalArgumentException(
            "A curve needs at least two points, each with both figures: "
                + x.size()
                + ", "
                + y.size());
      }
      x = List.copyOf(x);
      y = List.copyOf(y);
    }
  }

  /** Low and high for every point of the first curve; the name says what both are. */
  public record Band(String name, List<Double> low, List<Double> high) {}

  /** A limit. */
  public record Level(String name, double y) {}

  /** A point of its own. */
  public record Spot(String name, double x, double y) {}

  public Chart {
    lines = List.copyOf(lines);
    begins = List.copyOf(begins);
    spots = List.copyOf(spots);
  }

  /** Curves without band and limit. */
  public static Chart of(
      String title,
      String about,
      String across,
      String upright,
      List<Line> lines,
      List<Spot> spots) {
    return new Chart(title, about, across, upright, lines, null, null, List.of(), spots);
  }

  /** Right end of the axis across; it begins at 0. */
  double end() {
    double most = lines.stream().mapToDouble(line -> Collections.max(line.x())).max().orElse(1);
    return Math.max(most, spots.stream().mapToDouble(Spot::x).max().orElse(most));
  }

  /** Lower end of the upright axis. */
  public double lowest() {
    double least = least();
    return least < 0 ? least - AIR * (most() - least) : 0;
  }

  /** Upper end of the upright axis. */
  public double highest() {
    return most() + AIR * (most() - least());
  }

  private double least() {
    double least = lines.stream().mapToDouble(line -> Collections.min(line.y())).min().orElse(0);
    return Math.min(0, band == null ? least : Math.min(least, Collections.min(band.low())));
  }

  private double most() {
    double most = lines.stream().mapToDouble(line -> Collections.max(line.y())).max().orElse(0);
    most = Math.max(most, spots.stream().mapToDouble(Spot::y).max().orElse(most));
    most = band == null ? most : Math.max(most, Collections.max(band.high()));
    most = level == null ? most : Math.max(most, level.y());
    return most > 0 ? most : 1;
  }

  /** As a drawing. */
  public String svg(Say say, String id) {
    return new ChartDrawing(say, this).draw(id);
  }

  /** As data for the script of the page. */
  public String json(Say say) {
    return ChartData.json(say, this);
  }
}
