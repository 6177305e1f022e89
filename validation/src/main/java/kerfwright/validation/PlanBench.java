package kerfwright.validation;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.input.BadInput;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.Planner;
import kerfwright.planner.Variation;
import kerfwright.planner.WhatIf;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.plan.CutPlan;

/**
 * Measures how long a plan takes, and prints JSON.
 *
 * <p>Usage: {@code PlanBench CASE.yaml [LAUNCHER]}. The drawer is the demo drawer, its clean
 * instruments repeated under new ids with other uses until the wanted number is reached. Each
 * figure is the median and the best of the runs after warming up, on the thread that plans. With a
 * launcher the cold command is timed too, and its greatest memory where GNU time is there.
 */
public final class PlanBench {
  private static final int[] DRAWERS = {10, 30, 100, 300, 1000, 3000};
  private static final int[] SAMPLES = {16, 64, 256, 1024, 4096};
  private static final int MOST_RUNS = 7;
  private static final int LEAST_RUNS = 3;
  private static final double ENOUGH_S = 4;
  private static final int WARM_UP = 12;
  private static final PlanOptions PAGE = new PlanOptions(1000, 1);
  private static final PlanOptions SLIDER = new PlanOptions(64, 1);
  private static final int ASKED = 40;

  private PlanBench() {}

  public static void main(String[] arguments) throws BadInput, IOException, InterruptedException {
    Wiring wiring = Wiring.production();
    CutCase cutCase = new CaseFile(wiring.cases()).read(Path.of(arguments[0]));
    DrawerSnapshot demo = wiring.demoDrawer().read();
    DrawerSnapshot usual = drawerOf(demo, 300);
    PlanOptions options = new PlanOptions(256, 1);
    for (int i = 0; i < WARM_UP; i++) {
      Planner.plan(cutCase, usual, options);
    }
    StringBuilder json = new StringBuilder("{\n");
    json.append("  \"bench\": \"plan/1\",\n");
    line(json, "java", '"' + System.getProperty("java.version") + '"');
    line(json, "cores", String.valueOf(Runtime.getRuntime().availableProcessors()));
    line(json, "layers", String.valueOf(cutCase.layers().size()));
    line(json, "handpieces", String.valueOf(cutCase.handpieces().size()));
    line(json, "warm", figures(cutCase, usual, options));
    line(json, "firstLook", figures(cutCase, usual, new PlanOptions(64, 1, true)));
    line(json, "whatIf", whatIf(cutCase, usual));
    line(json, "byCase", byCase(wiring, Path.of(arguments[0]).resolveSibling("."), usual));
    json.append("  \"byDrawer\": [\n");
    for (int i = 0; i < DRAWERS.length; i++) {
      row(json, figures(cutCase, drawerOf(demo, DRAWERS[i]), options), i + 1 < DRAWERS.length);
    }
    json.append("  ],\n  \"bySamples\": [\n");
    for (int i = 0; i < SAMPLES.length; i++) {
      PlanOptions some = new PlanOptions(SAMPLES[i], 1);
      row(json, figures(cutCase, usual, some), i + 1 < SAMPLES.length);
    }
    json.append("  ],\n");
    line(json, "planOf1000SamplesWithHeatInTheRound", figures(cutCase, demo, PAGE));
    line(json, "sliderOf64Samples", slider(cutCase, demo));
    json.append("  \"cold\": ")
        .append(arguments.length > 1 ? cold(arguments[1], arguments[0]) : "null")
        .append("\n}");
    System.out.println(json);
  }

  /** One question to a plan with 64 samples: another load in the first step. */
  private static String whatIf(CutCase cutCase, DrawerSnapshot drawer) {
    WhatIf plan = Planner.whatIf(cutCase, drawer, new PlanOptions(64, 1)).orElseThrow();
    double load = plan.planned(1).loadN();
    List<Double> seconds = new ArrayList<>();
    for (int i = 0; i < 4 * MOST_RUNS; i++) {
      double lighter = load * (1 - 0.01 * (1 + i));
      long began = System.nanoTime();
      plan.ask(new Variation(1, null, null, lighter, null, null, 0));
      if (i >= MOST_RUNS) {
        seconds.add((System.nanoTime() - began) / 1e9);
      }
    }
    Collections.sort(seconds);
    return String.format(
        Locale.ROOT,
        "{\"samples\": 64, \"medianS\": %.4f, \"bestS\": %.4f}",
        seconds.get(seconds.size() / 2),
        seconds.get(0));
  }

  /** Every case beside the one asked for: a crown of twelve operations takes longest. */
  private static String byCase(Wiring wiring, Path folder, DrawerSnapshot drawer)
      throws BadInput, IOException {
    List<Path> cases;
    try (Stream<Path> files = Files.list(folder)) {
      cases =
          files
              .filter(file -> file.toString().endsWith(".yaml"))
              .filter(file -> !file.getFileName().toString().startsWith("day-"))
              .sorted()
              .toList();
    }
    StringBuilder rows = new StringBuilder("{\n");
    for (int i = 0; i < cases.size(); i++) {
      CutCase one = new CaseFile(wiring.cases()).read(cases.get(i));
      rows.append("    \"")
          .append(cases.get(i).getFileName().toString().replace(".yaml", ""))
          .append("\": ")
          .append(figures(one, drawer, new PlanOptions(256, 1)))
          .append(i + 1 < cases.size() ? ",\n" : "\n");
    }
    return rows.append("  }").toString();
  }

  private static void line(StringBuilder json, String name, String value) {
    json.append("  \"").append(name).append("\": ").append(value).append(",\n");
  }

  private static void row(StringBuilder json, String value, boolean more) {
    json.append("    ").append(value).append(more ? ",\n" : "\n");
  }

  private static String figures(CutCase cutCase, DrawerSnapshot drawer, PlanOptions options) {
    List<Double> seconds = new ArrayList<>();
    List<Double> cpu = new ArrayList<>();
    var threads = ManagementFactory.getThreadMXBean();
    int steps = 0;
    double spent = 0;
    while (cpu.size() < LEAST_RUNS || cpu.size() < MOST_RUNS && spent < ENOUGH_S) {
      long cpuBegan = threads.getCurrentThreadCpuTime();
      long began = System.nanoTime();
      CutPlan plan = Planner.plan(cutCase, drawer, options);
      seconds.add((System.nanoTime() - began) * 1e-9);
      cpu.add((threads.getCurrentThreadCpuTime() - cpuBegan) * 1e-9);
      spent += cpu.get(cpu.size() - 1);
      steps = plan.steps().size();
    }
    Collections.sort(seconds);
    Collections.sort(cpu);
    return String.format(
        Locale.ROOT,
        "{\"instruments\": %d, \"samples\": %d, \"steps\": %d, \"cpuS\": %.4f, \"medianS\": %.4f,"
            + " \"bestS\": %.4f}",
        drawer.instruments().size(),
        options.samples(),
        steps,
        cpu.get(cpu.size() / 2),
        seconds.get(seconds.size() / 2),
        seconds.get(0));
  }

  /** One question to a plan that stands: another load for its first step, by the quick column. */
  private static String slider(CutCase cutCase, DrawerSnapshot drawer) {
    WhatIf plan = Planner.whatIf(cutCase, drawer, SLIDER).orElseThrow();
    double planned = plan.planned(1).loadN();
    double[] seconds = new double[ASKED];
    for (int round = 0; round < 2; round++) {
      for (int i = 0; i < ASKED; i++) {
        double load = planned * (0.5 + 0.5 * i / ASKED);
        long began = System.nanoTime();
        plan.ask(new Variation(1, null, null, load, null, null, 0));
        seconds[i] = (System.nanoTime() - began) * 1e-9;
      }
    }
    Arrays.sort(seconds);
    return String.format(
        Locale.ROOT,
        "{\"medianS\": %.4f, \"worstS\": %.4f}",
        seconds[ASKED / 2],
        seconds[ASKED - 1]);
  }

  /** The clean instruments of a drawer again and again, as other pieces with other uses. */
  static DrawerSnapshot drawerOf(DrawerSnapshot demo, int count) {
    List<DrawerInstrument> clean =
        demo.instruments().stream().filter(d -> d.state() == DrawerInstrument.State.CLEAN).toList();
    List<DrawerInstrument> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      // a stride without a common factor spreads a small drawer over all kinds
      DrawerInstrument d = clean.get((int) ((long) i * 23 % clean.size()));
      int round = i / clean.size();
      all.add(
          new DrawerInstrument(
              d.id() + (round == 0 ? "" : "-" + round),
              d.properties(),
              d.uses() + round % 4,
              d.sterilisations() + round % 4,
              d.state()));
    }
    return new DrawerSnapshot(all);
  }

  private static String cold(String launcher, String caseFile)
      throws IOException, InterruptedException {
    command(launcher, caseFile);
    double[] seconds = new double[5];
    long most = 0;
    for (int i = 0; i < seconds.length; i++) {
      long began = System.nanoTime();
      most = Math.max(most, command(launcher, caseFile));
      seconds[i] = (System.nanoTime() - began) * 1e-9;
    }
    Arrays.sort(seconds);
    return String.format(
        Locale.ROOT,
        "{\"medianS\": %.2f, \"bestS\": %.2f, \"mostMemoryMiB\": %s}",
        seconds[2],
        seconds[0],
        most == 0 ? "null" : String.valueOf(most / 1024));
  }

  /** Runs the command; its greatest memory in KiB, 0 where it cannot be told. */
  private static long command(String launcher, String caseFile)
      throws IOException, InterruptedException {
    boolean timed = Files.isExecutable(Path.of("/usr/bin/time"));
    Path memory = Files.createTempFile("plan-bench", ".txt");
    try {
      List<String> words = new ArrayList<>();
      if (timed) {
        words.addAll(List.of("/usr/bin/time", "-f", "%M", "-o", memory.toString()));
      }
      words.addAll(List.of(launcher, "plan", caseFile, "--json"));
      Process process =
          new ProcessBuilder(words)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      if (!process.waitFor(60, TimeUnit.SECONDS) || process.exitValue() != 0) {
        throw new IOException("The command did not end well: " + String.join(" ", words));
      }
      return timed ? Long.parseLong(Files.readString(memory).strip()) : 0;
    } finally {
      Files.deleteIfExists(memory);
    }
  }
}
