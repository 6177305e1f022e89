package kerfwright.app.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import kerfwright.app.Wiring;
import kerfwright.app.drawerfile.DrawerFile;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.json.JsonText;
import kerfwright.app.reference.AlikeAnswer;
import kerfwright.app.reference.AlikeText;
import kerfwright.app.reference.TypedInstrument;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.planner.casework.DrawerSnapshot;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "alike",
    mixinStandardHelpOptions = true,
    description = {
      "Finds the instruments most like one, in the drawer and in the catalogue,",
      "and tells what differs and whether it matters for the cut."
    })
final class AlikeCommand implements Callable<Integer> {
  private static final Say ENGLISH = Say.in(Language.ENGLISH);

  private final Wiring wiring;
  private final Terminal terminal;

  @Parameters(
      paramLabel = "NUMBER",
      arity = "0..*",
      description = "An ISO 6360 number, e.g. \"806 314 197 534 014\".")
  private List<String> number = List.of();

  @Option(names = "--us", paramLabel = "SIZE", description = "A US bur size, e.g. 330.")
  private String us = "";

  @Option(
      names = "--with",
      paramLabel = "FIELD=VALUE",
      description = {
        "Any column of the drawer file, e.g. --with kind=carbide --with blades=8;",
        "adds to a number or takes its place."
      })
  private Map<String, String> with = new LinkedHashMap<>();

  @Option(
      names = "--drawer",
      paramLabel = "FILE.csv",
      description = "The drawer; without it the invented practice's drawer is used.")
  private @Nullable Path drawerFile;

  @Option(names = "--json", description = "Print one JSON object (alike/1).")
  private boolean json;

  AlikeCommand(Wiring wiring, Terminal terminal) {
    this.wiring = wiring;
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws BadInput {
    TypedInstrument typed = TypedInstrument.of(fields());
    InstrumentProperties wanted = typed.properties();
    if (wanted == null) {
      List<Fault> faults = new ArrayList<>();
      typed
          .faults()
          .forEach((field, why) -> faults.add(new Fault("alike", 0, field, ENGLISH.of(why), null)));
      throw new BadInput(faults);
    }
    DrawerSnapshot drawer;
    if (drawerFile == null) {
      terminal.say("no --drawer given: compared with the drawer of the invented demo practice");
      drawer = wiring.demoDrawer().read();
    } else {
      drawer = new DrawerFile(wiring.instruments()).read(drawerFile);
    }
    AlikeAnswer answer = AlikeAnswer.of(wanted, drawer);
    if (answer == null) {
      throw new BadInput("alike", ENGLISH.of(AlikeAnswer.unknown(wanted)));
    }
    List<String> assumed = typed.assumed().stream().map(ENGLISH::of).toList();
    if (json) {
      terminal.printJson(JsonText.of(AlikeText.json(answer, assumed)));
    } else {
      terminal.print(AlikeText.text(answer, assumed));
    }
    return Terminal.DONE;
  }

  private Map<String, String> fields() throws BadInput {
    Map<String, String> fields = new LinkedHashMap<>(with);
    List<String> columns = kerfwright.catalogue.number.DrawerFields.COLUMNS;
    for (String name : with.keySet()) {
      if (!columns.contains(name)) {
        String nearest = kerfwright.catalogue.NearestName.nearest(name, columns).orElse(null);
        String problem = "there is no field '" + name + "'; expected " + String.join(", ", columns);
        throw new BadInput(List.of(new Fault("--with", 0, name, problem, nearest)));
      }
    }
    if (!number.isEmpty()) {
      fields.put("iso", String.join(" ", number));
    }
    if (!us.isBlank()) {
      fields.put("us", us);
    }
    if (fields.isEmpty()) {
      throw new BadInput("alike", "a number, --us with a size, or --with fields were expected");
    }
    return fields;
  }
}
