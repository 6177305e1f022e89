package kerfwright.app.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import kerfwright.app.Wiring;
import kerfwright.app.backup.DoctorCommand;
import kerfwright.app.backup.ExportCommand;
import kerfwright.app.backup.RestoreCommand;
import kerfwright.app.backup.UpgradeCommand;
import kerfwright.app.day.DayCommand;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line of contract 1. Only commands that work are listed. */
public final class Commands {
  private Commands() {}

  /** Runs one command and tells its exit code. */
  public static int run(Wiring wiring, Terminal terminal, String... arguments) {
    CommandLine line = new CommandLine(new Top());
    line.addSubcommand(new ServeCommand(wiring, terminal));
    line.addSubcommand(new PlanCommand(wiring, terminal));
    line.addSubcommand(new NumberCommand(terminal));
    line.addSubcommand(new AlikeCommand(wiring, terminal));
    line.addSubcommand(new ToothCommand(terminal));
    line.addSubcommand(new MaterialCommand(terminal));
    line.addSubcommand(new HeatCommand(terminal));
    line.addSubcommand(new DayCommand(terminal.out(), terminal.err(), new PlanNeeds(wiring)));
    line.addSubcommand(new EvidenceCommand(terminal));
    line.addSubcommand(new OwnCutCommand(terminal));
    line.addSubcommand(new RecordCommand(terminal));
    line.addSubcommand(new ExportCommand(terminal.err()));
    line.addSubcommand(new RestoreCommand(terminal.err()));
    line.addSubcommand(new UpgradeCommand(terminal.err()));
    line.addSubcommand(new DoctorCommand(terminal.out()));
    line.setOut(new PrintWriter(terminal.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(terminal.err(), true, StandardCharsets.UTF_8));
    line.setExecutionExceptionHandler(
        (failure, command, parsed) -> terminal.handle(failure, command));
    return line.execute(arguments);
  }

  @Command(
      name = "kerfwright",
      mixinStandardHelpOptions = true,
      version = "kerfwright 0.1.0",
      description = "Plans the cut of rotary instruments through the layers of a tooth.",
      footer = {
        "",
        "Exit codes: 0 done, 1 refused (the finding is printed), 2 bad input.",
        "A planning aid for licensed clinicians; makers' limits and local rules come first."
      })
  private static final class Top implements Runnable {
    @Spec private @Nullable CommandSpec spec;

    @Override
    public void run() {
      if (spec != null) {
        throw new CommandLine.ParameterException(
            spec.commandLine(), "A command is missing, for example: kerfwright plan CASE.yaml");
      }
    }
  }
}
