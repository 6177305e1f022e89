package kerfwright.practice.setting;

import java.util.Arrays;
import java.util.Optional;

/** What somebody of the practice does; some acts ask for a role. */
public enum StaffRole {
  CLINICIAN("clinician"),
  ASSISTANT("assistant"),
  REPROCESSING("reprocessing");

  private final String id;

  StaffRole(String id) {
    this.id = id;
  }

  public String id() {
    return id;
  }

  public static Optional<StaffRole> byId(String id) {
    return Arrays.stream(values()).filter(one -> one.id.equals(id)).findFirst();
  }
}
