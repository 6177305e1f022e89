package kerfwright.practice.setting;

import kerfwright.quantity.Identified;

/** What somebody of the practice does; some acts ask for a role. */
public enum StaffRole implements Identified {
  CLINICIAN,
  ASSISTANT,
  REPROCESSING;
}
