package kerfwright.practice.restock;

/**
 * How far to look.
 *
 * @param aheadWeeks weeks the stock must last
 * @param historyWeeks weeks of the record that tell how much is used
 */
public record RestockOptions(int aheadWeeks, int historyWeeks) {
  /** Four weeks ahead by the last thirteen. */
  public static final RestockOptions USUAL = new RestockOptions(4, 13);

  /** Most weeks either way. */
  public static final int MOST_WEEKS = 104;

  public RestockOptions {
    if (aheadWeeks < 1
        || aheadWeeks > MOST_WEEKS
        || historyWeeks < 1
        || historyWeeks > MOST_WEEKS) {
      throw new IllegalArgumentException("weeks " + aheadWeeks + ", " + historyWeeks);
    }
  }
}
