package kerfwright.schedule.remedy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.InvalidDayException;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.Stock;

/**
 * One change of a day that may end a shortage. What it brings is found by planning the changed day
 * again, never guessed.
 */
public sealed interface Remedy {
  /** Least cost of any substitute: somebody has to change the tray. */
  double CHANGED_TRAY_MIN = 1;

  /** A substitute that costs twice what the type costs, beside that; others in proportion. */
  double TWICE_AS_DEAR_MIN = 10;

  /** Two appointments moved: two calls. */
  double SWAP_MIN = 10;

  double LOAD_BETWEEN_MIN = 15;
  double LOAD_BEFORE_OPENING_MIN = 30;

  /** Another steriliser for the day. */
  double LOAD_BESIDE_MIN = 120;

  /** One more instrument, ordering included. */
  double PIECE_MIN = 45;

  /** The day with the remedy done, or nothing where the day does not allow it. */
  Optional<Day> applied(Day day);

  /**
   * What it is worth in minutes of the team's work, so that remedies can be ranked on one scale;
   * all are project settings.
   */
  double costMin();

  /**
   * Another permitted type on one tray.
   *
   * @param appointment whose tray
   * @param type what is short
   * @param instead what serves in its place
   * @param costRatio cost of the substitute over that of the type
   */
  record UseSubstitute(String appointment, String type, String instead, double costRatio)
      implements Remedy {
    @Override
    public Optional<Day> applied(Day day) {
      Appointment a = day.appointment(appointment).orElseThrow();
      boolean laid =
          day.facts().trays().stream()
              .anyMatch(
                  t -> t.appointment().equals(appointment) && t.instrument().type().equals(type));
      if (laid || !a.needs().contains(type) || a.needs().contains(instead)) {
        return Optional.empty();
      }
      return valid(day, replaced(day, a.with(type, instead)));
    }

    @Override
    public double costMin() {
      return CHANGED_TRAY_MIN + TWICE_AS_DEAR_MIN * Math.max(0, costRatio - 1);
    }
  }

  /**
   * Two appointments change places: each takes the other's chair and start. Neighbours of one chair
   * change order and keep the pause between them.
   *
   * @param first the earlier one
   * @param second the later one
   */
  record SwapAppointments(String first, String second) implements Remedy {
    @Override
    public Optional<Day> applied(Day day) {
      Appointment a = day.appointment(first).orElseThrow();
      Appointment b = day.appointment(second).orElseThrow();
      int now = day.facts().nowMin();
      if (a.startMin() < now || b.startMin() < now || laid(day, a) || laid(day, b)) {
        return Optional.empty();
      }
      int later = neighbours(day, a, b) ? b.endMin() - a.lengthMin() : b.startMin();
      Appointment moved = a.movedTo(later, later + a.lengthMin()).inChair(b.chair());
      Appointment other = b.movedTo(a.startMin(), a.startMin() + b.lengthMin()).inChair(a.chair());
      List<Appointment> all = new ArrayList<>(day.appointments());
      Collections.replaceAll(all, a, moved);
      Collections.replaceAll(all, b, other);
      return valid(day, all);
    }

    private static boolean laid(Day day, Appointment a) {
      return day.facts().trays().stream().anyMatch(t -> t.appointment().equals(a.id()));
    }

    private static boolean neighbours(Day day, Appointment a, Appointment b) {
      String chair = a.chair();
      return chair != null
          && chair.equals(b.chair())
          && day.appointments().stream()
              .noneMatch(
                  c ->
                      chair.equals(c.chair())
                          && c.startMin() > a.startMin()
                          && c.startMin() < b.startMin());
    }

    @Override
    public double costMin() {
      return SWAP_MIN;
    }
  }

  /**
   * One more load than the rules of the day foresee: off the usual starting times.
   *
   * @param startMin when it starts
   */
  record LoadBetween(int startMin) implements Remedy {
    @Override
    public Optional<Day> applied(Day day) {
      return day.mayStartAt(startMin) || startMin < day.facts().nowMin()
          ? Optional.empty()
          : Optional.of(day.withStartAt(startMin));
    }

    @Override
    public double costMin() {
      return LOAD_BETWEEN_MIN;
    }
  }

  /**
   * One more load before opening, with instruments still dirty from the day before.
   *
   * @param inside what goes in
   */
  record LoadBeforeOpening(List<InstrumentRef> inside) implements Remedy {
    public LoadBeforeOpening {
      inside = List.copyOf(inside);
    }

    @Override
    public Optional<Day> applied(Day day) {
      if (inside.isEmpty() || day.facts().nowMin() > 0) {
        return Optional.empty();
      }
      List<SteriliserLoad> loads = new ArrayList<>(day.facts().loads());
      loads.add(new SteriliserLoad(-day.loadMin(), inside));
      try {
        return Optional.of(day.withFacts(new FixedFacts(0, loads, day.facts().trays())));
      } catch (InvalidDayException sterilisersBusy) {
        return Optional.empty();
      }
    }

    @Override
    public double costMin() {
      return LOAD_BEFORE_OPENING_MIN;
    }
  }

  /** One more load beside the others: another steriliser for the day. */
  record LoadBeside() implements Remedy {
    @Override
    public Optional<Day> applied(Day day) {
      return Optional.of(day.withSterilisers(day.sterilisers() + 1));
    }

    @Override
    public double costMin() {
      return LOAD_BESIDE_MIN;
    }
  }

  /**
   * More instruments of a type, new and clean when the day starts.
   *
   * @param type the type
   * @param pieces how many more
   */
  record BuyMore(String type, int pieces) implements Remedy {
    @Override
    public Optional<Day> applied(Day day) {
      List<Stock> stock = new ArrayList<>(day.stock());
      stock.replaceAll(s -> s.type().equals(type) ? s.withNew(pieces) : s);
      return Optional.of(day.withStock(stock));
    }

    @Override
    public double costMin() {
      return pieces * PIECE_MIN;
    }
  }

  private static List<Appointment> replaced(Day day, Appointment changed) {
    return day.appointments().stream().map(a -> a.id().equals(changed.id()) ? changed : a).toList();
  }

  private static Optional<Day> valid(Day day, List<Appointment> changed) {
    try {
      return Optional.of(day.withAppointments(changed));
    } catch (InvalidDayException impossible) {
      return Optional.empty();
    }
  }
}
