package kerfwright.planner.alike;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import kerfwright.catalogue.Remark;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.alike.Difference.Effect;

/** Differences in the cut itself, material by material. */
final class CutCompared {
  private static final double ROUGHNESS = 0.7;
  private static final double WEAR = 0.25;
  private static final double CANNOT_CUT = 1;

  /** Counted, but too little to name. */
  static final Remark NOTHING = Remark.of("");

  private CutCompared() {}

  static List<Difference> differences(Behaviour wanted, Behaviour its) {
    List<Difference> found = new ArrayList<>();
    List<Material> lost = wanted.cuts().keySet().stream().filter(m -> !cuts(its, m)).toList();
    if (!lost.isEmpty()) {
      found.add(
          new Difference(
              "cannot-cut",
              Effect.STOPS,
              Remark.of("alike-cannot-cut", lost),
              CANNOT_CUT * lost.size() / wanted.cuts().size()));
    }
    Map<Material, Ratio> removal = ratios(wanted, its, Behaviour.Cut::removalMm3PerMin);
    found.add(
        new Difference("removal", Effect.CHANGES, words("alike-removal", removal), mean(removal)));
    Map<Material, Ratio> rough = ratios(wanted, its, Behaviour.Cut::raUm);
    found.add(
        new Difference(
            "roughness", Effect.CHANGES, roughness(wanted, its, rough), ROUGHNESS * mean(rough)));
    Map<Material, Ratio> wear = ratios(wanted, its, Behaviour.Cut::livesPerM3);
    found.add(new Difference("wear", Effect.CHANGES, words("alike-wear", wear), WEAR * mean(wear)));
    return found;
  }

  private static boolean cuts(Behaviour its, Material material) {
    return its.cuts().containsKey(material);
  }

  private static Map<Material, Ratio> ratios(
      Behaviour wanted, Behaviour its, ToDoubleFunction<Behaviour.Cut> figure) {
    Map<Material, Ratio> ratios = new LinkedHashMap<>();
    wanted
        .cuts()
        .forEach(
            (material, cut) -> {
              Behaviour.Cut other = its.cuts().get(material);
              if (other != null) {
                ratios.put(
                    material, Ratio.of(figure.applyAsDouble(other), figure.applyAsDouble(cut)));
              }
            });
    return ratios;
  }

  private static double mean(Map<Material, Ratio> ratios) {
    return ratios.values().stream().mapToDouble(Ratio::distance).average().orElse(0);
  }

  /** Materials that come out alike share their words; empty where nothing is noticed. */
  private static Remark words(String code, Map<Material, Ratio> ratios) {
    Map<Remark, List<Material>> places = new LinkedHashMap<>();
    ratios.forEach(
        (material, ratio) -> {
          if (ratio.noticed()) {
            places.computeIfAbsent(ratio.inWords(), w -> new ArrayList<>()).add(material);
          }
        });
    if (places.isEmpty()) {
      return NOTHING;
    }
    List<Remark> parts =
        places.entrySet().stream()
            .map(each -> in(each.getKey(), each.getValue(), ratios.size()))
            .toList();
    return Remark.of(code, parts);
  }

  private static Remark in(Remark ratio, List<Material> where, int all) {
    if (where.size() == all && all > 1) {
      return Remark.of("ratio-everywhere", ratio);
    }
    return Remark.of("ratio-in", ratio, where);
  }

  /** Ra in the material where it differs most. */
  private static Remark roughness(Behaviour wanted, Behaviour its, Map<Material, Ratio> ratios) {
    Material most = null;
    double distance = Ratio.NOTICED;
    for (Map.Entry<Material, Ratio> each : ratios.entrySet()) {
      if (each.getValue().distance() > distance) {
        distance = each.getValue().distance();
        most = each.getKey();
      }
    }
    if (most == null) {
      return NOTHING;
    }
    Behaviour.Cut one = its.cuts().get(most);
    Behaviour.Cut other = wanted.cuts().get(most);
    if (one == null || other == null) {
      return NOTHING;
    }
    return Remark.of("alike-roughness", rounded(one.raUm()), rounded(other.raUm()), most);
  }

  private static BigDecimal rounded(double ra) {
    return BigDecimal.valueOf(ra).round(new MathContext(2));
  }
}
