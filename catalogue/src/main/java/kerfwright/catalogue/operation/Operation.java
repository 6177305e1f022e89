package kerfwright.catalogue.operation;

import java.util.List;
import kerfwright.catalogue.Provenance;
import org.jspecify.annotations.Nullable;

/**
 * One thing the hand does until one cue. Its texts (name, end cue, stop-if, hazard, way) stand in
 * the text files beside the data under {@code operation.<variant>.<id>.<text>}, falling back to
 * {@code operation.<id>.<text>}.
 *
 * @param variant procedure variant it belongs to, e.g. access-natural-molar
 * @param order place in the variant, 1 first
 * @param id e.g. deepen-dentine
 * @param task what it does
 * @param fromLayer where it starts: a material id, {@code #trait}, or {@code any}
 * @param toLayer what it ends in: the same, or {@code chamber}, {@code canal}
 * @param geometry what is cut
 * @param window which instruments are allowed
 * @param operating how it is run
 * @param heat where its heat is judged
 * @param spare least that must stay of the layer it ends in, mm; {@code all} where that layer must
 *     not be touched; null where nothing is spared
 * @param when condition of an optional operation: a formula that is above zero where it is done, or
 *     {@code hand} where only the mouth shows it; empty where it is always done
 * @param repeatMost how often it may be repeated until its cue, 1 for once
 * @param leastSeconds least time the trade asks for it, s, else 0
 * @param chairLeastS published chair time, low end, s, or null
 * @param chairMostS published chair time, high end, s, or null
 * @param says figures its texts name as {0}, {1} and so on, mm
 * @param provenance sources and standing of the row
 */
public record Operation(
    String variant,
    int order,
    String id,
    Task task,
    String fromLayer,
    String toLayer,
    Geometry geometry,
    Window window,
    Operating operating,
    HeatTarget heat,
    @Nullable Formula spare,
    String when,
    int repeatMost,
    double leastSeconds,
    @Nullable Double chairLeastS,
    @Nullable Double chairMostS,
    List<Formula> says,
    Provenance provenance) {
  /** Condition of an operation that only the mouth shows to be needed. */
  public static final String HAND = "hand";

  public Operation {
    says = List.copyOf(says);
  }

  /** Key of one of its texts: name, cue, stop, hazard, way or when. */
  public String key(String text) {
    return "operation." + variant + "." + id + "." + text;
  }

  /** True where a rotary instrument cuts, finishes or polishes. */
  public boolean cuts() {
    return geometry.kind() != GeometryKind.NONE && !window.kinds().isEmpty();
  }
}
