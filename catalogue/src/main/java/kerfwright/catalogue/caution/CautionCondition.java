package kerfwright.catalogue.caution;

import java.util.Arrays;
import java.util.Optional;

/** The closed set of conditions that call up a caution. */
public enum CautionCondition {
  ALWAYS("always"),
  CUTTING_TOOTH("cutting-tooth"),
  CUTTING_METAL("cutting-metal"),
  CUTTING_CERAMIC("cutting-ceramic"),
  CUTTING_COMPOSITE("cutting-composite"),
  CUTTING_ZIRCONIA("cutting-zirconia"),
  VITAL_TOOTH("vital-tooth"),
  BONE("bone"),
  POST("post"),
  AMALGAM("amalgam"),
  HIGH_SPEED("high-speed"),
  OPEN_WOUND("open-wound"),
  ADJACENT_TOOTH("adjacent-tooth"),
  MODEL_OUTPUT("model-output"),
  TEACHING("teaching"),
  NOISE("noise");

  private final String id;

  CautionCondition(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }

  public static Optional<CautionCondition> of(String id) {
    return Arrays.stream(values()).filter(c -> c.id.equals(id)).findFirst();
  }
}
