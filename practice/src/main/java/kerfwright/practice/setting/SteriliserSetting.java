package kerfwright.practice.setting;

/**
 * What the practice sterilises with. Defaults are project settings, for a practice that has not
 * said: one steriliser that takes twelve pouches, 20 min of cleaning before it and 45 min a load.
 *
 * @param sterilisers how many stand there
 * @param pouches how many pouches one load takes
 * @param cleaningMin time from use until an instrument is ready for a load, min
 * @param loadMin time of one load from closed to released, min
 */
public record SteriliserSetting(int sterilisers, int pouches, int cleaningMin, int loadMin) {
  public static final String COUNT = "steriliser.count";
  public static final String POUCHES = "steriliser.pouches";
  public static final String CLEANING = "steriliser.cleaning-min";
  public static final String LOAD = "steriliser.load-min";

  public static SteriliserSetting of(SettingValues set) {
    return new SteriliserSetting(
        set.whole(COUNT, 1), set.whole(POUCHES, 12), set.whole(CLEANING, 20), set.whole(LOAD, 45));
  }
}
