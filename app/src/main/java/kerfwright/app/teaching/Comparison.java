package kerfwright.app.teaching;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import kerfwright.app.drawing.TwoDigits;
import kerfwright.app.drawing.strip.AtWork;
import kerfwright.app.drawing.strip.SideBySide;
import kerfwright.app.plan.Figures;
import kerfwright.app.plan.Words;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.physics.cutting.StrokeForces.WorkSide;
import kerfwright.planner.bench.Bench;
import kerfwright.quantity.SourceKey;

/**
 * Two to four ways to cut one layer, side by side.
 *
 * @param bench layer, size and water that all share; load and speed of a column not filled in
 * @param tried the columns
 */
public record Comparison(Bench bench, List<ComparedInstrument> tried) {
  static final int MOST = 4;
  private static final String[] USUAL = {"diamond-coarse", "carbide-6", "", ""};

  /** Where one is that much better, the sentence names it. */
  static final double NAMED = 1.25;

  private static final double DEEPEST_MM = 1;

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
    List<ComparedInstrument> tried = new ArrayList<>();
    for (int i = 1; i <= MOST; i++) {
      String tool = fresh ? USUAL[i - 1] : field.apply("tool" + i);
      if (ComparedInstrument.tools().contains(tool)) {
        Bench bench =
            shared
                .atLoad(Scene.number(field.apply("load" + i), Scene.LEAST_N, Scene.MOST_N, 1))
                .atRpm(Scene.number(field.apply("rpm" + i), 300, 450_000, 160_000));
        boolean with = field.apply("stroke" + i).equals("with");
        tried.add(ComparedInstrument.of(tool, with ? WorkSide.RIGHT : WorkSide.LEFT, bench));
      }
    }
    return new Comparison(shared, tried);
  }

  public String query() {
    StringBuilder query = new StringBuilder("layer=" + bench.layer().id());
    query.append("&diameter=").append(Scene.plain(bench.diameterMm()));
    query.append("&water=").append(Scene.plain(bench.waterMlPerMin()));
    for (int i = 0; i < tried.size(); i++) {
      query.append(tried.get(i).query(i + 1));
    }
    return query.toString();
  }

  /** What the models rest on. */
  public static List<SourceKey> sources() {
    return Stream.of(Topic.PRESSED, Topic.PLOUGHED, Topic.CHIP)
        .flatMap(topic -> topic.sources().stream())
        .distinct()
        .toList();
  }

  /** What is taken, and how far the figures may be trusted. */
  public String taken(Say say) {
    return say.at(
        "teaching.compare-taken",
        Figures.plain(say, bench.diameterMm()),
        Figures.plain(say, bench.waterMlPerMin()));
  }

  /** Drawings and figures of all columns. */
  public Side side(Say say) {
    SideBySide drawn = sections(say);
    List<Side.Column> columns = new ArrayList<>();
    for (int i = 0; i < tried.size(); i++) {
      ComparedInstrument one = tried.get(i);
      String set =
          say.at(
                  "teaching.at",
                  Figures.rpm(say, one.bench().rpm()),
                  Figures.plain(say, one.bench().loadN()))
              + "; "
              + Labels.stroke(say, one.stroke());
      columns.add(
          new Side.Column(
              Side.letter(i),
              Words.shortInstrument(say, one.what()),
              set,
              one.what(),
              drawn.columns().get(i)));
    }
    return new Side(drawn.key(), say.at("teaching.section-layer"), columns, rows(say));
  }

  /** Each as deep as it comes while the quickest goes {@value #DEEPEST_MM} mm deep. */
  private SideBySide sections(Say say) {
    double most = tried.stream().mapToDouble(ComparedInstrument::rateMm3PerMin).max().orElse(0);
    List<AtWork> works =
        tried.stream()
            .map(
                one ->
                    AtWork.inLayer(
                        letter(one),
                        one.what(),
                        one.stroke(),
                        most > 0 ? DEEPEST_MM * one.rateMm3PerMin() / most : 0))
            .toList();
    return SideBySide.inLayer(say, "section", bench.layer(), works);
  }

  List<Side.Row> rows(Say say) {
    return List.of(
        figures(say, "rate", ComparedInstrument::rateMm3PerMin),
        row(say, "ratio", one -> ratio(say, one)),
        figures(say, "load", one -> one.bench().loadN()),
        figures(say, "rim", one -> one.cut().tangentialN()),
        row(say, "hand", one -> wall(say, one.alongTravelN())),
        figures(say, "heat", one -> one.cut().powerW()),
        figures(say, "energy", ComparedInstrument::energyJPerMm3),
        figures(say, "ra", ComparedInstrument::raUm),
        figures(say, "damage", ComparedInstrument::damageUm),
        figures(say, "life", ComparedInstrument::lifeMm3),
        figures(say, "cost", ComparedInstrument::costS));
  }

  private Side.Row figures(Say say, String name, ToDoubleFunction<ComparedInstrument> figure) {
    return row(say, name, one -> TwoDigits.of(say, figure.applyAsDouble(one)));
  }

  private Side.Row row(Say say, String name, Function<ComparedInstrument, String> figure) {
    return new Side.Row(
        say.at("teaching.row-" + name),
        tried.stream()
            .map(one -> one.cuts() ? figure.apply(one) : say.at("teaching.does-not-cut"))
            .toList());
  }

  /** Against the first column; the figures are those of a plan's runner-up. */
  private String ratio(Say say, ComparedInstrument one) {
    ComparedInstrument first = tried.get(0);
    return one == first || !first.cuts() ? "1" : say.of(one.rateOver(first).inverse().asFast());
  }

  /** What the wall does to the hand along the travel. */
  static String wall(Say say, double newton) {
    if (newton == 0) {
      return say.at("teaching.wall-neither");
    }
    String key = newton < 0 ? "teaching.pushes-back" : "teaching.pulls-on";
    return say.at(key, TwoDigits.of(say, Math.abs(newton)));
  }

  /** The difference in one sentence: who is ahead in what. */
  public String sentence(Say say) {
    List<ComparedInstrument> able = tried.stream().filter(ComparedInstrument::cuts).toList();
    if (able.size() < 2) {
      return say.at("teaching.too-few");
    }
    List<String> said = new ArrayList<>();
    String open = best(say, able, "quickest", ComparedInstrument::rateMm3PerMin, true, said);
    best(say, able, "smoothest", one -> 1 / one.raUm(), false, said);
    best(say, able, "coolest", one -> 1 / one.energyJPerMm3(), true, said);
    best(say, able, "lasts", ComparedInstrument::lifeMm3, false, said);
    best(say, able, "cheapest", one -> 1 / one.costS(), true, said);
    strokes(say, able, said);
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
      List<ComparedInstrument> able,
      String word,
      ToDoubleFunction<ComparedInstrument> good,
      boolean byRate,
      List<String> said) {
    List<ComparedInstrument> order =
        able.stream().sorted(Comparator.comparingDouble(good).reversed()).toList();
    double most = good.applyAsDouble(order.get(0));
    List<ComparedInstrument> ahead =
        order.stream().filter(one -> most / good.applyAsDouble(one) <= NAMED).toList();
    if (ahead.size() == order.size()) {
      return "";
    }
    ComparedInstrument next = order.get(ahead.size());
    if (byRate && ahead.get(0).rateOver(next).open()) {
      return say.at("teaching.best-open", letters(say, ahead), letter(next), ahead.size());
    }
    String times = TwoDigits.of(say, most / good.applyAsDouble(next));
    said.add(say.at("teaching.best-" + word, letters(say, ahead), times, ahead.size()));
    return "";
  }

  /** Where they are led in different ways, which of them the wall pulls on. */
  private void strokes(Say say, List<ComparedInstrument> able, List<String> said) {
    List<ComparedInstrument> pulled = able.stream().filter(one -> one.alongTravelN() > 0).toList();
    List<ComparedInstrument> pushed = able.stream().filter(one -> one.alongTravelN() < 0).toList();
    if (!pulled.isEmpty() && !pushed.isEmpty()) {
      said.add(say.at("teaching.strokes-differ", letters(say, pushed), letters(say, pulled)));
    }
  }

  /** "A", "A and D", "A, B and D". */
  private String letters(Say say, List<ComparedInstrument> some) {
    List<String> all = some.stream().map(this::letter).sorted().toList();
    int last = all.size() - 1;
    return last == 0
        ? all.get(0)
        : say.at("teaching.and", String.join(", ", all.subList(0, last)), all.get(last));
  }

  /** A to D, as the columns are called. */
  private String letter(ComparedInstrument one) {
    // two columns may hold the same, so that they are told apart by place
    for (int i = 0; i < tried.size(); i++) {
      if (tried.get(i) == one) {
        return Side.letter(i);
      }
    }
    throw new IllegalArgumentException("Not one of the columns");
  }

  /** Fields of a column, filled in or as usual. */
  public ComparedInstrument column(int number) {
    return number <= tried.size()
        ? tried.get(number - 1)
        : ComparedInstrument.of("diamond-fine", WorkSide.LEFT, bench);
  }
}
