package kerfwright.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
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
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "record",
    mixinStandardHelpOptions = true,
    description = "Looks at every link of the cut record's chain and says where it breaks.")
final class RecordCommand implements Callable<Integer> {
  private static final Pattern NOTED = Pattern.compile("(\\d{1,9}):([0-9a-f]{64})");
  private static final Map<ChainCheck.Kind, String> WORDS =
      Map.of(
          ChainCheck.Kind.MISSING, "is missing",
          ChainCheck.Kind.CHANGED, "was changed: its hash does not fit its text",
          ChainCheck.Kind.FOUND_WRONGLY, "is found by columns that do not say what its text says",
          ChainCheck.Kind.END,
              "does not fit the end of the chain: entries were removed or added past the program");

  private final Terminal terminal;

  @Parameters(paramLabel = "verify", description = "What to do: verify.")
  private String action = "";

  @Option(
      names = "--data",
      paramLabel = "DIR",
      description = "Folder of the practice; KERFWRIGHT_DATABASE names a PostgreSQL one instead.")
  private @Nullable Path data;

  @Option(
      names = "--noted",
      paramLabel = "NUMBER:HASH",
      description =
          "A link noted earlier, on paper or beside a backup; shows a chain rewritten to its end.")
  private @Nullable String noted;

  RecordCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws BadInput, IOException {
    if (!action.equals("verify")) {
      throw new BadInput("record", "expected 'record verify', found 'record " + action + "'");
    }
    Matcher link = NOTED.matcher(noted == null ? "" : noted);
    if (noted != null && !link.matches()) {
      throw new BadInput("--noted", "must be a number, a colon and 64 hexadecimal digits");
    }
    try (Database database = database()) {
      CutRecord record = new StoredRecord(database);
      Chains chains = Chains.of(database);
      ChainCheck check = chains.record();
      ChainCheck.Break broken = check.broken();
      if (broken != null) {
        terminal.say("the chain breaks: entry " + broken.number() + " " + WORDS.get(broken.kind()));
        return Terminal.REFUSED;
      }
      ChainCheck.Break moved = chains.ledger().broken();
      if (moved != null) {
        terminal.say(
            "the chain of drawer and loads breaks: line "
                + moved.number()
                + " "
                + WORDS.get(moved.kind()));
        return Terminal.REFUSED;
      }
      ChainCheck.Break traced = chains.trail().broken();
      if (traced != null) {
        terminal.say(
            "the chain of the trail breaks: line "
                + traced.number()
                + " "
                + WORDS.get(traced.kind()));
        return Terminal.REFUSED;
      }
      Optional<Seal> seal = data == null ? Optional.empty() : Seal.in(data);
      if (seal.isPresent() && !seal.get().holdsIn(database)) {
        terminal.say(
            "this is not the database that the file "
                + Seal.FILE
                + " in its folder was written for: that names entry "
                + seal.get().record().number()
                + " of the record and line "
                + seal.get().ledger().number()
                + " of drawer and loads"
                + named(seal.get().trail())
                + ". Entries were lost, or an older file was put back");
        return Terminal.REFUSED;
      }
      if (noted != null && !stands(record, Long.parseLong(link.group(1)), link.group(2))) {
        terminal.say(
            "entry "
                + link.group(1)
                + " does not have the hash that was noted: the chain before it"
                + " was rewritten");
        return Terminal.REFUSED;
      }
      terminal.print(
          "The chain holds: "
              + check.sound().number()
              + " entries.\nDrawer and loads: "
              + chains.ledger().sound().number()
              + " lines, and every row as they say.\nTrail: "
              + chains.trail().sound().number()
              + " lines.\nTo note: "
              + check.sound().number()
              + ":"
              + check.sound().hash()
              + "\n");
      return Terminal.DONE;
    }
  }

  private static String named(@Nullable Chain trail) {
    return trail == null ? "" : ", line " + trail.number() + " of the trail";
  }

  private static boolean stands(CutRecord record, long number, String hash) {
    Optional<RecordEntry> entry = record.at(number);
    return entry.isPresent() && entry.get().hash().equals(hash);
  }

  private Database database() throws BadInput {
    String url = System.getenv("KERFWRIGHT_DATABASE");
    if (url != null && !url.isBlank()) {
      if (data != null) {
        throw new BadInput("--data", "and KERFWRIGHT_DATABASE are both given; give one of them");
      }
      return Database.readingServer(url.strip());
    }
    if (data == null) {
      throw new BadInput("--data", "the folder of the practice is needed, as given to serve");
    }
    Path file = data.resolve("kerfwright.db");
    if (!Files.isRegularFile(file)) {
      throw new BadInput("--data", "there is no " + file);
    }
    return Database.reading(file);
  }
}
