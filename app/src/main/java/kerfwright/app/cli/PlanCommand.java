package kerfwright.app.cli;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.concurrent.Callable;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.drawerfile.DrawerFile;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.TimeLimit;
import kerfwright.app.plan.PlanJson;
import kerfwright.app.plan.PlanText;
import kerfwright.app.print.PlanCard;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.plan.CutPlan;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Plans the cut of a case file with the instruments of a drawer file.")
final class PlanCommand implements Callable<Integer> {
  static final int MOST_SAMPLES = 100_000;

  private final Wiring wiring;
  private final Terminal terminal;

  @Parameters(paramLabel = "CASE.yaml", description = "The case file.")
  private @Nullable Path caseFile;

  @Option(
      names = "--drawer",
      paramLabel = "FILE.csv",
      description = "The drawer; without it the invented practice's drawer is used.")
  private @Nullable Path drawerFile;

  @Mixin private final OperationsOption operations = new OperationsOption();

  @Option(names = "--json", description = "Print the plan as one JSON object (plan/1).")
  private boolean json;

  @Option(names = "--pdf", paramLabel = "OUT.pdf", description = "Also write an A5 card.")
  private @Nullable Path pdf;

  @Option(
      names = "--samples",
      paramLabel = "N",
      defaultValue = "256",
      description = "Samples of the uncertainty, 1 to 100000 (default ${DEFAULT-VALUE}).")
  private int samples;

  @Option(
      names = "--seed",
      paramLabel = "S",
      defaultValue = "1",
      description = "Seed of the samples (default ${DEFAULT-VALUE}).")
  private long seed;

  @Option(
      names = "--language",
      paramLabel = "LANG",
      defaultValue = "en",
      description = "Language of text and card: en or de (default ${DEFAULT-VALUE}).")
  private String language = "en";

  private static final Duration LONGEST = Duration.ofMinutes(3);

  PlanCommand(Wiring wiring, Terminal terminal) {
    this.wiring = wiring;
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws BadInput, IOException {
    if (caseFile == null) {
      throw new BadInput("plan", "a case file was expected");
    }
    if (samples < 1 || samples > MOST_SAMPLES) {
      throw new BadInput("--samples", "must be 1 to " + MOST_SAMPLES + ", found " + samples);
    }
    Say say = say();
    operations.take();
    CutCase cutCase = new CaseFile(wiring.cases()).read(caseFile);
    DrawerSnapshot drawer;
    if (drawerFile == null) {
      terminal.say("no --drawer given: planned with the drawer of the invented demo practice");
      drawer = wiring.demoDrawer().read();
    } else {
      drawer = new DrawerFile(wiring.instruments()).read(drawerFile);
    }
    CutPlan plan =
        TimeLimit.within(
            LONGEST,
            caseFile.toString(),
            "fewer instruments in the drawer or fewer --samples make it shorter",
            () -> wiring.plans().plan(cutCase, drawer, new PlanOptions(samples, seed)));
    if (pdf != null) {
      write(say, pdf, plan);
    }
    if (json) {
      terminal.printJson(PlanJson.text(plan));
    } else {
      terminal.print(PlanText.of(say, plan));
    }
    return plan.refused() ? Terminal.REFUSED : Terminal.DONE;
  }

  private Say say() throws BadInput {
    Language wanted = Language.byId(language).orElse(null);
    if (wanted == null) {
      throw new BadInput("--language", "must be en or de, found " + language);
    }
    return Say.in(wanted);
  }

  private void write(Say say, Path target, CutPlan plan) throws BadInput, IOException {
    if (plan.refused()) {
      terminal.say("refused, so no card was written to " + target);
      return;
    }
    byte[] card = PlanCard.pdf(say, plan, wiring.drawings());
    Path absolute = target.toAbsolutePath();
    Path folder = absolute.getParent();
    if (folder == null || !Files.isDirectory(folder) || Files.isDirectory(absolute)) {
      throw new BadInput(
          "--pdf", "cannot write " + target + ": a file in an existing folder was" + " expected");
    }
    // a card is there whole or not at all
    Path draft = Files.createTempFile(folder, ".kerfwright", ".pdf");
    try {
      Files.write(draft, card);
      try {
        Files.move(draft, absolute, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException plain) {
        Files.move(draft, absolute, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(draft);
    }
    terminal.say("card written to " + target);
  }
}
