package kerfwright.planner.heat;

import java.util.ArrayList;
import java.util.List;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.sequence.Change;
import kerfwright.planner.sequence.TimedCut;

/** Turns a sequence of timed cuts into what the heat model needs. */
public final class SequenceHeat {
  private SequenceHeat() {}

  /** The wall for a case with typical layers. */
  public static PulpWall wall(CutCase c) {
    List<HeatLayer> layers =
        c.layers().stream()
            .map(l -> HeatLayer.of(l.thickness().typical().millimetres(), l.material().typical()))
            .toList();
    return new PulpWall(layers, c.outline().areaM2() * 1e6, c.coolant().millilitresPerMinute());
  }

  /** The cuts of a sequence. A punch does not deepen the floor; the widening that follows does. */
  public static List<CutHeat> cuts(List<TimedCut> sequence) {
    List<CutHeat> cuts = new ArrayList<>();
    TimedCut before = null;
    for (TimedCut cut : sequence) {
      double change = before == null ? 0 : Change.seconds(before.candidate(), cut.candidate());
      boolean punch = cut.candidate().segment().punch();
      double deepens =
          punch ? 0 : (cut.candidate().segment().toM() - cut.candidate().segment().fromM()) * 1e3;
      cuts.add(
          new CutHeat(
              cut.candidate().heatS(),
              cut.pace().cutS(),
              cut.pace().pauseS(),
              cut.candidate().cut().powerW(),
              deepens,
              change,
              cut.candidate().contact().areaM2() * 1e6));
      before = cut;
    }
    return cuts;
  }
}
