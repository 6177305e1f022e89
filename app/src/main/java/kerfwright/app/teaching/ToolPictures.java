package kerfwright.app.teaching;

import kerfwright.app.drawing.AbrasiveSurface;
import kerfwright.app.drawing.BladeSection;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentProperties;

/** What cuts, drawn: blades in section or grains on the surface. */
public final class ToolPictures {
  private static final long GRAIN_SEED = 1;

  private ToolPictures() {}

  public static String working(Say say, String id, InstrumentProperties what) {
    Integer blades = what.blades();
    GritClass grit = what.grit();
    if (blades != null) {
      return BladeSection.draw(say, id, blades, what.headDiameter().millimetres());
    }
    return grit == null ? "" : AbrasiveSurface.draw(say, id, grit, GRAIN_SEED);
  }
}
