package kerfwright.app.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.concurrent.Callable;
import kerfwright.app.Wiring;
import kerfwright.app.backup.DoctorCommand;
import kerfwright.app.backup.ExportCommand;
import kerfwright.app.backup.RestoreCommand;
import kerfwright.app.backup.UpgradeCommand;
import kerfwright.app.day.DayCommand;
import kerfwright.app.input.BadInput;
import kerfwright.app.words.Language;
import kerfwright.quantity.Message;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The command line of contract 1. Only commands that work are listed. */
public final class Commands {
  private static final String LANGUAGE = "--language";

  private Commands() {}

  /** Runs one command and tells its exit code. */
  public static int run(Wiring wiring, Terminal process, String... arguments) {
    Language language;
    try {
      language = language(arguments);
    } catch (BadInput unknown) {
      return process.badInput(unknown);
    }
    Terminal terminal = process.in(language);
    CommandLine line = new CommandLine(new Top());
    line.addSubcommand(new ServeCommand(wiring, terminal));
    line.addSubcommand(new PlanCommand(wiring, terminal));
    line.addSubcommand(new NumberCommand(terminal));
    line.addSubcommand(new AlikeCommand(wiring, terminal));
    line.addSubcommand(new ToothCommand(terminal));
    line.addSubcommand(new MaterialCommand(terminal));
    line.addSubcommand(new HeatCommand(terminal));
    line.addSubcommand(
        new DayCommand(terminal.say(), terminal::print, terminal.err(), new PlanNeeds(wiring)));
    line.addSubcommand(new EvidenceCommand(terminal));
    line.addSubcommand(new OwnCutCommand(terminal));
    line.addSubcommand(new RecordCommand(terminal));
    line.addSubcommand(new ExportCommand(terminal.say(), terminal.err()));
    line.addSubcommand(new RestoreCommand(terminal.say(), terminal.err()));
    line.addSubcommand(new UpgradeCommand(terminal.say(), terminal.err()));
    line.addSubcommand(new DoctorCommand(terminal.say(), terminal.out()));
    line.setResourceBundle(new HelpTexts(terminal.say()));
    line.setOut(new PrintWriter(terminal.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(terminal.err(), true, StandardCharsets.UTF_8));
    line.setParameterExceptionHandler((failure, typed) -> terminal.wrongUse(failure));
    line.setExecutionExceptionHandler(
        (failure, command, parsed) -> terminal.handle(failure, command));
    return line.execute(arguments);
  }

  /** The language is needed before the rest is read: help and faults are told in it too. */
  private static Language language(String... arguments) throws BadInput {
    String asked = Language.ENGLISH.id();
    for (int i = 0; i < arguments.length; i++) {
      if (arguments[i].startsWith(LANGUAGE + "=")) {
        asked = arguments[i].substring(LANGUAGE.length() + 1);
      } else if (arguments[i].equals(LANGUAGE) && i + 1 < arguments.length) {
        asked = arguments[i + 1];
      }
    }
    Language known = Language.byId(asked).orElse(null);
    if (known == null) {
      throw new BadInput(
          LANGUAGE, Message.of("command.language", asked, String.join(", ", Language.ids())));
    }
    return known;
  }

  /** The languages there are, for the help. */
  private static final class Languages implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Language.ids().iterator();
    }
  }

  @Command(name = "kerfwright", mixinStandardHelpOptions = true, version = "kerfwright 0.1.0")
  private static final class Top implements Callable<Integer> {
    @Option(
        names = LANGUAGE,
        paramLabel = "LANG",
        defaultValue = "en",
        completionCandidates = Languages.class,
        scope = CommandLine.ScopeType.INHERIT)
    private String language = "";

    @Override
    public Integer call() throws BadInput {
      throw new BadInput("kerfwright", Message.of("command.none"));
    }
  }
}
