package kerfwright.schedule.search;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;

/**
 * How unevenly the instruments of one type are worn at the end of the day, from a flow with exact
 * uses left.
 *
 * <p>{@code ends(r)} instruments end with r uses left; {@code up[r]} says that some instrument ends
 * with r or more, {@code down[r]} that some ends with r or fewer. Unevenness is the highest r minus
 * the lowest, which equals the difference of wear as all share one life.
 */
final class Evenness {
  private final CpModel model;
  private final TypeFlow flow;
  private final BoolVar[] up;
  private final BoolVar[] down;

  private Evenness(CpModel model, TypeFlow flow, int highest) {
    this.model = model;
    this.flow = flow;
    up = new BoolVar[highest + 1];
    down = new BoolVar[highest + 1];
  }

  /** The unevenness of a flow with {@link Levels#worn}. */
  static LinearExprBuilder of(CpModel model, TypeFlow flow) {
    int highest = 0;
    for (int left : flow.type.left) {
      highest = Math.max(highest, left);
    }
    LinearExprBuilder unevenness = LinearExpr.newBuilder();
    return flow.type.units == 0
        ? unevenness
        : new Evenness(model, flow, highest).build(unevenness, highest);
  }

  private LinearExprBuilder build(LinearExprBuilder unevenness, int highest) {
    int units = flow.type.units;
    LinearExprBuilder total = LinearExpr.newBuilder();
    LinearExprBuilder most = LinearExpr.newBuilder();
    LinearExprBuilder least = LinearExpr.newBuilder().add((long) units * highest);
    for (int r = 0; r <= highest; r++) {
      up[r] = model.newBoolVar("");
      down[r] = model.newBoolVar("");
      total.addTerm(ends(r), r);
      if (r > 0) {
        model.addImplication(up[r], up[r - 1]);
        model.addImplication(down[r - 1], down[r]);
        unevenness.add(up[r]).add(down[r - 1]);
        most.addTerm(up[r], units);
        least.addTerm(down[r - 1], -units);
      }
    }
    LinearExprBuilder below = LinearExpr.newBuilder();
    LinearExprBuilder above = LinearExpr.newBuilder().add(units);
    for (int r = 0; r <= highest; r++) {
      model.addLessOrEqual(LinearExpr.newBuilder().add(above), LinearExpr.term(up[r], units));
      below.add(ends(r));
      above.addTerm(ends(r), -1);
      model.addLessOrEqual(LinearExpr.newBuilder().add(below), LinearExpr.term(down[r], units));
    }
    // the mean of uses left lies between the extremes: implied, and it lifts the relaxation
    model.addLessOrEqual(total, most);
    model.addGreaterOrEqual(total, least);
    return unevenness.add(-highest);
  }

  /** Instruments that end the day with r uses left. */
  private LinearExprBuilder ends(int r) {
    LinearExprBuilder n = LinearExpr.newBuilder();
    for (int left : flow.type.left) {
      n.add(left == r ? 1 : 0);
    }
    for (BoolVar[] from : flow.x) {
      if (r > 0 && r < from.length && from[r] != null) {
        n.addTerm(from[r], -1);
      }
      if (r + 1 < from.length && from[r + 1] != null) {
        n.add(from[r + 1]);
      }
    }
    return n;
  }
}
