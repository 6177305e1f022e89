package kerfwright.app.day;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.format.DateTimeFormatter;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.remedy.Remedy;
import kerfwright.schedule.remedy.RemedyResult;

/** A remedy for programs. */
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

  private String start(String id) {
    return result.day().appointment(id).map(Appointment::startMin).map(this::clock).orElseThrow();
  }

  private String clock(int minute) {
    return CLOCK.format(day.clock(minute));
  }
}
