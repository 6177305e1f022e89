package kerfwright.app.drawing.strip;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.words.Say;
import kerfwright.catalogue.material.Material;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.PulpState;
import kerfwright.planner.plan.CutPlan;
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

  /** At the wall of one layer, each as deep as it came. */
  public static SideBySide inLayer(Say say, String id, Material layer, List<AtWork> works) {
    double deepest = works.stream().mapToDouble(AtWork::toMm).max().orElse(0);
    Length thick = Length.ofMillimetres(deepest + BEHIND_MM);
    List<Layer> layers = List.of(new Layer(layer, Range.exactly(thick)));
    StripScale scale = StripScale.of(layers, PulpState.UNKNOWN, works, true, WIDTH, HEIGHT);
    return drawn(say, id, scale, false);
  }

  /** At one step of a plan, in the layers of its case. */
  public static SideBySide atStep(Say say, String id, CutPlan plan, List<AtWork> works) {
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
