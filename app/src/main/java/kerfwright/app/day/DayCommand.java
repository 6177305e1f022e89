package kerfwright.app.day;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.input.TimeLimit;
import kerfwright.practice.horizon.StockCurve;
import kerfwright.practice.horizon.StockStudy;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.remedy.RemedyPrices;
import kerfwright.schedule.remedy.RemedyResult;
import kerfwright.schedule.remedy.RemedySearch;
import kerfwright.schedule.search.DayPlanner;
import kerfwright.schedule.search.FreshTrays;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans the trays and steriliser loads of a day file. */
@Command(
    name = "day",
    mixinStandardHelpOptions = true,
    description = "Plans a day: trays, steriliser loads, shortages, and what is proven.")
public final class DayCommand implements Callable<Integer> {
  private static final int DONE = 0;
  private static final int BAD_INPUT = 2;
  private static final double LONGEST_SECONDS = 86_400;
  private static final Duration AROUND = Duration.ofSeconds(60);

  private final PrintStream out;
  private final PrintStream err;
  private final NeedsOfCase needsOfCase;

  @Parameters(
      paramLabel = "DAY.yaml",
      arity = "1..*",
      description = "The day file; with --week one or more, a usual week's days.")
  private List<Path> files = List.of();

  @Option(
      names = "--week",
      paramLabel = "N",
      defaultValue = "0",
      description =
          "Simulate so many usual weeks drawn from the days given, and tell how many of each"
              + " instrument they need.")
  private int weeks;

  @Option(names = "--json", description = "Print the plan as one JSON object (day/1).")
  private boolean json;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "20",
      description = "Longest search in seconds (default ${DEFAULT-VALUE}).")
  private double seconds;

  @Option(
      names = "--threads",
      paramLabel = "N",
      defaultValue = "2",
      description = "Search threads, 1 to 64 (default ${DEFAULT-VALUE}).")
  private int threads;

  @Option(
      names = "--seed",
      paramLabel = "S",
      defaultValue = "1",
      description = "Seed of the search (default ${DEFAULT-VALUE}).")
  private int seed;

  @Option(
      names = "--remedies",
      paramLabel = "N",
      defaultValue = "3",
      description =
          "Longest search for remedies of a shortage in seconds, 0 for none"
              + " (default ${DEFAULT-VALUE}).")
  private double remedySeconds;

  public DayCommand(PrintStream out, PrintStream err, NeedsOfCase needsOfCase) {
    this.out = out;
    this.err = err;
    this.needsOfCase = needsOfCase;
  }

  @Override
  public Integer call() {
    Day problem;
    try {
      if (weeks < 0 || weeks > 1000) {
        throw new BadInput("--week", "must be 1 to 1000, found " + weeks);
      }
      if (weeks == 0 && files.size() > 1) {
        throw new BadInput("day", "one day file was expected; several are read with --week N");
      }
      if (!(seconds > 0 && seconds <= LONGEST_SECONDS)) {
        throw new BadInput("--seconds", "must be above 0 and at most 86400, found " + seconds);
      }
      if (!(remedySeconds >= 0 && remedySeconds <= LONGEST_SECONDS)) {
        throw new BadInput("--remedies", "must be 0 to 86400, found " + remedySeconds);
      }
      if (threads < 1 || threads > 64) {
        throw new BadInput("--threads", "must be 1 to 64, found " + threads);
      }
      if (weeks > 0) {
        return week();
      }
      problem = new DayFile(needsOfCase).read(files.get(0));
    } catch (BadInput bad) {
      for (Fault fault : bad.faults()) {
        err.println(fault.oneLine());
      }
      err.flush();
      return BAD_INPUT;
    }
    DayPlanner planner = DayPlanner.forThisMachine();
    DayPlan plan;
    List<RemedyResult> remedies;
    try {
      plan = within(() -> planned(planner, problem));
      remedies = within(() -> remedies(planner, problem, plan));
    } catch (BadInput late) {
      err.println(late.getMessage());
      err.flush();
      return BAD_INPUT;
    }
    String fault = DayPlanner.solverFault();
    if (fault != null) {
      err.println(
          "kerfwright: this is a first plan, not proven; the solver is not there: " + fault);
      err.flush();
    }
    out.print(json ? DayJson.text(problem, plan, remedies) : DayText.of(problem, plan, remedies));
    out.flush();
    return DONE;
  }

  private DayPlan planned(DayPlanner planner, Day problem) {
    return FreshTrays.laid(
        problem, planner.plan(problem, new SearchLimits(seconds, threads, seed)));
  }

  /** The search keeps its own limit; what lies around it has this one. */
  private <T> T within(Callable<T> work) throws BadInput {
    Duration limit = Duration.ofSeconds((long) Math.ceil(seconds + remedySeconds)).plus(AROUND);
    return TimeLimit.within(
        limit, files.get(0).toString(), "fewer appointments or sterilisers make it shorter", work);
  }

  private List<RemedyResult> remedies(DayPlanner planner, Day problem, DayPlan plan) {
    if (remedySeconds == 0) {
      return List.of();
    }
    SearchLimits limits = new SearchLimits(remedySeconds, threads, seed);
    return new RemedySearch(planner, RemedyPrices.USUAL)
        .search(problem, plan, limits, DayProgress.NONE, any -> {});
  }

  private int week() throws BadInput {
    List<Day> days = new ArrayList<>();
    for (Path one : files) {
      days.add(new DayFile(needsOfCase).read(one));
    }
    StockCurve curve =
        within(() -> new StockStudy(days, type -> 1, weeks, seed).curve(p -> {}, () -> false));
    out.print(json ? WeekOutput.json(curve) : WeekOutput.text(curve));
    out.flush();
    return DONE;
  }
}
