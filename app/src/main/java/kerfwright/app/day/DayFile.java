package kerfwright.app.day;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
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
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.InvalidDayException;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.Stock;
import kerfwright.schedule.TrayPlace;
import org.jspecify.annotations.Nullable;

/** Reads a day file; every fault is told with its line and field. */
public final class DayFile {
  private static final Bounds MINUTES = Bounds.above(0, Day.LONGEST_DAY_MIN, "minutes");
  private static final Bounds CLEANING = Bounds.from(0, Day.LONGEST_DAY_MIN, "minutes");
  private static final Bounds COUNT = Bounds.from(1, 1000, "");
  private static final Bounds LIFE = Bounds.from(1, 100_000, "uses");
  private static final Bounds USES = Bounds.from(0, 100_000, "uses");
  private static final Bounds INDEX = Bounds.from(0, 100_000, "");
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
    Integer length = fields.whole("length_min", MINUTES);
    Integer cleaning = fields.whole("cleaning_min", CLEANING);
    Integer load = fields.whole("load_min", MINUTES);
    Integer grid = fields.whole("load_grid_min", MINUTES);
    Integer sterilisers = fields.whole("sterilisers", COUNT);
    Integer capacity = fields.whole("load_capacity", COUNT);
    ClockField clock = new ClockField(start == null ? LocalTime.MIDNIGHT : start);
    List<Stock> stock = stock(fields);
    Set<String> stocked = stock.stream().map(Stock::type).collect(Collectors.toSet());
    List<Appointment> appointments =
        new AppointmentFields(clock, needsOfCase, stocked, faults).read(fields);
    FixedFacts facts = facts(fields, clock);
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
            line(top, fault.field()),
            fault.field(),
            listed ? Message.of("fault.valid", what, String.join(", ", fault.known())) : what,
            nearest);
      }
      throw faults.failure();
    }
  }

  private static List<Stock> stock(Fields fields) {
    List<Stock> stock = new ArrayList<>();
    for (Fields row : fields.rows("instruments", "{type, life, used: [uses]}", true)) {
      String type = row.text("type", Message.of("day.file-type"));
      Integer life = row.whole("life", LIFE);
      Node used = row.required("used", Message.of("fault.found-list"));
      List<Integer> uses = row.wholes("used", used, USES);
      List<Integer> dirty = row.wholes("dirty", row.optional("dirty"), INDEX);
      row.rejectUnknown();
      if (type != null && life != null) {
        stock.add(new Stock(type, life, uses, new TreeSet<>(dirty)));
      }
    }
    return stock;
  }

  /** What is fixed already: {@code now}, {@code running_loads}, {@code on_trays}. */
  private static FixedFacts facts(Fields fields, ClockField clock) {
    Integer now = fields.optional("now") == null ? null : clock.minute(fields, "now");
    List<SteriliserLoad> loads = new ArrayList<>();
    for (Fields row : fields.rows("running_loads", "{start, instruments}", false)) {
      Integer start = clock.minute(row, "start");
      List<InstrumentRef> inside = new ArrayList<>();
      for (Fields item : row.rows("instruments", "{type, index}", true)) {
        InstrumentRef ref = ref(item);
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
    for (Fields row : fields.rows("on_trays", "{appointment, type, index}", false)) {
      String appointment = row.text("appointment", Message.of("day.file-appointment"));
      InstrumentRef ref = ref(row);
      row.rejectUnknown();
      if (appointment != null && ref != null) {
        trays.add(new TrayPlace(appointment, ref));
      }
    }
    return new FixedFacts(now == null ? 0 : now, loads, trays);
  }

  private static @Nullable InstrumentRef ref(Fields row) {
    String type = row.text("type", Message.of("day.file-type"));
    Integer index = row.whole("index", INDEX);
    return type == null || index == null ? null : new InstrumentRef(type, index);
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

  /** The line of a field by its path, or of the nearest field around it. */
  private static int line(Node top, String path) {
    int line = 0;
    Node node = top;
    for (String part : path.split("[.\\[\\]]+")) {
      if (node instanceof Node.Mapping mapping && mapping.entries().containsKey(part)) {
        Node.Entry entry = mapping.entries().get(part);
        line = entry.line();
        node = entry.value();
      } else if (node instanceof Node.Listing list
          && part.matches("\\d{1,6}")
          && Integer.parseInt(part) < list.items().size()) {
        node = list.items().get(Integer.parseInt(part));
        line = node.line();
      } else {
        break;
      }
    }
    return line;
  }
}
