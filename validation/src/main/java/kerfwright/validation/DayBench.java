package kerfwright.validation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kerfwright.app.day.DayFile;
import kerfwright.app.input.BadInput;
import kerfwright.app.json.JsonText;
import kerfwright.schedule.Appointment;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.Goal;
import kerfwright.schedule.GoalResult;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.Need;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.SteriliserLoad;
import kerfwright.schedule.TrayPlace;
import kerfwright.schedule.search.DayPlanner;
import kerfwright.schedule.search.Replanner;
import org.jspecify.annotations.Nullable;

/**
 * Runs the day planner on benchmark instances, general-purpose peers beside it, and prints JSON.
 *
 * <p>Arguments: {@code --seconds N --peers FOLDER --peer-seconds N DAY.yaml...}. The folder holds
 * the referee {@code sched_check.py} and the peers' {@code sched_run.py}, which read the instance
 * {@code DAY.json} beside the day file {@code scripts/day-from-instance.py} made of it; without it
 * ours runs alone and unrefereed. Seconds count from after the solver's library is loaded; that
 * time is given by itself. Wall time is only as good as the machine is quiet: processor seconds and
 * the load are given too.
 */
public final class DayBench {
  private static final int LATE_AT_MIN = 200;
  private static final int LATE_BY_MIN = 30;

  private DayBench() {}

  public static void main(String[] arguments) throws Exception {
    double seconds = 20;
    double peerSeconds = 60;
    Path peers = null;
    List<Path> instances = new ArrayList<>();
    for (int i = 0; i < arguments.length; i++) {
      switch (arguments[i]) {
        case "--seconds" -> seconds = Double.parseDouble(arguments[++i]);
        case "--peer-seconds" -> peerSeconds = Double.parseDouble(arguments[++i]);
        case "--peers" -> peers = Path.of(arguments[++i]);
        default -> instances.add(Path.of(arguments[i]));
      }
    }
    long before = System.nanoTime();
    boolean solver = DayPlanner.solverFault() == null;
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("bench", "day");
    json.put("command", command(arguments));
    json.put("solverThere", solver);
    json.set("solverLoadSeconds", JsonText.number((System.nanoTime() - before) / 1e9));
    json.put("processors", Runtime.getRuntime().availableProcessors());
    json.put("threads", 2);
    json.put("secondsAllowed", seconds);
    ArrayNode runs = json.putArray("runs");
    for (Path instance : instances) {
      runs.add(run(instance, seconds, peers, peerSeconds));
    }
    json.put("peakMiB", peakMebibytes());
    System.out.print(JsonText.of(json));
  }

  /** The command with file names only, so that no folder of this machine is told. */
  private static String command(String... arguments) {
    StringBuilder text = new StringBuilder("java -cp ... kerfwright.validation.DayBench");
    for (String a : arguments) {
      text.append(' ').append(Path.of(a).getFileName());
    }
    return text.toString();
  }

  private static ObjectNode run(Path file, double seconds, @Nullable Path peers, double peerSeconds)
      throws IOException, InterruptedException, BadInput {
    Day problem = new DayFile(DayBench::noCase).read(file);
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("instance", String.valueOf(file.getFileName()));
    json.set(
        "machineLoad",
        JsonText.number(
            Math.max(0, ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage())));
    ArrayNode steps = json.putArray("improvements");
    long start = System.nanoTime();
    double cpu = processorSeconds();
    DayProgress progress =
        plan -> {
          ObjectNode step = steps.addObject();
          step.set("s", JsonText.number((System.nanoTime() - start) / 1e9));
          for (Goal g : Goal.values()) {
            step.put(g.label(), plan.value(g));
          }
        };
    DayPlan plan =
        DayPlanner.forThisMachine().plan(problem, new SearchLimits(seconds, 2, 1), progress);
    json.set("totalSeconds", JsonText.number((System.nanoTime() - start) / 1e9));
    json.set("processorSeconds", JsonText.number(processorSeconds() - cpu));
    ArrayNode goals = json.putArray("goals");
    for (GoalResult g : plan.goals()) {
      ObjectNode goal = goals.addObject().put("goal", g.goal().label());
      goal.put("value", g.value()).put("bound", g.bound()).put("proven", g.proven());
      goal.set("seconds", JsonText.number(g.seconds()));
    }
    json.set("lateCase", lateCase(problem, plan));
    if (peers != null) {
      String instance =
          file.resolveSibling(file.getFileName().toString().replaceFirst("[.]yaml$", ".json"))
              .toString();
      Path solution = Files.createTempFile("day", ".json");
      Files.writeString(solution, solution(plan).toString());
      json.set(
          "referee",
          python(peers.resolve("sched_check.py").toString(), instance, solution.toString()));
      Files.delete(solution);
      if (peerSeconds > 0) {
        json.set(
            "peerHighs",
            python(
                peers.resolve("sched_run.py").toString(),
                instance,
                "--solver",
                "highs",
                "--limit",
                String.valueOf(peerSeconds)));
      }
    }
    return json;
  }

  private static List<Need> noCase(String caseFile) {
    throw new IllegalArgumentException("an instance names no case: " + caseFile);
  }

  /** The plan as the benchmark's referee reads it. */
  private static ObjectNode solution(DayPlan plan) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode assign = json.putArray("assign");
    for (TrayPlace t : plan.trays()) {
      assign
          .addArray()
          .add(number(t.appointment()))
          .add(number(t.instrument().type()))
          .add(t.instrument().index());
    }
    ArrayNode loads = json.putArray("loads");
    for (SteriliserLoad l : plan.loads()) {
      ArrayNode units = loads.addObject().put("start", l.startMin()).putArray("units");
      for (InstrumentRef ref : l.instruments()) {
        units.addArray().add(number(ref.type())).add(ref.index());
      }
    }
    return json;
  }

  private static int number(String name) {
    return Integer.parseInt(name.substring(1));
  }

  /** The first case under way at 200 min ends 30 min late; the rest of the day is planned again. */
  private static ObjectNode lateCase(Day problem, DayPlan plan) {
    List<Appointment> moved = new ArrayList<>(problem.appointments());
    for (int i = 0; i < moved.size(); i++) {
      Appointment a = moved.get(i);
      if (a.startMin() < LATE_AT_MIN && LATE_AT_MIN < a.endMin()) {
        moved.set(i, a.movedTo(a.startMin(), a.endMin() + LATE_BY_MIN));
        break;
      }
    }
    Day late =
        problem.withAppointments(moved).withFacts(Replanner.factsAt(problem, plan, LATE_AT_MIN));
    long start = System.nanoTime();
    Replanner.Replan again = Replanner.replan(late, plan, SearchLimits.ofSeconds(0.45));
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("seconds", JsonText.number((System.nanoTime() - start) / 1e9));
    json.put("traysChanged", again.changed().size());
    json.put("shortagesBefore", plan.value(Goal.SHORTAGES));
    json.put("shortagesAfter", again.plan().value(Goal.SHORTAGES));
    return json;
  }

  private static JsonNode python(String... command) throws IOException, InterruptedException {
    List<String> all = new ArrayList<>(List.of("python3"));
    all.addAll(Arrays.asList(command));
    try {
      Process process = new ProcessBuilder(all).redirectErrorStream(false).start();
      String out =
          new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
      process.waitFor();
      String last = out.substring(out.lastIndexOf('\n') + 1);
      return last.startsWith("{")
          ? new ObjectMapper().readTree(last)
          : JsonNodeFactory.instance.textNode("failed: " + last);
    } catch (IOException none) {
      return JsonNodeFactory.instance.textNode("python3 is not there");
    }
  }

  private static double processorSeconds() {
    return ManagementFactory.getOperatingSystemMXBean()
            instanceof com.sun.management.OperatingSystemMXBean os
        ? os.getProcessCpuTime() / 1e9
        : 0;
  }

  /** Peak resident memory of this process; 0 where the system does not tell. */
  private static long peakMebibytes() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (!Files.exists(status)) {
      return 0;
    }
    for (String line : Files.readAllLines(status)) {
      if (line.startsWith("VmHWM:")) {
        return Long.parseLong(line.replaceAll("\\D", "")) / 1024;
      }
    }
    return 0;
  }
}
