package kerfwright.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.Chains;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Seal;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.practice.record.Chain;
import kerfwright.practice.record.ChainCheck;
import kerfwright.practice.record.CutRecord;
import kerfwright.practice.record.RecordEntry;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "record", mixinStandardHelpOptions = true)
final class RecordCommand implements Callable<Integer> {
  private static final Pattern NOTED = Pattern.compile("(\\d{1,9}):([0-9a-f]{64})");

  private final Terminal terminal;

  @Parameters(paramLabel = "verify", descriptionKey = "action")
  private String action = "";

  @Option(names = "--data", paramLabel = "DIR")
  private @Nullable Path data;

  @Option(names = "--noted", paramLabel = "NUMBER:HASH")
  private @Nullable String noted;

  RecordCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws BadInput, IOException {
    if (!action.equals("verify")) {
      throw new BadInput("record", Message.of("command.record-action", action));
    }
    Matcher link = NOTED.matcher(noted == null ? "" : noted);
    if (noted != null && !link.matches()) {
      throw new BadInput("--noted", Message.of("command.record-noted"));
    }
    try (Database database = database()) {
      CutRecord record = new StoredRecord(database);
      Chains chains = Chains.of(database);
      ChainCheck check = chains.record();
      if (broken("record", check)
          || broken("ledger", chains.ledger())
          || broken("trail", chains.trail())) {
        return Terminal.REFUSED;
      }
      Optional<Seal> seal = data == null ? Optional.empty() : Seal.in(data);
      if (seal.isPresent() && !seal.get().holdsIn(database)) {
        Chain trail = seal.get().trail();
        terminal.tell(
            trail == null ? "command.record-other" : "command.record-other-trail",
            Seal.FILE,
            seal.get().record().number(),
            seal.get().ledger().number(),
            trail == null ? 0 : trail.number());
        return Terminal.REFUSED;
      }
      if (noted != null && !stands(record, Long.parseLong(link.group(1)), link.group(2))) {
        terminal.tell("command.record-rewritten", link.group(1));
        return Terminal.REFUSED;
      }
      terminal.print(
          terminal
                  .say()
                  .at(
                      "command.record-holds",
                      check.sound().number(),
                      chains.ledger().sound().number(),
                      chains.trail().sound().number(),
                      check.sound().number() + ":" + check.sound().hash())
              + "\n");
      return Terminal.DONE;
    }
  }

  private boolean broken(String chain, ChainCheck check) {
    ChainCheck.Break broken = check.broken();
    if (broken == null) {
      return false;
    }
    String how =
        "command.record-" + broken.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    terminal.tell("command.record-broken-" + chain, broken.number(), terminal.say().at(how));
    return true;
  }

  private static boolean stands(CutRecord record, long number, String hash) {
    Optional<RecordEntry> entry = record.at(number);
    return entry.isPresent() && entry.get().hash().equals(hash);
  }

  private Database database() throws BadInput {
    String url = System.getenv(Database.VARIABLE);
    if (url != null && !url.isBlank()) {
      if (data != null) {
        throw new BadInput("--data", Message.of("command.both-given", Database.VARIABLE));
      }
      return Database.readingServer(url.strip());
    }
    if (data == null) {
      throw new BadInput("--data", Message.of("backup.no-folder-given", Database.VARIABLE));
    }
    Path file = data.resolve("kerfwright.db");
    if (!Files.isRegularFile(file)) {
      throw new BadInput("--data", Message.of("fault.no-file-at", file.toString()));
    }
    return Database.reading(file);
  }
}
