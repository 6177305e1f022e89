package kerfwright.app.day;

import java.util.function.UnaryOperator;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.KeptRemedy;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.remedy.Remedy;

/** A remedy in the practice's language. */
public record RemedyWords(Say say, Day day, UnaryOperator<String> types) {
  public String of(Remedy remedy) {
    if (remedy instanceof Remedy.UseSubstitute r) {
      return say.at(
          "day.remedy-substitute",
          r.appointment(),
          types.apply(r.instead()),
          types.apply(r.type()));
    }
    if (remedy instanceof Remedy.SwapAppointments r) {
      Day swapped = r.applied(day).orElse(day);
      return say.at(
          "day.remedy-swap",
          r.first(),
          r.second(),
          start(swapped, r.first()),
          start(swapped, r.second()));
    }
    if (remedy instanceof Remedy.LoadBetween r) {
      return say.at("day.remedy-between", clock(r.startMin()));
    }
    if (remedy instanceof Remedy.LoadBeforeOpening r) {
      return say.at("day.remedy-before", clock(-day.loadMin()), r.inside().size());
    }
    if (remedy instanceof Remedy.BuyMore r) {
      return say.at("day.remedy-buy", r.pieces(), types.apply(r.type()));
    }
    return say.at("day.remedy-beside", day.sterilisers() + 1);
  }

  /** What is left once it is done, and what it costs. */
  public String leaves(KeptRemedy told) {
    return say.at(
        told.proven() ? "day.leaves" : "day.leaves-at-most",
        told.shortagesAfter(),
        told.loadsAfter(),
        Math.round(told.costMin()));
  }

  private String start(Day changed, String id) {
    return changed.appointment(id).map(Appointment::startMin).map(this::clock).orElse("");
  }

  private String clock(int minute) {
    return say.time(day.clock(minute));
  }
}
