package kerfwright.practice.record;

/** Someone else corrected the same entry; nothing was written. */
public final class CorrectedMeanwhile extends Exception {
  private static final long serialVersionUID = 1L;
}
