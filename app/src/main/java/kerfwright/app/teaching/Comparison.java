package kerfwright.app.teaching;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import kerfwright.app.drawing.TwoDigits;
import kerfwright.app.plan.Words;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.physics.cutting.StrokeForces.WorkSide;
import kerfwright.planner.bench.Bench;

/**
 * Two to four ways to cut one layer, side by side.
 *
 * @param bench layer, size and water that all share; load and speed of a column not filled in
 * @param tried the columns
 */
public record Comparison(Bench bench, List<Tried> tried) {
  static final int MOST = 4;
  private static final String[] USUAL = {"diamond-coarse", "carbide-6", "", ""};

  /** Where one is that much better, the sentence names it. */
  private static final double NAMED = 1.25;

  public Comparison {
    tried = List.copyOf(tried);
  }

  static Comparison of(UnaryOperator<String> field) {
    Material layer =
        Materials.packaged().find(field.apply("layer")).orElse(Materials.packaged().get("enamel"));
    Bench shared =
        new Bench(
            layer,
            Scene.number(field.apply("diameter"), 0.3, 5, 1.4),
            1,
            160_000,
            Scene.number(field.apply("water"), 0, 200, 50));
    boolean fresh = field.apply("tool1").isEmpty();
    List<Tried> tried = new ArrayList<>();
    for (int i = 1; i <= MOST; i++) {
      String tool = fresh ? USUAL[i - 1] : field.apply("tool" + i);
      if (Tried.tools().contains(tool)) {
        Bench bench =
            shared
                .atLoad(Scene.number(field.apply("load" + i), Scene.LEAST_N, Scene.MOST_N, 1))
                .atRpm(Scene.number(field.apply("rpm" + i), 300, 450_000, 160_000));
        boolean with = field.apply("stroke" + i).equals("with");
        tried.add(Tried.of(tool, with ? WorkSide.RIGHT : WorkSide.LEFT, bench));
      }
    }
    return new Comparison(shared, tried);
  }

  public String query() {
    StringBuilder query = new StringBuilder();
    query.append("layer=").append(bench.layer().id());
    query.append("&diameter=").append(Scene.plain(bench.diameterMm()));
    query.append("&water=").append(Scene.plain(bench.waterMlPerMin()));
    for (int i = 0; i < tried.size(); i++) {
      query.append(tried.get(i).query(i + 1));
    }
    return query.toString();
  }

  /** One line of figures, its head first. */
  public record Row(String head, List<String> cells) {}

  public List<Row> rows(Say say) {
    List<Row> rows = new ArrayList<>();
    rows.add(row(say, "rate", one -> TwoDigits.of(say, one.rateMm3PerMin())));
    rows.add(row(say, "ratio", one -> ratio(say, one)));
    rows.add(row(say, "hand", one -> hand(say, one)));
    rows.add(row(say, "heat", one -> TwoDigits.of(say, one.cut().powerW())));
    rows.add(row(say, "energy", one -> TwoDigits.of(say, one.energyJPerMm3())));
    rows.add(row(say, "ra", one -> TwoDigits.of(say, one.raUm())));
    rows.add(row(say, "damage", one -> TwoDigits.of(say, one.damageUm())));
    rows.add(row(say, "life", one -> TwoDigits.of(say, one.lifeMm3())));
    rows.add(row(say, "cost", one -> TwoDigits.of(say, one.costS())));
    return rows;
  }

  private Row row(Say say, String name, Function<Tried, String> figure) {
    return new Row(
        say.at("teaching.row-" + name),
        tried.stream()
            .map(one -> one.cuts() ? figure.apply(one) : say.at("teaching.does-not-cut"))
            .toList());
  }

  /** Against the first column; the figures are those of a plan's runner-up. */
  private String ratio(Say say, Tried one) {
    Tried first = tried.get(0);
    return one == first || !first.cuts() ? "1" : say.of(one.rateOver(first).inverse().asFast());
  }

  private static String hand(Say say, Tried one) {
    double newton = one.alongTravelN();
    String key = newton < 0 ? "teaching.pushes-back" : "teaching.pulls-on";
    return say.at(key, TwoDigits.of(say, Math.abs(newton)));
  }

  /** The difference in one sentence: who is ahead in what. */
  public String sentence(Say say) {
    List<Tried> able = tried.stream().filter(Tried::cuts).toList();
    if (able.size() < 2) {
      return say.at("teaching.too-few");
    }
    List<String> said = new ArrayList<>();
    String open = best(say, able, "quickest", Tried::rateMm3PerMin, true, said);
    best(say, able, "smoothest", one -> 1 / one.raUm(), false, said);
    best(say, able, "coolest", one -> 1 / one.energyJPerMm3(), true, said);
    best(say, able, "lasts", Tried::lifeMm3, false, said);
    best(say, able, "cheapest", one -> 1 / one.costS(), true, said);
    if (!open.isEmpty()) {
      said.add(open);
    }
    return said.isEmpty() ? say.at("teaching.all-alike") : String.join("; ", said) + ".";
  }

  /**
   * Adds who is ahead. What rests on the rate is said only where the band of the two rates does not
   * leave open which is greater.
   *
   * @return that it is open, or nothing
   */
  private String best(
      Say say,
      List<Tried> able,
      String word,
      ToDoubleFunction<Tried> good,
      boolean byRate,
      List<String> said) {
    List<Tried> order = able.stream().sorted(Comparator.comparingDouble(good).reversed()).toList();
    Tried ahead = order.get(0);
    Tried next = order.get(1);
    double times = good.applyAsDouble(ahead) / good.applyAsDouble(next);
    if (times <= NAMED) {
      return "";
    }
    if (byRate && ahead.rateOver(next).open()) {
      return say.at("teaching.best-open", letter(ahead), letter(next));
    }
    said.add(say.at("teaching.best-" + word, letter(ahead), TwoDigits.of(say, times)));
    return "";
  }

  /** A to D, as the columns are called. */
  public String letter(Tried one) {
    return String.valueOf((char) ('A' + tried.indexOf(one)));
  }

  public static String name(Say say, Tried one) {
    return Words.shortInstrument(say, one.what());
  }

  /** Fields of a column, filled in or as usual. */
  public Tried column(int number) {
    return number <= tried.size()
        ? tried.get(number - 1)
        : Tried.of("diamond-fine", WorkSide.LEFT, bench);
  }
}
