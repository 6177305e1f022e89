package kerfwright.app.storage;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.people.StoredSettings;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.app.storage.stock.StoredLoads;
import kerfwright.app.storage.stock.StoredOrigins;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.record.Cut;
import kerfwright.practice.record.RecordService;
import kerfwright.practice.record.UseReport;
import kerfwright.practice.reprocessing.Cycle;
import kerfwright.practice.reprocessing.LoadService;
import kerfwright.practice.reprocessing.NewLoad;
import kerfwright.practice.reprocessing.Reach;

/** Writes uses and loads until it is killed, and says each only after it was acknowledged. */
final class KilledRecordWriter {
  private KilledRecordWriter() {}

  public static void main(String[] arguments) throws Exception {
    Database database = KilledWriter.open(arguments[0]);
    Clock clock = Clock.systemUTC();
    TimeOrderedIds ids = new TimeOrderedIds(clock, new SplittableRandom(9));
    StoredDrawer stored = new StoredDrawer(database);
    StoredRecord record = new StoredRecord(database);
    StoredLoads loads = new StoredLoads(database);
    StoredSettings settings = new StoredSettings(database);
    String sterilisers =
        IntStream.range(0, 999).mapToObj(i -> "S" + i).collect(Collectors.joining(" "));
    settings.write(
        settings.read().version(),
        Map.of("reprocessing.sterilisers", sterilisers, "person.AB", "assistant"));
    DrawerService drawer = new DrawerService(stored, ids, clock);
    RecordService uses =
        new RecordService(record, stored, new StoredOrigins(database, clock), settings, ids, clock);
    LoadService service =
        new LoadService(loads, stored, settings, new Reach(loads, stored, record), ids, clock);
    DrawerFields fields =
        new DrawerFields(Map.of("iso", "806 314 197 534 014", "head_length_mm", "8"));
    for (int i = 0; ; i++) {
      StockItem used = StockItem.fresh(drawer.newId(), "U" + i, fields);
      StockItem loaded =
          StockItem.fresh(drawer.newId(), "L" + i, fields)
              .next(draft -> draft.state = InstrumentState.CLEANING)
              .asNew();
      drawer.add(List.of(used, loaded), "");
      UseReport report =
          new UseReport(
              ids.next(),
              "K-" + i,
              new Tooth(16),
              null,
              used.id(),
              null,
              "",
              "",
              Cut.UNTOLD,
              "AB",
              clock.instant());
      System.out.println("use " + uses.log(report).written().orElseThrow().id());
      System.out.flush();
      NewLoad wanted =
          new NewLoad(
              "S" + i,
              Cycle.B134,
              "AB",
              List.of(new NewLoad.Packed("", List.of(new Pick(loaded.id(), 1)))));
      var load = service.start(wanted).load();
      if (load == null) {
        throw new IllegalStateException("not written");
      }
      System.out.println("load " + load.name());
      System.out.flush();
    }
  }
}
