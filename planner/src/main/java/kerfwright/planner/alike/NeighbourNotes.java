package kerfwright.planner.alike;

import java.util.ArrayList;
import java.util.List;
import kerfwright.catalogue.Remark;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.quantity.Message;

/** What is worth knowing of a neighbour without changing the comparison. */
final class NeighbourNotes {
  private NeighbourNotes() {}

  static List<Difference> differences(InstrumentProperties wanted, DrawerInstrument other) {
    List<Difference> told = new ArrayList<>();
    if (other.properties().kind() != wanted.kind()) {
      told.add(
          told(
              "kind",
              "is a " + other.properties().kind().label() + ", not a " + wanted.kind().label(),
              other.properties().kind(),
              wanted.kind()));
    }
    if (other.state() != DrawerInstrument.State.CLEAN) {
      told.add(
          told(
              "state",
              "is " + other.state().id().replace('-', ' ') + ", not clean now",
              Message.of("instrument.state-" + other.state().id())));
    }
    if (other.uses() > 0) {
      told.add(
          told(
              "uses",
              "was used "
                  + (other.uses() == 1
                      ? "once"
                      : other.uses() == 2 ? "twice" : other.uses() + " times"),
              other.uses()));
    }
    return told;
  }

  private static Difference told(String code, String text, Object... values) {
    return new Difference(
        code, Difference.Effect.TOLD, Remark.of("alike-" + code, text, values), 0);
  }
}
