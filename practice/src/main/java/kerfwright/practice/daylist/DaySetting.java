package kerfwright.practice.daylist;

import java.time.LocalTime;
import java.util.List;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.practice.reprocessing.Loads;
import kerfwright.practice.reprocessing.ReprocessingSetting;
import kerfwright.practice.reprocessing.SteriliserLock;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.SteriliserSetting;
import kerfwright.practice.setting.WholeSetting;

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
  public static final String USUAL_OPENS = "08:00";
  public static final String CHAIRS = "day.chairs";
  public static final String USUAL_CHAIRS = "1 2";

  /** Opening time, min. */
  public static final WholeSetting LENGTH = new WholeSetting("day.length-min", 540, 60, 1440);

  /** Loads start at multiples of this, min. */
  public static final WholeSetting GRID = new WholeSetting("day.load-grid-min", 15, 5, 120);

  private static final int MOST_CHAIRS = 12;
  private static final int MOST_USES = 500;

  public static DaySetting of(SettingValues set) {
    String opens = set.text(OPENS, USUAL_OPENS);
    String chairs = set.text(CHAIRS, USUAL_CHAIRS);
    ReprocessingSetting reprocessing = ReprocessingSetting.of(set);
    return new DaySetting(
        LocalTime.parse(isTime(opens) ? opens : USUAL_OPENS),
        LENGTH.of(set),
        GRID.of(set),
        chairs(chairsAreSound(chairs) ? chairs : USUAL_CHAIRS),
        // those that have names are the ones that stand there
        new SteriliserSetting(
            reprocessing.sterilisers().size(), SteriliserSetting.of(set).pouches()),
        reprocessing,
        set);
  }

  /** The same with those sterilisers alone that are in service; a day has at least one. */
  public DaySetting inService(Loads loads) {
    int locked =
        (int)
            reprocessing.sterilisers().stream()
                .filter(name -> SteriliserLock.of(loads, name).isPresent())
                .count();
    return new DaySetting(
        opens,
        lengthMin,
        gridMin,
        chairs,
        new SteriliserSetting(
            Math.max(1, sterilisers.sterilisers() - locked), sterilisers.pouches()),
        reprocessing,
        set);
  }

  /** Whether this is a time of day such as 08:00. */
  public static boolean isTime(String text) {
    return text.matches("([01]\\d|2[0-3]):[0-5]\\d");
  }

  /** Whether these are names of chairs: up to 12, of up to 8 letters and digits, none twice. */
  public static boolean chairsAreSound(String text) {
    List<String> names = chairs(text);
    return names.size() <= MOST_CHAIRS
        && names.stream().distinct().count() == names.size()
        && names.stream().allMatch(name -> name.matches("[\\p{L}\\p{N}]{1,8}"));
  }

  private static List<String> chairs(String text) {
    return List.of(text.strip().split("[\\s,;]+"));
  }

  /** Uses after which an instrument of a kind is withdrawn. */
  public static WholeSetting life(InstrumentKind kind) {
    return new WholeSetting("life." + kind.id(), usual(kind), 1, MOST_USES);
  }

  /** Uses after which an instrument is withdrawn. */
  public int lifeUses(InstrumentKind kind, boolean singleUse) {
    return singleUse ? 1 : life(kind).of(set);
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

  /** Minutes from opening; negative before. */
  public int minute(LocalTime time) {
    return (time.toSecondOfDay() - opens.toSecondOfDay()) / 60;
  }
}
