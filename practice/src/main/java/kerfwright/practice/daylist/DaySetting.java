package kerfwright.practice.daylist;

import java.time.LocalTime;
import java.util.List;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.practice.reprocessing.ReprocessingSetting;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.SteriliserSetting;

/**
 * What the practice's days look like. All defaults are project settings, for a practice that has
 * not said.
 *
 * @param opens when the day starts
 * @param lengthMin opening time
 * @param gridMin loads start at multiples of this
 * @param chairs names of the chairs
 * @param sterilisers the sterilisers
 * @param reprocessing how long an instrument takes from use to clean
 * @param set where lives are looked up
 */
public record DaySetting(
    LocalTime opens,
    int lengthMin,
    int gridMin,
    List<String> chairs,
    SteriliserSetting sterilisers,
    ReprocessingSetting reprocessing,
    SettingValues set) {
  public static final String OPENS = "day.opens";
  public static final String LENGTH = "day.length-min";
  public static final String GRID = "day.load-grid-min";
  public static final String CHAIRS = "day.chairs";

  /** Settings of lives begin with this; the id of the kind follows, uses are the value. */
  public static final String LIFE = "life.";

  public static DaySetting of(SettingValues set) {
    String opens = set.text(OPENS, "08:00");
    return new DaySetting(
        LocalTime.parse(opens.matches("([01]\\d|2[0-3]):[0-5]\\d") ? opens : "08:00"),
        Math.max(60, Math.min(1440, set.whole(LENGTH, 540))),
        Math.max(5, set.whole(GRID, 15)),
        List.of(set.text(CHAIRS, "1 2").strip().split("\\s+")),
        SteriliserSetting.of(set),
        ReprocessingSetting.of(set),
        set);
  }

  /** Uses after which an instrument is withdrawn. */
  public int lifeUses(InstrumentKind kind, boolean singleUse) {
    return singleUse ? 1 : Math.max(1, set.whole(LIFE + kind.id(), usual(kind)));
  }

  private static int usual(InstrumentKind kind) {
    return switch (kind) {
      case DIAMOND, CARBIDE, POLISHER -> 5;
      case SINTERED_DIAMOND -> 15;
      case STEEL -> 3;
      case CERAMIC, STONE -> 10;
      case POLYMER, DISC -> 1;
    };
  }

  public LocalTime closes() {
    return opens.plusMinutes(lengthMin);
  }

  /** Minutes from opening; negative before. */
  public int minute(LocalTime time) {
    return (time.toSecondOfDay() - opens.toSecondOfDay()) / 60;
  }
}
