package kerfwright.practice.people;

import java.util.Optional;
import kerfwright.practice.setting.StaffRole;
import kerfwright.quantity.Identified;

/** What somebody may do in the program. What they do in the practice is a {@link StaffRole}. */
public enum Role implements Identified {
  OWNER(StaffRole.CLINICIAN),
  CLINICIAN(StaffRole.CLINICIAN),
  ASSISTANT(StaffRole.ASSISTANT),
  STUDENT(null),
  READ_ONLY(null);

  private final @org.jspecify.annotations.Nullable StaffRole usual;

  Role(@org.jspecify.annotations.Nullable StaffRole usual) {
    this.usual = usual;
  }

  /** What people of this role usually do; empty for those who put nothing down. */
  public Optional<StaffRole> usual() {
    return Optional.ofNullable(usual);
  }
}
