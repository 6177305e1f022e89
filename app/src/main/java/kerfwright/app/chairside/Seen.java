package kerfwright.app.chairside;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kerfwright.planner.casework.ChamberDepth;
import kerfwright.planner.casework.Condition;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.FilledIn;
import kerfwright.planner.casework.Known;
import kerfwright.planner.casework.Layer;
import kerfwright.quantity.Length;

/**
 * A border that was seen earlier or later than planned.
 *
 * @param border the layer it lies under, 0 for the outermost; {@link #ROOF} for the roof of the
 *     chamber
 * @param mm how deep it was seen below the top, or the roof below the landmark
 */
record Seen(int border, double mm) {
  static final int ROOF = -1;

  /** Thinner than this no layer is told from the next one at the chair. */
  private static final double LEAST_MM = 0.05;

  private static final double MOST_MM = 20;

  /** The case as it was found to be; empty where nothing can be so. */
  Optional<CutCase> in(CutCase c) {
    if (!(mm >= LEAST_MM && mm <= MOST_MM)) {
      return Optional.empty();
    }
    Condition was = c.condition();
    if (border == ROOF) {
      return Optional.of(
          changed(
              c, was.layers(), ChamberDepth.read(Length.ofMillimetres(mm), Known.FILM), "chamber"));
    }
    if (border < 0 || border >= was.layers().size()) {
      return Optional.empty();
    }
    double above = 0;
    for (Layer one : was.layers().subList(0, border)) {
      above += one.thickness().typical().millimetres();
    }
    if (mm - above < LEAST_MM) {
      return Optional.empty();
    }
    List<Layer> layers = new ArrayList<>(was.layers());
    Length thick = Length.ofMillimetres(Math.round((mm - above) * 1000) / 1000.0);
    layers.set(
        border,
        new Layer(
            layers.get(border).material(), Known.MEASURED.around(thick, null), Known.MEASURED));
    return Optional.of(changed(c, layers, was.chamber(), "layers"));
  }

  private static CutCase changed(
      CutCase c,
      List<Layer> layers,
      @org.jspecify.annotations.Nullable ChamberDepth chamber,
      String told) {
    Condition was = c.condition();
    List<FilledIn> filled = c.filledIn().stream().filter(one -> !one.field().equals(told)).toList();
    return new CutCase(
        c.reference(),
        c.procedure(),
        c.tooth(),
        new Condition(was.pulp(), was.restoration(), was.lesion(), layers, chamber),
        c.aim(),
        c.atHand(),
        filled);
  }
}
