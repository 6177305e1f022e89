package kerfwright.practice.restock;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import kerfwright.practice.drawer.StockItem;
import org.jspecify.annotations.Nullable;

/**
 * What cutting costs in instruments: of every use the price times the share of a life it takes, the
 * whole price where a piece is for single use. Uses of pieces without a price are left out and
 * counted.
 *
 * @param byProcedure by id of the procedure; the empty id holds uses without one
 * @param byMaterial by material id
 * @param uses uses counted
 * @param unpriced uses left out
 */
public record Costs(
    List<OfProcedure> byProcedure, List<OfMaterial> byMaterial, int uses, int unpriced) {
  public Costs {
    byProcedure = List.copyOf(byProcedure);
    byMaterial = List.copyOf(byMaterial);
  }

  /**
   * A procedure.
   *
   * @param procedure its id, empty for uses without one
   * @param cases how many cases
   * @param cost in all
   */
  public record OfProcedure(String procedure, int cases, double cost) {
    public double perCase() {
      return cost / cases;
    }
  }

  /**
   * A material.
   *
   * @param material its id
   * @param mm3 volume removed
   * @param cost in all
   */
  public record OfMaterial(String material, double mm3, double cost) {
    public double perMm3() {
      return cost / mm3;
    }
  }

  /**
   * Adds up.
   *
   * @param item the item of a use, null where it is not known
   * @param shareOfUse share of a life one use of an item takes
   */
  static Costs of(
      List<PastUse> uses,
      Function<UUID, @Nullable StockItem> item,
      Function<StockItem, Double> shareOfUse) {
    Map<String, Double> costs = new TreeMap<>();
    Map<String, Set<String>> cases = new TreeMap<>();
    Map<String, double[]> materials = new TreeMap<>();
    int counted = 0;
    for (PastUse use : uses) {
      StockItem of = item.apply(use.item());
      if (of == null || of.price() == null) {
        continue;
      }
      counted++;
      double cost = of.price().doubleValue() * shareOfUse.apply(of);
      costs.merge(use.procedure(), cost, Double::sum);
      cases.computeIfAbsent(use.procedure(), any -> new HashSet<>()).add(use.caseReference());
      double all = use.mm3ByMaterial().values().stream().mapToDouble(Double::doubleValue).sum();
      use.mm3ByMaterial()
          .forEach(
              (material, mm3) -> {
                if (mm3 > 0) {
                  double[] sums = materials.computeIfAbsent(material, any -> new double[2]);
                  sums[0] += mm3;
                  sums[1] += cost * mm3 / all;
                }
              });
    }
    List<OfProcedure> procedures = new ArrayList<>();
    costs.forEach(
        (name, cost) ->
            procedures.add(new OfProcedure(name, cases.getOrDefault(name, Set.of()).size(), cost)));
    List<OfMaterial> byMaterial = new ArrayList<>();
    materials.forEach((name, sums) -> byMaterial.add(new OfMaterial(name, sums[0], sums[1])));
    return new Costs(procedures, byMaterial, counted, uses.size() - counted);
  }
}
