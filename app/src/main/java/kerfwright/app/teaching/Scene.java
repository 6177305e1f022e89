package kerfwright.app.teaching;

import java.util.Locale;
import java.util.function.UnaryOperator;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.material.Material;
import kerfwright.physics.cutting.CutResult;
import kerfwright.planner.bench.Bench;
import kerfwright.planner.tool.WorkingPart;
import kerfwright.quantity.Identified;

/**
 * What a topic is shown with.
 *
 * @param bench layer, size, load and speed
 * @param grit of the diamond instrument
 * @param blades of the carbide bur
 */
public record Scene(Bench bench, GritClass grit, int blades) {
  static final double LEAST_N = 0.05;
  static final double MOST_N = 5;
  private static final double WATER = 50;
  private static final int FEWEST = 2;
  private static final int MOST = 40;

  /** Reads it from an address; what is missing or senseless is as usual. */
  static Scene of(Topic topic, UnaryOperator<String> field) {
    Material layer = topic.layer(field.apply("layer")).orElse(topic.usual());
    GritClass grit = Identified.of(GritClass.class, field.apply("grit")).orElse(GritClass.COARSE);
    double blades = number(field.apply("blades"), FEWEST, MOST, 6);
    return new Scene(
        new Bench(
            layer,
            number(field.apply("diameter"), 0.3, 5, 1.4),
            number(field.apply("load"), LEAST_N, MOST_N, 1),
            number(field.apply("rpm"), 300, 450_000, 160_000),
            WATER),
        grit,
        (int) Math.round(blades));
  }

  static double number(String text, double least, double most, double otherwise) {
    try {
      double value = Double.parseDouble(text);
      return Double.isFinite(value) ? Math.max(least, Math.min(most, value)) : otherwise;
    } catch (NumberFormatException none) {
      return otherwise;
    }
  }

  /** As an address carries it. */
  public String query() {
    return String.format(
        Locale.ROOT,
        "layer=%s&grit=%s&blades=%d&diameter=%s&load=%s&rpm=%s",
        bench.layer().id(),
        grit.id(),
        blades,
        plain(bench.diameterMm()),
        plain(bench.loadN()),
        plain(bench.rpm()));
  }

  /** At most three decimals, none where there are none. */
  public static String plain(double value) {
    return String.format(Locale.ROOT, "%.3f", value).replaceFirst("\\.?0+$", "");
  }

  WorkingPart diamond() {
    return bench.diamond(grit);
  }

  WorkingPart bur() {
    return bench.carbide(blades);
  }

  CutResult ground() {
    return bench.cut(diamond());
  }
}
