package kerfwright.practice.daylist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.InvalidDayException;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.TrayPlace;

/** Puts loads and trays together in the order of time, as far as one can follow from the other. */
final class Happened {
  private final Day day;
  private final int nowMin;
  private final List<SteriliserLoad> loads = new ArrayList<>();
  private final List<TrayPlace> trays = new ArrayList<>();
  private final List<InstrumentRef> apart = new ArrayList<>();

  Happened(Day day, int nowMin) {
    this.day = day;
    this.nowMin = nowMin;
  }

  FixedFacts facts() {
    return new FixedFacts(nowMin, loads, trays);
  }

  /** Pieces that were in a load in which they could not be yet. */
  List<InstrumentRef> apart() {
    return List.copyOf(apart);
  }

  void follow(List<SteriliserLoad> started, List<TrayPlace> laid) {
    List<TrayPlace> open = new ArrayList<>(laid);
    open.sort(Comparator.comparingInt(this::startMin));
    List<SteriliserLoad> inOrder = new ArrayList<>(started);
    inOrder.sort(Comparator.comparingInt(SteriliserLoad::startMin));
    for (SteriliserLoad load : inOrder) {
      while (!open.isEmpty() && startMin(open.get(0)) < load.startMin()) {
        take(open.remove(0));
      }
      take(load);
    }
    open.forEach(this::take);
  }

  private int startMin(TrayPlace tray) {
    return day.appointment(tray.appointment()).map(Appointment::startMin).orElse(0);
  }

  private void take(TrayPlace tray) {
    trays.add(tray);
    if (!possible()) {
      trays.remove(trays.size() - 1);
    }
  }

  private void take(SteriliserLoad load) {
    loads.add(new SteriliserLoad(load.startMin(), List.of()));
    int at = loads.size() - 1;
    if (!possible()) {
      // more sterilisers run than the day knows of
      loads.remove(at);
      apart.addAll(load.instruments());
      return;
    }
    List<InstrumentRef> inside = new ArrayList<>();
    for (InstrumentRef ref : load.instruments()) {
      inside.add(ref);
      loads.set(at, new SteriliserLoad(load.startMin(), inside));
      if (!possible()) {
        inside.remove(inside.size() - 1);
        loads.set(at, new SteriliserLoad(load.startMin(), inside));
        apart.add(ref);
      }
    }
  }

  private boolean possible() {
    try {
      day.withFacts(facts());
      return true;
    } catch (InvalidDayException contradicts) {
      return false;
    }
  }
}
