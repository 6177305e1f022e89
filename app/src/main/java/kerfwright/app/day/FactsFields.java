package kerfwright.app.day;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.input.Bounds;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.quantity.Message;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.TrayPlace;
import org.jspecify.annotations.Nullable;

/** Reads what is fixed already: {@code now}, {@code running_loads}, {@code on_trays}. */
final class FactsFields {
  private static final Bounds INDEX = Bounds.from(0, 100_000, "");

  private FactsFields() {}

  static FixedFacts read(Fields fields, Faults faults, ClockField clock) {
    Integer now = fields.optional("now") == null ? Integer.valueOf(0) : clock.minute(fields, "now");
    List<SteriliserLoad> loads = new ArrayList<>();
    for (Fields row :
        DayFile.rows(fields, faults, "running_loads", "{start, instruments}", false)) {
      Integer start = clock.minute(row, "start");
      List<InstrumentRef> inside = new ArrayList<>();
      for (Fields item : DayFile.rows(row, faults, "instruments", "{type, index}", true)) {
        InstrumentRef ref = ref(item, faults);
        item.rejectUnknown();
        if (ref != null) {
          inside.add(ref);
        }
      }
      row.rejectUnknown();
      if (start != null) {
        loads.add(new SteriliserLoad(start, inside));
      }
    }
    List<TrayPlace> trays = new ArrayList<>();
    for (Fields row :
        DayFile.rows(fields, faults, "on_trays", "{appointment, type, index}", false)) {
      String appointment = row.text("appointment", Message.of("day.file-appointment"));
      InstrumentRef ref = ref(row, faults);
      row.rejectUnknown();
      if (appointment != null && ref != null) {
        trays.add(new TrayPlace(appointment, ref));
      }
    }
    return new FixedFacts(now == null ? 0 : now, loads, trays);
  }

  private static @Nullable InstrumentRef ref(Fields row, Faults faults) {
    String type = row.text("type", Message.of("day.file-type"));
    Integer index = WholeNumber.read(row, faults, "index", INDEX);
    return type == null || index == null ? null : new InstrumentRef(type, index);
  }
}
