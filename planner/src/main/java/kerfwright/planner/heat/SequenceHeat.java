package kerfwright.planner.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kerfwright.catalogue.operation.HeatTarget;
import kerfwright.physics.heat.HeatLayer;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.choice.Candidate;
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

  /**
   * The cuts of a sequence. Where several faces of the tooth are cut, the one that takes most heat
   * for its area counts; what is cut elsewhere only wets it.
   */
  public static List<CutHeat> cuts(List<TimedCut> sequence) {
    String face = hottestFace(sequence);
    List<CutHeat> cuts = new ArrayList<>();
    TimedCut before = null;
    double floor = 0;
    for (TimedCut cut : sequence) {
      Candidate c = cut.candidate();
      double change = before == null ? 0 : Change.seconds(before.candidate(), c);
      boolean here = face(c).equals(face);
      double deepens = here ? Math.max(0, c.work().toM() - floor) : 0;
      floor += deepens;
      cuts.add(
          new CutHeat(
              c.heatS(),
              cut.pace().cutS(),
              cut.pace().pauseS(),
              here ? c.cut().powerW() : 0,
              deepens * 1e3,
              change,
              c.contact().areaM2() * 1e6));
      before = cut;
    }
    return cuts;
  }

  /** Whether the pulp wall is where the heat is judged: no chamber is opened. */
  public static boolean atThePulp(List<TimedCut> sequence) {
    return sequence.stream()
        .noneMatch(cut -> cut.candidate().work().heat() == HeatTarget.ROOT_SURFACE);
  }

  /** The face that takes most heat for its area. */
  public static String hottestFace(List<TimedCut> sequence) {
    Map<String, Double> joules = new TreeMap<>();
    Map<String, Double> area = new TreeMap<>();
    for (TimedCut cut : sequence) {
      Candidate c = cut.candidate();
      joules.merge(face(c), c.heatS() * c.cut().powerW(), Double::sum);
      area.merge(face(c), c.work().areaM2(), Math::max);
    }
    String hottest = "";
    double most = -1;
    for (Map.Entry<String, Double> one : joules.entrySet()) {
      double perArea = one.getValue() / Math.max(1e-9, area.getOrDefault(one.getKey(), 0.0));
      if (perArea > most) {
        most = perArea;
        hottest = one.getKey();
      }
    }
    return hottest;
  }

  /** The face a choice works on. */
  public static String face(Candidate c) {
    return c.work().operation().geometry().face();
  }
}
