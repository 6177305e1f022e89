package kerfwright.schedule.search;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.Stock;

/** Seeded random days. */
public final class RandomDay {
  private RandomDay() {}

  /** So small that every plan can be tried. */
  public static Day tiny(long seed) {
    SplittableRandom r = new SplittableRandom(seed);
    int types = 1 + r.nextInt(2);
    List<Stock> stock = new ArrayList<>();
    for (int k = 0; k < types; k++) {
      int life = 2 + r.nextInt(4);
      List<Integer> uses = new ArrayList<>();
      int units = 1 + r.nextInt(2);
      for (int u = 0; u < units; u++) {
        uses.add(r.nextInt(life + 1));
      }
      stock.add(new Stock("t" + k, life, uses, r.nextInt(4) == 0 ? Set.of(0) : Set.of()));
    }
    int length = 240;
    List<Appointment> appointments = new ArrayList<>();
    int n = 3 + r.nextInt(3);
    for (int i = 0; i < n; i++) {
      int start = 5 * r.nextInt(40);
      int end = Math.min(length, start + 10 + 5 * r.nextInt(7));
      List<String> needs = new ArrayList<>();
      for (int k = 0; k < types; k++) {
        if (r.nextInt(3) > 0) {
          needs.add("t" + k);
        }
      }
      appointments.add(new Appointment("A" + i, start, end, needs));
    }
    return new Day(
        LocalTime.of(8, 0),
        length,
        5 * r.nextInt(4),
        25 + 5 * r.nextInt(4),
        30,
        1 + r.nextInt(2),
        1 + r.nextInt(3),
        stock,
        appointments,
        FixedFacts.NONE);
  }

  /** Of the size of a small practice. */
  public static Day practice(long seed, int n) {
    SplittableRandom r = new SplittableRandom(seed);
    int types = 3 + r.nextInt(6);
    List<Stock> stock = new ArrayList<>();
    for (int k = 0; k < types; k++) {
      int life = 3 + r.nextInt(20);
      List<Integer> uses = new ArrayList<>();
      int units = r.nextInt(6);
      for (int u = 0; u < units; u++) {
        uses.add(r.nextInt(life + 1));
      }
      stock.add(
          new Stock("t" + k, life, uses, units > 1 && r.nextInt(3) == 0 ? Set.of(1) : Set.of()));
    }
    List<Appointment> appointments = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int start = 5 * r.nextInt(108);
      List<String> needs = new ArrayList<>();
      for (int k = 0; k < types; k++) {
        if (r.nextInt(2) == 0) {
          needs.add("t" + k);
        }
      }
      appointments.add(new Appointment("A" + i, start, start + 20 + 5 * r.nextInt(8), needs));
    }
    return new Day(
        LocalTime.of(8, 0),
        600,
        20,
        45,
        15,
        1 + r.nextInt(2),
        4 + r.nextInt(10),
        stock,
        appointments,
        FixedFacts.NONE);
  }
}
