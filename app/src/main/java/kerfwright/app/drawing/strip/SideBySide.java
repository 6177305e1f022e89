package kerfwright.app.drawing.strip;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.drawing.Column;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.plan.CutPlan;
import kerfwright.planner.plan.Stroke;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;

/**
 * Several instruments at work in the same layers, on one scale and drawn as the stages of a plan.
 *
 * @param key names of the layers, with the scale
 * @param columns one drawing for each, in their order
 */
public record SideBySide(String key, List<String> columns) {
  private static final double WIDTH = 190;
  private static final double HEIGHT = 340;
  private static final double BEHIND_MM = 1.2;

  public SideBySide {
    columns = List.copyOf(columns);
  }

  /**
   * One of them.
   *
   * @param letter of its column
   * @param id its own id, empty for one that stands for its kind
   * @param what the instrument
   * @param stroke how it is led
   */
  public record Column(String letter, String id, InstrumentProperties what, Stroke stroke) {}

  /** At the wall of one layer, each as deep as it came. */
  public static SideBySide inLayer(
      Say say, String id, Material layer, List<Column> columns, List<Double> depthsMm) {
    List<AtWork> works = new ArrayList<>();
    double deepest = 0;
    for (int i = 0; i < columns.size(); i++) {
      Column one = columns.get(i);
      double deep = depthsMm.get(i);
      deepest = Math.max(deepest, deep);
      works.add(
          new AtWork(
              one.letter(), List.of(), one.id(), one.what(), one.stroke(), 0, 0, deep, null));
    }
    Length thick = Length.ofMillimetres(deepest + BEHIND_MM);
    List<Layer> layers = List.of(new Layer(layer, Range.exactly(thick)));
    StripScale scale = StripScale.of(layers, PulpState.UNKNOWN, works, true, WIDTH, HEIGHT);
    return drawn(say, id, scale, false);
  }

  /** At one step of a plan, in the layers of its case. */
  public static SideBySide atStep(
      Say say, String id, CutPlan plan, int step, List<Column> columns) {
    AtWork planned = AtWork.of(plan, Stage.only(plan, step));
    List<AtWork> works =
        columns.stream()
            .map(one -> planned.with(one.letter(), one.id(), one.what(), one.stroke()))
            .toList();
    return drawn(say, id, StripScale.of(plan, works, WIDTH, HEIGHT), true);
  }

  private static SideBySide drawn(Say say, String id, StripScale scale, boolean sized) {
    List<String> drawings = new ArrayList<>();
    for (AtWork work : scale.works()) {
      drawings.add(new StageDrawing(say, scale, work).draw(id + "-" + work.badge()));
    }
    return new SideBySide(
        new LayerKey(say, scale, LayerStrip.KEY, sized).draw(id + "-key"), drawings);
  }
}
