package kerfwright.app.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Bounds;
import kerfwright.app.input.Fault;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.quantity.Message;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Need;
import kerfwright.schedule.Substitute;
import org.jspecify.annotations.Nullable;

/**
 * Reads {@code appointments}.
 *
 * @param stocked types there are; of a case's substitutes only these count
 */
record AppointmentFields(
    ClockField clock, NeedsOfCase needsOfCase, Set<String> stocked, Faults faults) {
  private static final Bounds LIFE = Bounds.from(0, 100, "lives");
  private static final Bounds RATIO = Bounds.above(0, 1000, "");

  List<Appointment> read(Fields fields) {
    List<Appointment> all = new ArrayList<>();
    for (Fields row : fields.rows("appointments", "{id, start, end, needs: [type]}", true)) {
      String id = row.text("id", Message.of("day.file-reference"));
      Integer start = clock.minute(row, "start");
      Integer end = clock.minute(row, "end");
      String chair =
          row.optional("chair") == null ? null : row.text("chair", Message.of("day.file-chair"));
      List<Need> needs = needs(row);
      row.rejectUnknown();
      if (id != null && start != null && end != null) {
        all.add(Appointment.of(id, start, end, chair, needs));
      }
    }
    return all;
  }

  private List<Need> needs(Fields row) {
    Node needs = row.optional("needs");
    Node caseFile = row.optional("case");
    if (needs != null && caseFile != null) {
      row.fault("case", Message.of("fault.beside", "needs"));
      return List.of();
    }
    if (caseFile != null) {
      return ofCase(row, row.text("case", Message.of("day.file-case")));
    }
    if (needs == null) {
      needs = row.required("needs", Message.of("day.file-needs"));
    }
    List<Node> items = needs == null ? null : row.items("needs", needs);
    List<Need> read = new ArrayList<>();
    for (int i = 0; items != null && i < items.size(); i++) {
      String path = row.path("needs") + "[" + i + "]";
      Need need = need(items.get(i), path);
      if (need != null) {
        read.add(need);
      }
    }
    return read;
  }

  private @Nullable Need need(Node item, String path) {
    if (item instanceof Node.Scalar scalar) {
      return Need.of(scalar.text().strip());
    }
    if (item instanceof Node.Mapping mapping) {
      Fields fields = new Fields(mapping, path, faults);
      String type = fields.text("type", Message.of("day.file-type"));
      Double asked = optional(fields, "life_asked", LIFE, 0);
      List<Substitute> others = new ArrayList<>();
      for (Fields row : fields.rows("or", "{type, cost_ratio}", false)) {
        String other = row.text("type", Message.of("day.file-type"));
        Double ratio = optional(row, "cost_ratio", RATIO, 1);
        row.rejectUnknown();
        if (other != null && ratio != null) {
          others.add(new Substitute(other, ratio));
        }
      }
      fields.rejectUnknown();
      return type == null || asked == null ? null : new Need(type, asked, others);
    }
    faults.add(
        item.line(), path, Message.of("fault.must-be", Message.of("day.file-need"), item.found()));
    return null;
  }

  private static @Nullable Double optional(Fields row, String name, Bounds bounds, double usual) {
    return row.optional(name) == null ? Double.valueOf(usual) : row.number(name, bounds, true);
  }

  private List<Need> ofCase(Fields row, @Nullable String file) {
    if (file == null) {
      return List.of();
    }
    try {
      return needsOfCase.of(file).stream().map(need -> need.within(stocked)).toList();
    } catch (BadInput bad) {
      for (Fault fault : bad.faults()) {
        row.fault("case", fault.placed());
      }
      return List.of();
    }
  }
}
