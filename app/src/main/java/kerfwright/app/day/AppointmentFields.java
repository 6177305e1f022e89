package kerfwright.app.day;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.practice.day.Appointment;
import org.jspecify.annotations.Nullable;

/** Reads {@code appointments}. */
final class AppointmentFields {
  private final ClockField clock;
  private final NeedsOfCase needsOfCase;

  AppointmentFields(ClockField clock, NeedsOfCase needsOfCase) {
    this.clock = clock;
    this.needsOfCase = needsOfCase;
  }

  List<Appointment> read(Fields fields, Faults faults) {
    List<Appointment> all = new ArrayList<>();
    for (Fields row :
        DayFile.rows(fields, faults, "appointments", "{id, start, end, needs: [types]}", true)) {
      String id = row.text("id", "the practice's own reference");
      Integer start = clock.minute(row, "start");
      Integer end = clock.minute(row, "end");
      String chair = row.optional("chair") == null ? null : row.text("chair", "a chair's name");
      List<String> needs = needs(row, faults);
      row.rejectUnknown();
      if (id != null && start != null && end != null) {
        all.add(new Appointment(id, start, end, needs, chair));
      }
    }
    return all;
  }

  private List<String> needs(Fields row, Faults faults) {
    Node needs = row.optional("needs");
    Node caseFile = row.optional("case");
    if (needs != null && caseFile != null) {
      row.fault("case", "stands beside needs; expected one of the two");
      return List.of();
    }
    if (caseFile != null) {
      return ofCase(row, row.text("case", "a case file"));
    }
    if (needs == null) {
      needs = row.required("needs", "a list of instrument types, or case: FILE");
    }
    List<Node> items = needs == null ? null : row.items("needs", needs);
    List<String> types = new ArrayList<>();
    for (int i = 0; items != null && i < items.size(); i++) {
      if (items.get(i) instanceof Node.Scalar scalar) {
        types.add(scalar.text().strip());
      } else {
        faults.add(
            items.get(i).line(),
            row.path("needs") + "[" + i + "]",
            "must be an instrument type, found " + items.get(i).describe());
      }
    }
    return types;
  }

  private List<String> ofCase(Fields row, @Nullable String file) {
    if (file == null) {
      return List.of();
    }
    try {
      return needsOfCase.of(file);
    } catch (BadInput bad) {
      for (Fault fault : bad.faults()) {
        row.fault("case", fault.oneLine());
      }
      return List.of();
    }
  }
}
