package kerfwright.app.teaching;

import java.util.Locale;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.planner.plan.PlannedStep;
import kerfwright.planner.plan.Stroke;

/** Which lecture shows why a step of a plan is as it is, with the step's own figures. */
public final class ShowWhy {
  private ShowWhy() {}

  /** Address of the lecture: its layer, instrument, load and speed stand in it. */
  public static String href(PlannedStep step) {
    var what = step.instrument().properties();
    GritClass grit = what.grit();
    Integer blades = what.blades();
    Topic topic =
        what.kind().bladed()
            ? Topic.CHIP
            : Topic.PRESSED.layer(step.materialId()).isPresent() ? Topic.PRESSED : Topic.PLOUGHED;
    String frame = topic == Topic.CHIP && step.stroke() == Stroke.WITH_ROTATION ? "&step=3" : "";
    return String.format(
        Locale.ROOT,
        "/teach/show/%s?layer=%s%s%s&diameter=%s&load=%s&rpm=%s%s",
        topic.id(),
        step.materialId(),
        grit == null ? "" : "&grit=" + grit.id(),
        blades == null ? "" : "&blades=" + blades,
        Scene.plain(what.headDiameter().millimetres()),
        Scene.plain(step.loadN().typical()),
        Scene.plain(Math.rint(step.speedUnderLoadRpm().typical())),
        frame);
  }
}
