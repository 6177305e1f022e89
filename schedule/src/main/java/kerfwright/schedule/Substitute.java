package kerfwright.schedule;

/**
 * Another type that may serve a need.
 *
 * @param type the other type
 * @param costRatio its cost over that of the type it stands for; 1 costs the same
 */
public record Substitute(String type, double costRatio) {
  public Substitute {
    if (!(costRatio > 0)) {
      throw new IllegalArgumentException("cost ratio must be above 0, got " + costRatio);
    }
  }
}
