package kerfwright.practice.horizon;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.Stock;

/**
 * Days drawn from the practice's own, with a seed: a kept day at random, its appointments each
 * running late by chance, and instruments worn by chance.
 *
 * <p>Left out: correlation between days, and stock that is dirty in the morning. Lateness of an
 * appointment is drawn evenly from 0 to {@link #LATEST_MIN} in steps of 5 min and pushes those
 * after it in the same chair (project setting); uses so far are drawn evenly over the life.
 */
final class UsualDays {
  static final int LATEST_MIN = 15;
  private static final int STEP_MIN = 5;

  private final List<Day> kept;
  private final SplittableRandom random;

  UsualDays(List<Day> kept, long seed) {
    this.kept = List.copyOf(kept);
    random = new SplittableRandom(seed);
  }

  /** A day with its wear still to be dealt: shares of a life used, the same for any stock. */
  record Drawn(Day day, Map<String, List<Double>> worn) {
    Drawn {
      worn = Map.copyOf(worn);
    }

    /** The day with so many instruments of each type. */
    Day with(Map<String, Integer> pieces) {
      List<Stock> stock = new ArrayList<>();
      for (Stock s : day.stock()) {
        List<Double> shares = worn.getOrDefault(s.type(), List.of());
        List<Integer> uses = new ArrayList<>();
        for (int u = 0; u < pieces.getOrDefault(s.type(), 0); u++) {
          uses.add((int) (shares.get(u % shares.size()) * s.life()));
        }
        stock.add(new Stock(s.type(), s.life(), uses));
      }
      return day.withStock(stock);
    }
  }

  Drawn next(int mostPieces) {
    Day day = kept.get(random.nextInt(kept.size()));
    Map<String, List<Double>> worn = new TreeMap<>();
    for (Stock s : day.stock()) {
      List<Double> shares = new ArrayList<>();
      for (int u = 0; u < mostPieces; u++) {
        shares.add(random.nextDouble());
      }
      worn.put(s.type(), shares);
    }
    return new Drawn(day.withFacts(FixedFacts.NONE).withAppointments(late(day)), worn);
  }

  private List<Appointment> late(Day day) {
    List<Appointment> inOrder = new ArrayList<>(day.appointments());
    inOrder.sort(java.util.Comparator.comparingInt(Appointment::startMin));
    Map<String, Integer> free = new TreeMap<>();
    List<Appointment> all = new ArrayList<>();
    for (Appointment a : inOrder) {
      int late = STEP_MIN * random.nextInt(LATEST_MIN / STEP_MIN + 1);
      String chair = a.chair() == null ? "" : a.chair();
      int start =
          chair.isEmpty() ? a.startMin() : Math.max(a.startMin(), free.getOrDefault(chair, 0));
      int end = Math.min(day.lengthMin(), start + a.lengthMin() + late);
      if (end <= start) {
        // pushed past closing: it is not treated today
        continue;
      }
      free.put(chair, end);
      all.add(a.movedTo(start, end));
    }
    return all;
  }

  /** Types any kept day asks for. */
  Set<String> types() {
    Set<String> types = new TreeSet<>();
    for (Day day : kept) {
      day.appointments().forEach(a -> types.addAll(a.needs()));
    }
    return types;
  }
}
