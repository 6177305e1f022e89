package kerfwright.app.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.learning.LearningService;
import kerfwright.app.learning.OwnCutForm;
import kerfwright.app.learning.PaceWords;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.cases.CutRuns;
import kerfwright.app.storage.cases.StoredRecord;
import kerfwright.app.storage.people.StoredSettings;
import kerfwright.app.storage.stock.StoredDrawer;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.OwnPace.Factor;
import kerfwright.practice.learning.Narrowed;
import kerfwright.practice.learning.OwnCut;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "own-cut", mixinStandardHelpOptions = true)
final class OwnCutCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Option(names = "--data", paramLabel = "DIR", required = true)
  private Path data = Path.of("");

  @Option(names = "--instrument", paramLabel = "LABEL", required = true)
  private String instrument = "";

  @Option(names = "--handpiece", paramLabel = "ID", defaultValue = "turbine")
  private String handpiece = "";

  @Option(names = "--material", paramLabel = "ID", defaultValue = "mica-glass-ceramic")
  private String material = "";

  @Option(names = "--load-g", paramLabel = "G", required = true)
  private String load = "";

  @Option(names = "--water-ml", paramLabel = "ML", required = true)
  private String water = "";

  @Option(names = "--engaged-mm", paramLabel = "MM", required = true)
  private String engaged = "";

  @Option(names = "--seconds", paramLabel = "S", defaultValue = "30")
  private String seconds = "";

  @Option(names = "--depths-mm", paramLabel = "MM", required = true)
  private String depths = "";

  @Option(names = "--stall-g", paramLabel = "G")
  private @Nullable String stall;

  OwnCutCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws BadInput {
    Path file = data.resolve("kerfwright.db");
    if (!Files.isRegularFile(file)) {
      throw new BadInput("--data", Message.of("fault.no-file-at", file.toString()));
    }
    try (Database database = Database.file(file)) {
      StoredSettings settings = new StoredSettings(database);
      StoredDrawer drawer = new StoredDrawer(database);
      LearningService service =
          new LearningService(new StoredRecord(database), new CutRuns(database), drawer, settings);
      int version = settings.read().version();
      OwnCutForm read = OwnCutForm.read(typed(), drawer);
      OwnCut cut = read.cut();
      if (cut == null) {
        throw new BadInput(faults(read));
      }
      if (!service.ownCuts().keep(version, cut)) {
        throw new BadInput("--data", Message.of("command.own-cut-changed"));
      }
      terminal.print(told(terminal.say(), service.known().narrowed()));
      return Terminal.DONE;
    }
  }

  private Map<String, String> typed() {
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("instrument", instrument);
    typed.put("handpiece", handpiece);
    typed.put("material", material);
    typed.put("load_g", load);
    typed.put("water_ml", water);
    typed.put("engaged_mm", engaged);
    typed.put("seconds", seconds);
    typed.put("depths_mm", depths);
    typed.put("stall_g", stall == null ? "" : stall);
    return typed;
  }

  private static List<Fault> faults(OwnCutForm form) {
    List<Fault> faults = new ArrayList<>();
    for (String field : OwnCutForm.FIELDS) {
      if (!form.problem(field).isEmpty()) {
        faults.add(
            new Fault(
                "--" + field.replace('_', '-'), 0, "", Message.of(form.problem(field)), null));
      }
    }
    return faults;
  }

  private static String told(Say say, List<Narrowed> bands) {
    StringBuilder text = new StringBuilder();
    for (Narrowed band : bands) {
      Factor after = band.after();
      text.append(PaceWords.where(say, band)).append('\n');
      text.append("  ")
          .append(say.at("command.own-cut-before", PaceWords.interval(say, band.before())));
      String told =
          after == null
              ? say.at("pace.not-narrowed")
              : PaceWords.time(say, after.typical()) + "; " + PaceWords.interval(say, after);
      text.append("\n  ").append(say.at("command.own-cut-after", told)).append('\n');
    }
    return text.toString();
  }
}
