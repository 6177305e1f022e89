package kerfwright.practice.people;

import java.util.Arrays;
import java.util.Optional;
import kerfwright.practice.setting.StaffRole;

/** What somebody may do in the program. What they do in the practice is a {@link StaffRole}. */
public enum Role {
  OWNER("owner", StaffRole.CLINICIAN),
  CLINICIAN("clinician", StaffRole.CLINICIAN),
  ASSISTANT("assistant", StaffRole.ASSISTANT),
  STUDENT("student", null),
  READ_ONLY("read-only", null);

  private final String id;
  private final @org.jspecify.annotations.Nullable StaffRole usual;

  Role(String id, @org.jspecify.annotations.Nullable StaffRole usual) {
    this.id = id;
    this.usual = usual;
  }

  public String id() {
    return id;
  }

  /** What people of this role usually do; empty for those who put nothing down. */
  public Optional<StaffRole> usual() {
    return Optional.ofNullable(usual);
  }

  public static Optional<Role> byId(String id) {
    return Arrays.stream(values()).filter(one -> one.id.equals(id)).findFirst();
  }
}
