package kerfwright.practice.setting;

/**
 * What the practice sterilises with; its times are those of its reprocessing steps. Defaults are
 * project settings, for a practice that has not said: one steriliser that takes twelve pouches.
 *
 * @param sterilisers how many stand there
 * @param pouches how many pouches one load takes
 */
public record SteriliserSetting(int sterilisers, int pouches) {
  public static final WholeSetting COUNT = new WholeSetting("steriliser.count", 1, 1, 20);
  public static final WholeSetting POUCHES = new WholeSetting("steriliser.pouches", 12, 1, 200);

  public static SteriliserSetting of(SettingValues set) {
    return new SteriliserSetting(COUNT.of(set), POUCHES.of(set));
  }
}
