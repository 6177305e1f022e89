package kerfwright.schedule.search;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.InstrumentHistory;
import kerfwright.schedule.Stock;
import kerfwright.schedule.TrayPlace;

/**
 * One type of a day in numbers. Demands that fixed trays fill are gone; they live on in the state
 * of the instruments.
 *
 * <p>{@code longest[d]} is the most uses one instrument could see from demand {@code d} on, itself
 * included, if a load started at every slot. An instrument with at least that many uses left cannot
 * run out any more and is like any other such instrument.
 */
final class TypeView {
  final Stock stock;
  final int units;

  /** Demands in order of start. */
  final int demands;

  final List<Appointment> appointment;
  final int[] startMin;
  final int[] readyMin;
  final int[] longest;
  final int[] longestAfterSlot;

  /** Instruments: uses so far and left, and their state once the facts have happened. */
  final int[] uses;

  final int[] left;
  final boolean[] clean;
  final int[] fromMin;
  private final int[] slotMin;

  TypeView(Day day, Stock stock, int[] slotMin) {
    this.stock = stock;
    this.slotMin = slotMin;
    units = stock.uses().size();
    uses = new int[units];
    left = new int[units];
    clean = new boolean[units];
    fromMin = new int[units];
    for (int u = 0; u < units; u++) {
      InstrumentHistory h = InstrumentHistory.of(day, stock, u);
      uses[u] = h.uses();
      left[u] = stock.life() - h.uses();
      clean[u] = h.clean();
      fromMin[u] = h.fromMin();
    }
    appointment = open(day);
    demands = appointment.size();
    startMin = appointment.stream().mapToInt(Appointment::startMin).toArray();
    readyMin = appointment.stream().mapToInt(a -> a.endMin() + day.cleaningMin()).toArray();
    longest = new int[demands];
    for (int d = demands - 1; d >= 0; d--) {
      int q = 0;
      while (q < slotMin.length && slotMin[q] < readyMin[d]) {
        q++;
      }
      longest[d] = 1 + (q < slotMin.length ? longestFrom(slotMin[q] + day.loadMin()) : 0);
    }
    longestAfterSlot = new int[slotMin.length];
    for (int q = 0; q < slotMin.length; q++) {
      longestAfterSlot[q] = longestFrom(slotMin[q] + day.loadMin());
    }
  }

  /** Appointments whose need no fixed tray fills. */
  private List<Appointment> open(Day day) {
    Set<String> filled =
        day.facts().trays().stream()
            .filter(t -> t.instrument().type().equals(stock.type()))
            .map(TrayPlace::appointment)
            .collect(Collectors.toSet());
    return day.appointments().stream()
        .filter(a -> a.needs().contains(stock.type()) && !filled.contains(a.id()))
        .sorted(Comparator.comparingInt(Appointment::startMin).thenComparing(Appointment::endMin))
        .toList();
  }

  /** Most uses one instrument clean at this minute could still see. */
  private int longestFrom(int minute) {
    int best = 0;
    for (int d = demands - 1; d >= 0 && startMin[d] >= minute; d--) {
      best = Math.max(best, longest[d]);
    }
    return best;
  }

  /** Goes through the day in time; at one minute the load comes before the demand. */
  void inTime(IntConsumer demand, IntConsumer slot) {
    int d = 0;
    for (int q = 0; q < slotMin.length; q++) {
      for (; d < demands && startMin[d] < slotMin[q]; d++) {
        demand.accept(d);
      }
      slot.accept(q);
    }
    for (; d < demands; d++) {
      demand.accept(d);
    }
  }
}
