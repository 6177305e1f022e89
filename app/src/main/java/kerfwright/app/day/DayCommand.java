package kerfwright.app.day;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Bounds;
import kerfwright.app.input.TimeLimit;
import kerfwright.app.words.Say;
import kerfwright.practice.horizon.StockCurve;
import kerfwright.practice.horizon.StockStudy;
import kerfwright.quantity.Message;
import kerfwright.schedule.Day;
import kerfwright.schedule.DayPlan;
import kerfwright.schedule.DayProgress;
import kerfwright.schedule.SearchLimits;
import kerfwright.schedule.remedy.RemedyResult;
import kerfwright.schedule.remedy.RemedySearch;
import kerfwright.schedule.search.DayPlanner;
import kerfwright.schedule.search.FreshTrays;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans the trays and steriliser loads of a day file. */
@Command(name = "day", mixinStandardHelpOptions = true)
public final class DayCommand implements Callable<Integer> {
  private static final int DONE = 0;
  private static final double LONGEST_SECONDS = 86_400;
  private static final Duration AROUND = Duration.ofSeconds(60);

  private final Say say;
  private final Consumer<String> out;
  private final PrintStream err;
  private final NeedsOfCase needsOfCase;

  @Parameters(paramLabel = "DAY.yaml", descriptionKey = "day", arity = "1..*")
  private List<Path> files = List.of();

  @Option(names = "--week", paramLabel = "N", defaultValue = "0")
  private int weeks;

  @Option(names = "--json")
  private boolean json;

  @Option(names = "--seconds", paramLabel = "N", defaultValue = "20")
  private double seconds;

  @Option(names = "--threads", paramLabel = "N", defaultValue = "2")
  private int threads;

  @Option(names = "--seed", paramLabel = "S", defaultValue = "1")
  private int seed;

  @Option(names = "--remedies", paramLabel = "N", defaultValue = "3")
  private double remedySeconds;

  public DayCommand(Say say, Consumer<String> out, PrintStream err, NeedsOfCase needsOfCase) {
    this.say = say;
    this.out = out;
    this.err = err;
    this.needsOfCase = needsOfCase;
  }

  @Override
  public Integer call() throws BadInput {
    Bounds.from(0, 1000, "").check("--week", weeks);
    Bounds.above(0, LONGEST_SECONDS, "s").check("--seconds", seconds);
    Bounds.from(0, LONGEST_SECONDS, "s").check("--remedies", remedySeconds);
    Bounds.from(1, 64, "").check("--threads", threads);
    if (weeks > 0) {
      return week();
    }
    if (files.size() > 1) {
      throw new BadInput("day", Message.of("day.text-one-file"));
    }
    Day problem = new DayFile(needsOfCase).read(files.get(0));
    DayPlanner planner = DayPlanner.forThisMachine();
    DayPlan plan = within(() -> planned(planner, problem));
    List<RemedyResult> remedies = within(() -> remedies(planner, problem, plan));
    String fault = DayPlanner.solverFault();
    if (fault != null) {
      err.println("kerfwright: " + say.at("day.text-no-solver", fault));
      err.flush();
    }
    out.accept(
        json ? DayJson.text(problem, plan, remedies) : DayText.of(say, problem, plan, remedies));
    return DONE;
  }

  private DayPlan planned(DayPlanner planner, Day problem) {
    return FreshTrays.laid(
        problem, planner.plan(problem, new SearchLimits(seconds, threads, seed)));
  }

  /** The search keeps its own limit; what lies around it has this one. */
  private <T> T within(Callable<T> work) throws BadInput {
    Duration limit = Duration.ofSeconds((long) Math.ceil(seconds + remedySeconds)).plus(AROUND);
    return TimeLimit.within(limit, files.get(0).toString(), Message.of("day.text-shorter"), work);
  }

  private List<RemedyResult> remedies(DayPlanner planner, Day problem, DayPlan plan) {
    if (remedySeconds == 0) {
      return List.of();
    }
    SearchLimits limits = new SearchLimits(remedySeconds, threads, seed);
    return new RemedySearch(planner).search(problem, plan, limits, DayProgress.NONE, any -> {});
  }

  private int week() throws BadInput {
    List<Day> days = new ArrayList<>();
    for (Path one : files) {
      days.add(new DayFile(needsOfCase).read(one));
    }
    StockCurve curve =
        within(() -> new StockStudy(days, type -> 1, weeks, seed).curve(p -> {}, () -> false));
    out.accept(json ? WeekOutput.json(curve) : WeekOutput.text(say, curve));
    return DONE;
  }
}
