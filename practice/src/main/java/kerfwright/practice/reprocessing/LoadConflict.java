package kerfwright.practice.reprocessing;

/** Someone else was quicker; nothing was written. */
public final class LoadConflict extends Exception {
  private static final long serialVersionUID = 1L;

  public LoadConflict(String name) {
    super(name);
  }
}
