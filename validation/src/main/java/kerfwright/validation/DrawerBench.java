package kerfwright.validation;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.number.DrawerFields;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerQuery;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.drawer.TimeOrderedIds;

/**
 * Measures how long list and search take with 20 000 instruments, as JSON. Arguments: none for
 * SQLite; a JDBC URL of an empty PostgreSQL database to measure that one too.
 */
public final class DrawerBench {
  private static final int INSTRUMENTS = 20_000;
  private static final int WARM_UP = 100;
  private static final int ASKED = 400;
  private static final String[] SHAPES = {"001", "197", "198", "243", "237", "110", "277", "141"};
  private static final String[] GRITS = {"544", "534", "524", "514", "504"};

  private DrawerBench() {}

  public static void main(String[] arguments) throws Exception {
    List<String> results = new ArrayList<>();
    Path folder = Files.createTempDirectory("drawer-bench");
    try (Database sqlite = Database.file(folder.resolve("bench.db"))) {
      results.add(measure("SQLite", new StoredDrawer(sqlite)));
    }
    if (arguments.length > 0) {
      try (Database postgres = Database.server(arguments[0])) {
        results.add(measure("PostgreSQL", new StoredDrawer(postgres)));
      }
    }
    System.out.printf(
        Locale.ROOT,
        "{\"bench\": \"drawer\", \"instruments\": %d, \"pageSize\": 50, \"asked\": %d,"
            + " \"processors\": %d, \"java\": \"%s\",%n \"databases\": [%n  %s%n ]}%n",
        INSTRUMENTS,
        ASKED,
        Runtime.getRuntime().availableProcessors(),
        Runtime.version().feature(),
        String.join(",\n  ", results));
  }

  private static String measure(String name, Drawer drawer) {
    DrawerService service =
        new DrawerService(
            drawer,
            new TimeOrderedIds(Clock.systemUTC(), new SplittableRandom(1)),
            Clock.systemUTC());
    long start = System.nanoTime();
    fill(service);
    double fillS = (System.nanoTime() - start) / 1e9;
    double[] list = times(drawer, false);
    double[] search = times(drawer, true);
    return String.format(
        Locale.ROOT,
        "{\"database\": \"%s\", \"fillS\": %.2f, \"listMs\": {\"p50\": %.2f, \"p95\": %.2f},"
            + " \"searchMs\": {\"p50\": %.2f, \"p95\": %.2f}}",
        name,
        fillS,
        list[0],
        list[1],
        search[0],
        search[1]);
  }

  private static void fill(DrawerService service) {
    SplittableRandom chance = new SplittableRandom(2);
    for (int from = 0; from < INSTRUMENTS; from += 2000) {
      List<StockItem> items = new ArrayList<>();
      for (int i = from; i < from + 2000; i++) {
        String number =
            String.format(
                Locale.ROOT,
                "806 314 %s %s %03d",
                SHAPES[chance.nextInt(SHAPES.length)],
                GRITS[chance.nextInt(GRITS.length)],
                10 + 2 * chance.nextInt(6));
        StockItem item =
            StockItem.fresh(
                service.newId(),
                "B" + i,
                new DrawerFields(Map.of("iso", number, "head_length_mm", "6", "max_rpm", "300000")));
        int drawn = chance.nextInt(200);
        items.add(item.next(draft -> draft.place = "cabinet " + drawn));
      }
      if (!service.add(items, "bench").done()) {
        throw new IllegalStateException("The drawer of the bench was not empty");
      }
    }
  }

  /** Median and 95th percentile in ms; each question differs from the one before. */
  private static double[] times(Drawer drawer, boolean search) {
    SplittableRandom chance = new SplittableRandom(3);
    double[] times = new double[ASKED];
    for (int i = -WARM_UP; i < ASKED; i++) {
      DrawerQuery query = search ? searched(chance) : listed(chance);
      long start = System.nanoTime();
      int found = drawer.list(query).items().size();
      double ms = (System.nanoTime() - start) / 1e6;
      if (found < 0) {
        throw new IllegalStateException();
      }
      if (i >= 0) {
        times[i] = ms;
      }
    }
    Arrays.sort(times);
    return new double[] {times[ASKED / 2], times[(int) Math.ceil(ASKED * 0.95) - 1]};
  }

  private static DrawerQuery listed(SplittableRandom chance) {
    String kind = chance.nextBoolean() ? InstrumentKind.DIAMOND.id() : null;
    InstrumentState state = chance.nextBoolean() ? InstrumentState.CLEAN : null;
    return new DrawerQuery("", kind, null, null, state, chance.nextInt(INSTRUMENTS / 50), 50);
  }

  private static DrawerQuery searched(SplittableRandom chance) {
    String[] words = {
      "b" + chance.nextInt(INSTRUMENTS),
      "cabinet " + chance.nextInt(200),
      "green " + SHAPES[chance.nextInt(SHAPES.length)],
      "806314" + SHAPES[chance.nextInt(SHAPES.length)],
      "coarse round",
      "nothing like this"
    };
    return new DrawerQuery(words[chance.nextInt(words.length)], null, null, null, null, 0, 50);
  }
}
