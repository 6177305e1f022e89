package kerfwright.app.drawerfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerfwright.app.words.Remarks;
import kerfwright.catalogue.Remark;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.number.FieldFault;
import kerfwright.catalogue.number.InstrumentResolver;
import kerfwright.catalogue.number.Resolution;

/** Tells what an instrument is by the catalogue. */
public final class PackagedInstruments implements InstrumentLookup {
  @Override
  public Answer resolve(Map<String, String> cells) {
    Resolution resolution = InstrumentResolver.resolve(new DrawerFields(cells));
    List<Problem> problems = new ArrayList<>();
    for (FieldFault fault : resolution.faults()) {
      String nearest = fault.nearest().isEmpty() ? null : String.join(", ", fault.nearest());
      problems.add(new Problem(fault.field(), Remarks.found(asInFiles(fault)), nearest));
    }
    return new Answer(resolution.properties(), problems);
  }

  /** A file takes kinds by their ids, not by what people call them. */
  private static FieldFault asInFiles(FieldFault fault) {
    String kinds = String.join(", ", InstrumentKind.ids());
    return fault.expected().code().matches("kind-(known|needed)")
        ? new FieldFault(
            fault.field(), fault.found(), Remark.of("word-known", kinds), fault.nearest())
        : fault;
  }
}
