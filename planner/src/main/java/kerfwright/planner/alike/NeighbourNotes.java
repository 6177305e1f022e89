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
      told.add(told("kind", other.properties().kind(), wanted.kind()));
    }
    if (other.state() != DrawerInstrument.State.CLEAN) {
      told.add(told("state", Message.of("instrument.state-" + other.state().id())));
    }
    if (other.uses() > 0) {
      told.add(told("uses", other.uses()));
    }
    return told;
  }

  private static Difference told(String code, Object... values) {
    return new Difference(code, Difference.Effect.TOLD, Remark.of("alike-" + code, values), 0);
  }
}
