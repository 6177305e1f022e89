package kerfwright.practice.setting;

/**
 * What the practice sterilises with; its times are those of its reprocessing steps. Defaults are
 * project settings, for a practice that has not said: one steriliser that takes twelve pouches.
 *
 * @param sterilisers how many stand there
 * @param pouches how many pouches one load takes
 */
public record SteriliserSetting(int sterilisers, int pouches) {
  public static final String COUNT = "steriliser.count";
  public static final String POUCHES = "steriliser.pouches";

  public static SteriliserSetting of(SettingValues set) {
    return new SteriliserSetting(set.whole(COUNT, 1), set.whole(POUCHES, 12));
  }
}
