package kerfwright.app.day;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.format.DateTimeFormatter;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.remedy.Remedy;
import kerfwright.schedule.remedy.RemedyResult;

/** A remedy for programs and for people. */
record RemedyFields(Day day, RemedyResult result) {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

  /** Writes kind and details. */
  void into(ObjectNode node) {
    Remedy remedy = result.remedy();
    if (remedy instanceof Remedy.UseSubstitute r) {
      node.put("kind", "substitute").put("appointment", r.appointment());
      node.put("type", r.type()).put("instead", r.instead()).put("costRatio", r.costRatio());
    } else if (remedy instanceof Remedy.SwapAppointments r) {
      node.put("kind", "swap");
      ArrayNode moved = node.putArray("appointments");
      for (String id : new String[] {r.first(), r.second()}) {
        moved.addObject().put("id", id).put("start", start(id));
      }
    } else if (remedy instanceof Remedy.LoadBetween r) {
      node.put("kind", "load").put("start", clock(r.startMin()));
    } else if (remedy instanceof Remedy.LoadBeforeOpening r) {
      node.put("kind", "load").put("start", clock(-day.loadMin()));
      ArrayNode inside = node.putArray("instruments");
      for (InstrumentRef ref : r.inside()) {
        inside.addObject().put("type", ref.type()).put("index", ref.index());
      }
    } else if (remedy instanceof Remedy.LoadBeside) {
      node.put("kind", "steriliser").put("sterilisers", day.sterilisers() + 1);
    } else if (remedy instanceof Remedy.BuyMore r) {
      node.put("kind", "buy").put("type", r.type()).put("pieces", r.pieces());
    }
  }

  /** One line of plain words. */
  String words() {
    Remedy remedy = result.remedy();
    if (remedy instanceof Remedy.UseSubstitute r) {
      return "Lay " + r.instead() + " for " + r.type() + " on the tray of " + r.appointment();
    }
    if (remedy instanceof Remedy.SwapAppointments r) {
      return "Swap "
          + (r.first() + " and " + r.second())
          + (" (" + r.second() + " at " + start(r.second()))
          + (", " + r.first() + " at " + start(r.first()) + ")");
    }
    if (remedy instanceof Remedy.LoadBetween r) {
      return "Allow one more load at " + clock(r.startMin()) + ", between the usual times";
    }
    if (remedy instanceof Remedy.LoadBeforeOpening r) {
      return "Run one more load before opening, at " + clock(-day.loadMin());
    }
    if (remedy instanceof Remedy.BuyMore r) {
      return "Have " + r.pieces() + " more " + r.type();
    }
    return "Run a further steriliser beside the " + day.sterilisers() + " there are";
  }

  private String start(String id) {
    return result.day().appointment(id).map(Appointment::startMin).map(this::clock).orElseThrow();
  }

  private String clock(int minute) {
    return CLOCK.format(day.clock(minute));
  }
}
