package kerfwright.practice.setting;

/**
 * A setting that is a whole number within a range.
 *
 * @param name the name it is kept under
 * @param usual what counts while nobody has said; a project setting, without a source
 * @param least smallest number allowed
 * @param most greatest number allowed
 */
public record WholeSetting(String name, int usual, int least, int most) {
  public WholeSetting {
    if (least > usual || usual > most) {
      throw new IllegalArgumentException(name + ": " + usual + " is not " + least + " to " + most);
    }
  }

  /** The number as set, drawn into the range; the usual one where nobody has said. */
  public int of(SettingValues set) {
    return Math.max(least, Math.min(most, set.whole(name, usual)));
  }

  /** Whether this text is a number of the range; an empty one takes the setting back to usual. */
  public boolean allows(String text) {
    if (text.isEmpty()) {
      return true;
    }
    return text.matches("\\d{1,6}")
        && Integer.parseInt(text) >= least
        && Integer.parseInt(text) <= most;
  }
}
