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
import kerfwright.app.input.Bounds;
import kerfwright.app.input.TimeLimit;
import kerfwright.app.plan.PlanJson;
import kerfwright.app.plan.PlanText;
import kerfwright.app.print.PlanCard;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.plan.CutPlan;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "plan", mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {
  private static final Bounds SAMPLES = Bounds.from(1, 100_000, "");

  private final Wiring wiring;
  private final Terminal terminal;

  @Parameters(paramLabel = "CASE.yaml", descriptionKey = "case")
  private @Nullable Path caseFile;

  @Option(names = "--drawer", paramLabel = "FILE.csv")
  private @Nullable Path drawerFile;

  @Mixin private final OperationsOption operations = new OperationsOption();

  @Option(names = "--json")
  private boolean json;

  @Option(names = "--pdf", paramLabel = "OUT.pdf")
  private @Nullable Path pdf;

  @Option(names = "--samples", paramLabel = "N", defaultValue = "256")
  private int samples;

  @Option(names = "--seed", paramLabel = "S", defaultValue = "1")
  private long seed;

  private static final Duration LONGEST = Duration.ofMinutes(3);

  PlanCommand(Wiring wiring, Terminal terminal) {
    this.wiring = wiring;
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws BadInput, IOException {
    if (caseFile == null) {
      throw new BadInput("plan", Message.of("command.plan-no-case"));
    }
    SAMPLES.check("--samples", samples);
    operations.take();
    CutCase cutCase = new CaseFile(wiring.cases()).read(caseFile);
    DrawerSnapshot drawer;
    if (drawerFile == null) {
      terminal.tell("command.plan-demo-drawer");
      drawer = wiring.demoDrawer().read();
    } else {
      drawer = new DrawerFile(wiring.instruments()).read(drawerFile);
    }
    CutPlan plan =
        TimeLimit.within(
            LONGEST,
            caseFile.toString(),
            Message.of("command.plan-shorter"),
            () -> wiring.plans().plan(cutCase, drawer, new PlanOptions(samples, seed)));
    if (pdf != null) {
      write(pdf, plan);
    }
    if (json) {
      terminal.printJson(PlanJson.text(plan));
    } else {
      terminal.print(PlanText.of(terminal.say(), plan));
    }
    return plan.refused() ? Terminal.REFUSED : Terminal.DONE;
  }

  private void write(Path target, CutPlan plan) throws BadInput, IOException {
    if (plan.refused()) {
      terminal.tell("command.plan-no-card", target);
      return;
    }
    byte[] card = PlanCard.pdf(terminal.say(), plan);
    Path absolute = target.toAbsolutePath();
    Path folder = absolute.getParent();
    if (folder == null || !Files.isDirectory(folder) || Files.isDirectory(absolute)) {
      throw new BadInput("--pdf", Message.of("command.plan-card-place", target.toString()));
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
    terminal.tell("command.plan-card", target);
  }
}
