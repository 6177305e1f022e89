package kerfwright.planner.uncertainty;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.material.Trait;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.sequence.TimedCut;

/** Where layers lie in a draw. Depth is read by eye and feel: a layer is cut through as it is. */
final class DrawnLayers {
  private final List<Layer> layers;
  private final double[] typicalM;
  private final double[] drawnM;
  private final boolean[] through;
  private double floorM;

  DrawnLayers(CutCase c, List<TimedCut> sequence, Draw draw) {
    layers = c.layers();
    through = new boolean[layers.size()];
    typicalM = new double[layers.size()];
    drawnM = new double[layers.size()];
    for (int i = 0; i < layers.size(); i++) {
      typicalM[i] = layers.get(i).thickness().typical().metres();
      drawnM[i] = draw.thicknessM(layers.get(i).thickness(), i);
    }
    double deepest = 0;
    for (TimedCut cut : sequence) {
      deepest = Math.max(deepest, cut.candidate().work().toM());
    }
    double top = 0;
    for (int i = 0; i < layers.size(); i++) {
      top += typicalM[i];
      through[i] = deepest >= top - 1e-9;
    }
  }

  /** How much thicker than planned a layer is that is cut through. */
  double stretched(int layer) {
    return through[layer] ? drawnM[layer] / typicalM[layer] : 1;
  }

  /** A planned depth: measured from the top of its layer, stretched where that is cut through. */
  double sampledM(double plannedM) {
    double top = 0;
    double drawnTop = 0;
    for (int i = 0; i < typicalM.length; i++) {
      boolean here = plannedM <= top + typicalM[i] + 1e-12 || i == typicalM.length - 1;
      if (here) {
        double into = plannedM - top;
        return drawnTop + (through[i] ? into * stretched(i) : Math.min(into, drawnM[i]));
      }
      top += typicalM[i];
      drawnTop += drawnM[i];
    }
    return drawnTop;
  }

  /** How far the floor goes down; what is cut beside it does not deepen it. */
  double deepensMm(double toM) {
    double deepens = Math.max(0, toM - floorM);
    floorM = Math.max(floorM, toM);
    return deepens * 1e3;
  }

  double dentineLeftMm(List<TimedCut> sequence) {
    double left = 0;
    double deepest = 0;
    for (TimedCut cut : sequence) {
      deepest = Math.max(deepest, sampledM(cut.candidate().work().toM()));
    }
    double top = 0;
    for (int i = 0; i < layers.size(); i++) {
      if (layers.get(i).material().has(Trait.DENTINE)) {
        left += Math.max(0, top + drawnM[i] - Math.max(top, deepest));
      }
      top += drawnM[i];
    }
    return left * 1e3;
  }

  List<HeatLayer> heatLayers(Draw draw) {
    List<HeatLayer> result = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      result.add(HeatLayer.of(drawnM[i] * 1e3, draw.substance(layers.get(i).material())));
    }
    return result;
  }
}
