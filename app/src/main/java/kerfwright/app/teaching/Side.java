package kerfwright.app.teaching;

import java.util.List;
import kerfwright.app.drawing.instrument.AbrasiveSurface;
import kerfwright.app.drawing.instrument.BladeSection;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentProperties;
import org.jspecify.annotations.Nullable;

/**
 * What stands side by side, on screen and on a handout.
 *
 * @param key names of the layers beside the sections
 * @param note when the sections are drawn
 * @param columns one for each way to cut
 * @param rows figures, one cell for each column
 */
public record Side(String key, String note, List<Column> columns, List<Row> rows) {
  private static final long GRAIN_SEED = 1;

  public Side {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * One way to cut.
   *
   * @param letter A to D
   * @param name what it is done with
   * @param set speed, load, water and stroke
   * @param what the instrument, null where the change is refused
   * @param section the instrument at work in the layers, empty where it is refused
   */
  public record Column(
      String letter,
      String name,
      String set,
      @Nullable InstrumentProperties what,
      String section) {}

  /** One line of figures, its head first. */
  public record Row(String head, List<String> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /** What cuts, drawn: blades in section or grains on the surface. The words stand beside it. */
  public static String working(Say say, String id, InstrumentProperties what) {
    Integer blades = what.blades();
    GritClass grit = what.grit();
    if (blades != null) {
      return BladeSection.bare(say, id, blades, what.headDiameter().millimetres());
    }
    return grit == null ? "" : AbrasiveSurface.bare(say, id, grit, GRAIN_SEED);
  }

  /** What that drawing shows and what of it is assumed. */
  public static String caption(Say say, InstrumentProperties what) {
    GritClass grit = what.grit();
    if (what.blades() != null) {
      return say.at("plan.blades", what.blades()) + ". " + BladeSection.assumed(say);
    }
    return grit == null
        ? ""
        : say.at("teaching.grains", Labels.ring(say, grit), AbrasiveSurface.size(say, grit));
  }

  /** A to D, as the columns are called. */
  static String letter(int column) {
    return String.valueOf((char) ('A' + column));
  }
}
