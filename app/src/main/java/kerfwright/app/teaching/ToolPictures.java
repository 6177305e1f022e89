package kerfwright.app.teaching;

import kerfwright.app.drawing.instrument.AbrasiveSurface;
import kerfwright.app.drawing.instrument.BladeSection;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentProperties;

/** What cuts, drawn: blades in section or grains on the surface. The words stand beside it. */
public final class ToolPictures {
  private static final long GRAIN_SEED = 1;

  private ToolPictures() {}

  public static String working(Say say, String id, InstrumentProperties what) {
    Integer blades = what.blades();
    GritClass grit = what.grit();
    if (blades != null) {
      return BladeSection.bare(say, id, blades, what.headDiameter().millimetres());
    }
    return grit == null ? "" : AbrasiveSurface.bare(say, id, grit, GRAIN_SEED);
  }

  /** What the drawing shows and what of it is assumed. */
  public static String caption(Say say, InstrumentProperties what) {
    GritClass grit = what.grit();
    if (what.blades() != null) {
      return say.at("plan.blades", what.blades()) + ". " + BladeSection.assumed(say);
    }
    return grit == null
        ? ""
        : say.at("teaching.grains", Labels.ring(say, grit), AbrasiveSurface.size(say, grit));
  }
}
