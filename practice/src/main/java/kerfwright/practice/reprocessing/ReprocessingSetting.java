package kerfwright.practice.reprocessing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kerfwright.catalogue.reprocessing.ReprocessingFigure;
import kerfwright.catalogue.reprocessing.ReprocessingFigures;
import kerfwright.practice.setting.Person;
import kerfwright.practice.setting.SettingValues;
import kerfwright.practice.setting.StaffRole;
import kerfwright.practice.setting.SteriliserSetting;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * How this practice reprocesses. What the makers of instrument, steriliser and washer say (ISO
 * 17664) comes first.
 *
 * @param minutes of every step, 0 for a step left out; of the cycle, those of the usual one
 * @param cycles minutes of every cycle as a whole
 * @param usual the cycle loads are usually run with, by which days are planned
 * @param sterilisers their names
 * @param mayRelease roles that may release a load
 * @param shelfDays days a pouch stays sterile, null where only an event ends it: torn, wet, opened
 * @param wrappedInS true where the steriliser's maker states wrapped loads for its S cycle
 */
public record ReprocessingSetting(
    Map<ProcessingStep, Integer> minutes,
    Map<Cycle, Integer> cycles,
    Cycle usual,
    List<String> sterilisers,
    Set<StaffRole> mayRelease,
    @Nullable Integer shelfDays,
    boolean wrappedInS) {
  public static final String RELEASE = "reprocessing.may-release";
  public static final String STERILISERS = "reprocessing.sterilisers";
  public static final String USUAL_CYCLE = "reprocessing.usual-cycle";
  public static final String SHELF = "reprocessing.shelf-days";
  public static final String WRAPPED_IN_S = "reprocessing.wrapped-in-s";

  private static final Set<StaffRole> USUALLY =
      EnumSet.of(StaffRole.CLINICIAN, StaffRole.REPROCESSING);

  public ReprocessingSetting {
    minutes = Map.copyOf(minutes);
    cycles = Map.copyOf(cycles);
    sterilisers = List.copyOf(sterilisers);
    mayRelease = Set.copyOf(mayRelease);
  }

  public static ReprocessingSetting of(SettingValues set) {
    Map<ProcessingStep, Integer> minutes = new EnumMap<>(ProcessingStep.class);
    for (ProcessingStep step : ProcessingStep.timed()) {
      minutes.put(step, Math.max(0, set.whole(step.setting(), step.usualMinutes())));
    }
    Map<Cycle, Integer> cycles = new EnumMap<>(Cycle.class);
    for (Cycle cycle : Cycle.values()) {
      int all = set.whole(ProcessingStep.CYCLE.setting(), cycle.usualMinutes());
      cycles.put(cycle, Math.max(Cycle.leastMinutes(), set.whole(cycle.setting(), all)));
    }
    Cycle usual =
        Cycle.byId(set.text(USUAL_CYCLE, ""))
            .filter(Cycle.forPouches()::contains)
            .orElse(Cycle.B134);
    minutes.put(ProcessingStep.CYCLE, cycles.getOrDefault(usual, usual.usualMinutes()));
    String shelf = set.text(SHELF, Integer.toString(usualShelfDays()));
    return new ReprocessingSetting(
        minutes,
        cycles,
        usual,
        sterilisers(set),
        roles(set),
        shelf.matches("[1-9]\\d{0,3}") ? Integer.valueOf(shelf) : null,
        set.text(WRAPPED_IN_S, "").equals("yes"));
  }

  private static List<String> sterilisers(SettingValues set) {
    String named = set.text(STERILISERS, "");
    if (!named.isEmpty()) {
      return List.of(named.split(" "));
    }
    List<String> numbered = new ArrayList<>();
    for (int i = 1; i <= SteriliserSetting.of(set).sterilisers(); i++) {
      numbered.add("S" + i);
    }
    return numbered;
  }

  private static Set<StaffRole> roles(SettingValues set) {
    String named = set.text(RELEASE, "");
    if (named.isEmpty()) {
      return USUALLY;
    }
    Set<StaffRole> roles = EnumSet.noneOf(StaffRole.class);
    for (String one : named.split(" ")) {
      Identified.of(StaffRole.class, one).ifPresent(roles::add);
    }
    return roles;
  }

  /** Wrapped, in a year: the figure behind the usual shelf life. */
  public static ReprocessingFigure shelfFigure() {
    return ReprocessingFigures.packaged().find("storage-1").orElseThrow();
  }

  private static int usualShelfDays() {
    Double days = shelfFigure().numbers().high();
    return days == null ? 0 : (int) Math.round(days);
  }

  /** Up to 12 capital letters and digits. */
  public static boolean isSteriliser(String name) {
    return name.matches("[\\p{Lu}\\p{N}]{1,12}");
  }

  /** Minutes from use until a load can take an instrument. */
  public int minutesBeforeLoad() {
    return minutes.entrySet().stream()
        .filter(one -> one.getKey().beforeLoad())
        .mapToInt(Map.Entry::getValue)
        .sum();
  }

  /** Minutes from the start of a load until it can be released. */
  public int loadMinutes() {
    return minutes.entrySet().stream()
        .filter(one -> !one.getKey().beforeLoad())
        .mapToInt(Map.Entry::getValue)
        .sum();
  }

  public int minutesOf(ProcessingStep step) {
    return minutes.getOrDefault(step, 0);
  }

  public int minutesOf(Cycle cycle) {
    return cycles.getOrDefault(cycle, cycle.usualMinutes());
  }

  /** Last day of a pouch sterilised that day, null where an event alone ends it. */
  public @Nullable LocalDate lastDay(LocalDate sterilised) {
    return shelfDays == null ? null : sterilised.plusDays(shelfDays);
  }

  /** Everybody who may release a load now. */
  public List<Person> releasers(SettingValues set) {
    return Person.all(set).stream().filter(one -> mayRelease.contains(one.role())).toList();
  }
}
