package kerfwright.catalogue.evidence;

import kerfwright.quantity.Identified;

/** Conditions of a test that the models need, with the unit the files give them in. */
public enum ConditionKind implements Identified {
  LOAD("N", "load"),
  SPEED("rpm", "speed without load"),
  WATER("mL/min", "water"),
  WATER_TEMPERATURE("degC", "temperature of water and air"),
  BODY_TEMPERATURE("degC", "temperature of the tooth"),
  DIAMETER("mm", "diameter"),
  ENGAGED("mm", "engaged length"),
  DEPTH_OF_CUT("um", "depth of cut"),
  GRAIN("um", "grain size"),
  BLADES("1", "blades"),
  MINUTES("min", "cutting time"),
  CUT_BEFORE("mm3", "volume cut before"),
  VOLUME("mm3", "volume cut"),
  STERILISATIONS("1", "sterilisations"),
  SECONDS("s", "cutting time"),
  CONTACT("s", "one contact"),
  PAUSE("s", "pause after it"),
  AREA("mm2", "area of the opening"),
  COVER("mm", "outer layer"),
  DEEPENS("mm", "depth of the opening"),
  REMAINING("mm", "remaining dentine"),
  MOUTH_TEMPERATURE("degC", "temperature in the mouth"),
  HOLD("s", "time at that temperature"),
  FALL("s", "time of the fall to body temperature"),
  CYCLES("1", "cycles"),
  REST("s", "rest after each"),
  FILM("W/(m2 K)", "heat transfer coefficient of the drink"),
  RUN_OUT("um", "run-out"),
  ROOM_START("degC", "temperature of the tooth, if it stood in the room"),
  PERFUSION("mL/(min g)", "blood flow of the pulp");

  private final String unit;
  private final String label;

  ConditionKind(String unit, String label) {
    this.unit = unit;
    this.label = label;
  }

  public String unit() {
    return unit;
  }

  public String label() {
    return label;
  }
}
