package kerfwright.app.daypage;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.practice.daylist.DaySetting;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.SteriliserSetting;
import kerfwright.practice.setting.WholeSetting;
import kerfwright.quantity.Identified;

/**
 * The settings of the day as typed.
 *
 * @param set the settings as they stand
 * @param typed what stands in the fields, by name of the setting
 */
public record DaySettingForm(SettingValues set, Map<String, String> typed) {
  private static final int DAY_MIN = 24 * 60;

  /** What can be wrong with a field. */
  public enum Slip implements Identified {
    RANGE,
    TIME,
    CHAIRS,
    PAST_MIDNIGHT;
  }

  public DaySettingForm {
    typed = Map.copyOf(typed);
  }

  /** The form as the settings stand. */
  static DaySettingForm of(SettingValues set) {
    return of(set, name -> set.text(name, ""));
  }

  /** The form as it was sent. */
  static DaySettingForm of(SettingValues set, UnaryOperator<String> sent) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (String name : names()) {
      typed.put(name, sent.apply(name));
    }
    return new DaySettingForm(set, typed);
  }

  /** The same with one field, or all of them, empty: what is usual counts again once saved. */
  DaySettingForm emptied(String name) {
    Map<String, String> fewer = new LinkedHashMap<>(typed);
    fewer.replaceAll((one, text) -> name.equals("all") || name.equals(one) ? "" : text);
    return new DaySettingForm(set, fewer);
  }

  public String at(String name) {
    return typed.getOrDefault(name, "");
  }

  /** True where something is set or typed, so that it can be taken back to what is usual. */
  public boolean own(String name) {
    return !at(name).isEmpty();
  }

  /** What counts now, where the field says something else. */
  public boolean differs(String name) {
    return !at(name).equals(set.text(name, ""));
  }

  /** Those of the day and of the sterilisers that are whole numbers. */
  public static List<WholeSetting> ofTheDay() {
    return List.of(DaySetting.LENGTH, DaySetting.GRID);
  }

  public static List<WholeSetting> ofSterilisers() {
    return List.of(SteriliserSetting.COUNT, SteriliserSetting.POUCHES);
  }

  private static List<WholeSetting> wholes() {
    List<WholeSetting> all = new ArrayList<>(ofTheDay());
    all.addAll(ofSterilisers());
    Arrays.stream(InstrumentKind.values()).map(DaySetting::life).forEach(all::add);
    return all;
  }

  private static Set<String> names() {
    Set<String> names = new LinkedHashSet<>(Arrays.asList(DaySetting.OPENS, DaySetting.CHAIRS));
    wholes().forEach(one -> names.add(one.name()));
    return names;
  }

  /** What is wrong, by field; empty where all can be kept. */
  public Map<String, Slip> slips() {
    Map<String, Slip> slips = new LinkedHashMap<>();
    for (WholeSetting one : wholes()) {
      if (!one.allows(at(one.name()))) {
        slips.put(one.name(), Slip.RANGE);
      }
    }
    String opens = at(DaySetting.OPENS);
    if (!opens.isEmpty() && !DaySetting.isTime(opens)) {
      slips.put(DaySetting.OPENS, Slip.TIME);
    }
    if (own(DaySetting.CHAIRS) && !DaySetting.chairsAreSound(at(DaySetting.CHAIRS))) {
      slips.put(DaySetting.CHAIRS, Slip.CHAIRS);
    }
    if (slips.isEmpty() && closesMin() > DAY_MIN) {
      slips.put(DaySetting.LENGTH.name(), Slip.PAST_MIDNIGHT);
    }
    return slips;
  }

  private int closesMin() {
    String opens = own(DaySetting.OPENS) ? at(DaySetting.OPENS) : DaySetting.USUAL_OPENS;
    int length = DaySetting.LENGTH.of(new SettingValues(0, typed));
    return LocalTime.parse(opens).toSecondOfDay() / 60 + length;
  }
}
