package kerfwright.app.day;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Bounds;
import kerfwright.app.input.Faults;
import kerfwright.app.input.Fields;
import kerfwright.app.input.Node;
import kerfwright.app.input.SourceText;
import kerfwright.app.input.TreeReader;
import kerfwright.catalogue.NearestName;
import kerfwright.quantity.Message;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayFault;
import kerfwright.schedule.FixedFacts;
import kerfwright.schedule.InvalidDayException;
import kerfwright.schedule.Stock;
import org.jspecify.annotations.Nullable;

/** Reads a day file; every fault is told with its line and field. */
public final class DayFile {
  private static final Bounds MINUTES = Bounds.above(0, Day.LONGEST_DAY_MIN, "minutes");
  private static final Bounds CLEANING = Bounds.from(0, Day.LONGEST_DAY_MIN, "minutes");
  private static final Bounds COUNT = Bounds.from(1, 1000, "");
  private static final int MOST_APPOINTMENTS = 500;
  private static final int MOST_STARTS = 6000;

  private final NeedsOfCase needsOfCase;

  public DayFile(NeedsOfCase needsOfCase) {
    this.needsOfCase = needsOfCase;
  }

  /** Reads a day file; case files it names are looked for beside it. */
  public Day read(Path file) throws BadInput {
    NeedsOfCase beside = named -> needsOfCase.of(file.resolveSibling(named).toString());
    return new DayFile(beside).read(SourceText.of(file));
  }

  /** Reads the text of a day file. */
  public Day read(SourceText source) throws BadInput {
    Node.Mapping top = TreeReader.yaml(source);
    Faults faults = new Faults(source.origin());
    Fields fields = new Fields(top, "", faults);
    LocalTime start = new ClockField(LocalTime.MIDNIGHT).clock(fields, "start");
    Integer length = WholeNumber.read(fields, faults, "length_min", MINUTES);
    Integer cleaning = WholeNumber.read(fields, faults, "cleaning_min", CLEANING);
    Integer load = WholeNumber.read(fields, faults, "load_min", MINUTES);
    Integer grid = WholeNumber.read(fields, faults, "load_grid_min", MINUTES);
    Integer sterilisers = WholeNumber.read(fields, faults, "sterilisers", COUNT);
    Integer capacity = WholeNumber.read(fields, faults, "load_capacity", COUNT);
    ClockField clock = new ClockField(start == null ? LocalTime.MIDNIGHT : start);
    List<Stock> stock = StockFields.read(fields, faults);
    Set<String> stocked = stock.stream().map(Stock::type).collect(Collectors.toSet());
    List<Appointment> appointments =
        new AppointmentFields(clock, needsOfCase, stocked).read(fields, faults);
    FixedFacts facts = FactsFields.read(fields, faults, clock);
    fields.rejectUnknown();
    budget(fields, length, grid, sterilisers, appointments.size());
    faults.throwIfAny();
    if (start == null
        || length == null
        || cleaning == null
        || load == null
        || grid == null
        || sterilisers == null
        || capacity == null) {
      throw new IllegalStateException(
          "A field of " + source.origin() + " is missing without a fault");
    }
    try {
      return new Day(
          start, length, cleaning, load, grid, sterilisers, capacity, stock, appointments, facts);
    } catch (InvalidDayException invalid) {
      for (DayFault fault : invalid.faults()) {
        Message what = Message.of("day.wrong-" + fault.code(), fault.values().toArray());
        String given = String.valueOf(fault.values().stream().findFirst().orElse(""));
        String nearest = NearestName.nearest(given, fault.known()).orElse(null);
        boolean listed = nearest == null && !fault.known().isEmpty();
        faults.add(
            new Lines(top).of(fault.field()),
            fault.field(),
            listed ? Message.of("fault.valid", what, String.join(", ", fault.known())) : what,
            nearest);
      }
      throw faults.failure();
    }
  }

  /** A day is planned as a whole: what grows beyond any day of a practice is refused first. */
  private static void budget(
      Fields fields,
      @Nullable Integer length,
      @Nullable Integer grid,
      @Nullable Integer sterilisers,
      int appointments) {
    if (appointments > MOST_APPOINTMENTS) {
      fields.fault(
          "appointments", Message.of("day.file-too-many", MOST_APPOINTMENTS, appointments));
    }
    if (length != null && grid != null && sterilisers != null) {
      long starts = (long) sterilisers * (length / grid + 1);
      if (starts > MOST_STARTS) {
        fields.fault(
            "load_grid_min", Message.of("day.file-too-many-starts", (int) starts, MOST_STARTS));
      }
    }
  }

  /** Finds the line of a field by its path, or of the nearest field around it. */
  private static final class Lines {
    private final Map<String, Integer> lines = new HashMap<>();

    Lines(Node.Mapping top) {
      collect("", top);
    }

    private void collect(String path, Node node) {
      lines.putIfAbsent(path, node.line());
      if (node instanceof Node.Mapping mapping) {
        mapping
            .entries()
            .forEach(
                (name, entry) -> {
                  String below = path.isEmpty() ? name : path + "." + name;
                  lines.put(below, entry.line());
                  collect(below, entry.value());
                });
      } else if (node instanceof Node.Listing listing) {
        for (int i = 0; i < listing.items().size(); i++) {
          collect(path + "[" + i + "]", listing.items().get(i));
        }
      }
    }

    int of(String field) {
      String path = field;
      while (!path.isEmpty()) {
        Integer line = lines.get(path);
        if (line != null) {
          return line;
        }
        path =
            path.substring(0, Math.max(path.lastIndexOf('.'), Math.max(0, path.lastIndexOf('['))));
      }
      return 0;
    }
  }

  /** Mappings of a list field; what is not a mapping is a fault and skipped. */
  static List<Fields> rows(
      Fields fields, Faults faults, String name, String expected, boolean required) {
    @Nullable Node node =
        required
            ? fields.required(name, Message.of("fault.list-of", expected))
            : fields.optional(name);
    List<Fields> rows = new ArrayList<>();
    List<Node> items = node == null ? null : fields.items(name, node);
    if (items == null) {
      return rows;
    }
    for (int i = 0; i < items.size(); i++) {
      String path = fields.path(name) + "[" + i + "]";
      if (items.get(i) instanceof Node.Mapping mapping) {
        rows.add(new Fields(mapping, path, faults));
      } else {
        faults.add(
            items.get(i).line(), path, Message.of("fault.must-be", expected, items.get(i).found()));
      }
    }
    return rows;
  }
}
