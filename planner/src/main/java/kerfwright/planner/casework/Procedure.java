package kerfwright.planner.casework;

import java.util.Arrays;
import java.util.List;

/** Procedures a case may ask for, by their id in files. */
public enum Procedure {
  ACCESS_CAVITY("access-cavity", "Access cavity"),
  CROWN_SECTIONING("crown-sectioning", "Crown sectioning"),
  CAVITY_PREPARATION("cavity-preparation", "Cavity preparation"),
  ENAMEL_BEVEL("enamel-bevel", "Enamel bevel"),
  CROWN_PREPARATION("crown-preparation", "Crown preparation"),
  VENEER_PREPARATION("veneer-preparation", "Veneer preparation"),
  AMALGAM_REMOVAL("amalgam-removal", "Amalgam removal"),
  COMPOSITE_REMOVAL("composite-removal", "Composite removal"),
  ADHESIVE_CLEAN_UP("adhesive-clean-up", "Adhesive clean-up"),
  FINISH_COMPOSITE("finish-composite", "Finish composite"),
  FINISH_CERAMIC("finish-ceramic", "Finish ceramic"),
  OCCLUSAL_ADJUSTMENT("occlusal-adjustment", "Occlusal adjustment"),
  POST_EXPOSURE("post-exposure", "Post exposure");

  private final String id;
  private final String label;

  Procedure(String id, String label) {
    this.id = id;
    this.label = label;
  }

  public String id() {
    return id;
  }

  public String label() {
    return label;
  }

  public static List<String> ids() {
    return Arrays.stream(values()).map(Procedure::id).toList();
  }
}
