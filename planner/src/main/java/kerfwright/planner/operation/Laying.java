package kerfwright.planner.operation;

import java.util.List;
import kerfwright.catalogue.operation.Operation;
import kerfwright.planner.casework.CutCase;
import kerfwright.quantity.Finding;

/**
 * The operations of a procedure laid through the layers of a case: what is cut, in which order, how
 * much of which layer, and the cues between.
 *
 * <p>A volume is shared among the layers an operation passes by their thickness on its way; a film
 * of cement or adhesive goes with its neighbour. What must stay cuts an operation short.
 *
 * @param works the operations that cut, in order
 * @param cues those that cut nothing, with their place
 * @param findings what has to be known beside them
 */
public record Laying(List<Work> works, List<Cue> cues, List<Finding> findings) {
  public Laying {
    works = List.copyOf(works);
    cues = List.copyOf(cues);
    findings = List.copyOf(findings);
  }

  /** Whether a case or the usual sizes give this name of a formula a value. */
  public static boolean knowsName(String name) {
    return CaseQuantities.knows(name);
  }

  /** Lays a procedure's operations, which are all of one variant, through a case. */
  public static Laying of(CutCase c, List<Operation> operations) {
    Layout layout = new Layout(c);
    operations.forEach(layout::add);
    return layout.laying();
  }

  /** How deep the deepest work goes, m. */
  public double depthM() {
    return works.stream().mapToDouble(Work::toM).max().orElse(0);
  }
}
