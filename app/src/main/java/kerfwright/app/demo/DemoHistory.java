package kerfwright.app.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.record.Cut;
import kerfwright.practice.record.RecordEntry;
import kerfwright.practice.record.RecordService;
import kerfwright.practice.record.UseReport;
import kerfwright.practice.reprocessing.Cycle;
import kerfwright.practice.reprocessing.Indicator;
import kerfwright.practice.reprocessing.Indicator.Result;
import kerfwright.practice.reprocessing.Load;
import kerfwright.practice.reprocessing.LoadService;
import kerfwright.practice.reprocessing.NewLoad;
import kerfwright.practice.reprocessing.ProcessingStep;
import kerfwright.practice.setting.Settings;
import kerfwright.practice.setting.SteriliserSetting;

/**
 * The last days of the invented practice: people, a released load, a recalled one, one that runs,
 * and what was used out of them. None of its instruments ends clean, so that plans of the demo do
 * not depend on it.
 */
public final class DemoHistory {
  private static final String DENTIST = "AB";
  private static final String ASSISTANT = "CD";
  private static final String REPROCESSING = "EF";
  private static final Map<Indicator, Result> ALL_PASSED =
      Map.of(
          Indicator.PARAMETERS, Result.PASSED,
          Indicator.CHEMICAL, Result.PASSED,
          Indicator.PACKS, Result.PASSED);

  private final DrawerService drawer;
  private final RecordService record;
  private static final Map<ProcessingStep, Integer> MINUTES =
      Map.of(
          ProcessingStep.SOAK, 5,
          ProcessingStep.ULTRASONIC, 5,
          ProcessingStep.WASHER, 0,
          ProcessingStep.RINSE, 2,
          ProcessingStep.DRY, 3,
          ProcessingStep.INSPECT, 3,
          ProcessingStep.POUCH, 2,
          ProcessingStep.COOL, 15);

  private final LoadService loads;
  private final DemoClock clock;

  /** Every service keeps this clock's time. */
  public DemoHistory(
      DrawerService drawer, RecordService record, LoadService loads, DemoClock clock) {
    this.drawer = drawer;
    this.record = record;
    this.loads = loads;
    this.clock = clock;
  }

  /** Fills a drawer that the demo practice was just put into. */
  public void fill(Settings settings, Instant now) {
    Map<String, String> set = new LinkedHashMap<>();
    set.put("person." + DENTIST, "clinician");
    set.put("person." + ASSISTANT, "assistant");
    set.put("person." + REPROCESSING, "reprocessing");
    // a quick round: 20 min until the load, 45 min in it
    MINUTES.forEach((step, minutes) -> set.put(step.setting(), Integer.toString(minutes)));
    set.put(Cycle.B134.setting(), "30");
    // the third one is out of service since the spore test of its load grew
    set.put(SteriliserSetting.COUNT.name(), "3");
    settings.write(settings.read().version(), set);
    List<StockItem> items = items();
    move(items, InstrumentState.CLEANING);
    clock.pass(50);
    released("S1", items.subList(0, 5), "crown set");
    clock.pass(30);
    RecordEntry slip =
        use(
            items.get(0),
            "K-0398",
            16,
            new Cut(200_000.0, 38.0, 55.0, 1.2, 50.0, Map.of("enamel", 6.4)));
    clock.pass(4);
    use(
        items.get(1),
        "K-0398",
        16,
        new Cut(160_000.0, 52.0, 80.0, 0.8, 50.0, Map.of("dentine", 11.2)));
    clock.pass(90);
    use(items.get(2), "K-0401", 36, new Cut(120_000.0, null, 45.0, null, 50.0, Map.of()));
    clock.pass(20);
    UseReport right = report(items.get(0), "K-0398", 17, slip.use().cut(), slip.use().at());
    record.correct(slip.id(), right, DENTIST, "tooth 17, not 16");
    clock.at(now.minus(Duration.ofDays(1)));
    Load second = released("S3", items.subList(5, 8), "");
    clock.pass(40);
    use(
        items.get(5),
        "K-0405",
        46,
        new Cut(200_000.0, 30.0, 41.0, 1.0, 50.0, Map.of("dentine", 7.5)));
    clock.at(now.minus(Duration.ofMinutes(150)));
    loads.read(
        second.id(), second.version(), Map.of(Indicator.SPORES, Result.FAILED), REPROCESSING);
    loads.fail(second.id(), REPROCESSING, "spore test grew");
    clock.at(now.minus(Duration.ofMinutes(85)));
    use(items.get(3), "K-0409", 24, Cut.UNTOLD);
    use(items.get(4), "K-0409", 24, Cut.UNTOLD);
    clock.at(now.minus(Duration.ofMinutes(75)));
    move(items.subList(0, 2), InstrumentState.CLEANING);
    move(items.subList(3, 5), InstrumentState.CLEANING);
    clock.at(now.minus(Duration.ofMinutes(25)));
    start("S1", items.subList(3, 5), "");
  }

  private List<StockItem> items() {
    String[] numbers = {"806 314 197 534 014", "806 314 001 524 016", "806 314 197 514 014"};
    // what is in the running load now is nothing today's list asks for, whatever the hour
    int[] kinds = {1, 2, 0, 1, 1, 0, 1, 2};
    List<StockItem> items = new ArrayList<>();
    for (int i = 1; i <= kinds.length; i++) {
      int kind = kinds[i - 1];
      DrawerFields fields =
          new DrawerFields(
              Map.of(
                  "iso",
                  numbers[kind],
                  "head_length_mm",
                  kind == 1 ? "1.6" : "8.0",
                  "max_rpm",
                  "300000"));
      items.add(StockItem.fresh(drawer.newId(), "R0" + i, fields));
    }
    drawer.add(items, "demo practice");
    return items;
  }

  private List<Pick> picks(List<StockItem> items) {
    return items.stream()
        .map(one -> drawer.drawer().find(one.id()).orElseThrow())
        .map(one -> new Pick(one.id(), one.version()))
        .toList();
  }

  private void move(List<StockItem> items, InstrumentState to) {
    drawer.move(picks(items), to, "");
  }

  private Load start(String steriliser, List<StockItem> items, String set) {
    List<NewLoad.Packed> pouches = new ArrayList<>();
    if (set.isEmpty()) {
      picks(items).forEach(one -> pouches.add(new NewLoad.Packed("", List.of(one))));
    } else {
      pouches.add(new NewLoad.Packed(set, picks(items)));
    }
    NewLoad wanted = new NewLoad(steriliser, Cycle.B134, ASSISTANT, pouches);
    return Objects.requireNonNull(loads.start(wanted).load(), "demo load");
  }

  private Load released(String steriliser, List<StockItem> items, String set) {
    Load load = start(steriliser, items, set);
    clock.pass(load.minutes() + 2);
    Load read =
        Objects.requireNonNull(
            loads.read(load.id(), load.version(), ALL_PASSED, ASSISTANT).load(), "demo reading");
    clock.pass(1);
    return Objects.requireNonNull(
        loads.release(read.id(), read.version(), REPROCESSING).load(), "demo release");
  }

  private UseReport report(StockItem item, String reference, int fdi, Cut cut, Instant at) {
    UUID id = record.newId();
    return new UseReport(
        id, reference, new Tooth(fdi), null, item.id(), null, "", "", cut, DENTIST, at);
  }

  private RecordEntry use(StockItem item, String reference, int fdi, Cut cut) {
    return record.log(report(item, reference, fdi, cut, clock.instant())).written().orElseThrow();
  }
}
