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
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "alike", mixinStandardHelpOptions = true)
final class AlikeCommand implements Callable<Integer> {
  private final Wiring wiring;
  private final Terminal terminal;

  @Parameters(paramLabel = "NUMBER", descriptionKey = "number", arity = "0..*")
  private List<String> number = List.of();

  @Option(names = "--us", paramLabel = "SIZE")
  private String us = "";

  @Option(names = "--with", paramLabel = "FIELD=VALUE")
  private Map<String, String> with = new LinkedHashMap<>();

  @Option(names = "--drawer", paramLabel = "FILE.csv")
  private @Nullable Path drawerFile;

  @Option(names = "--json")
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
      typed.faults().forEach((field, why) -> faults.add(new Fault("alike", 0, field, why, null)));
      throw new BadInput(faults);
    }
    DrawerSnapshot drawer;
    if (drawerFile == null) {
      terminal.tell("command.alike-demo-drawer");
      drawer = wiring.demoDrawer().read();
    } else {
      drawer = new DrawerFile(wiring.instruments()).read(drawerFile);
    }
    AlikeAnswer answer = AlikeAnswer.of(wanted, drawer);
    if (answer == null) {
      throw new BadInput("alike", AlikeAnswer.unknown(wanted));
    }
    if (json) {
      terminal.printJson(JsonText.of(AlikeText.json(answer, typed.assumed())));
    } else {
      terminal.print(AlikeText.text(terminal.say(), answer, typed.assumed()));
    }
    return Terminal.DONE;
  }

  private Map<String, String> fields() throws BadInput {
    Map<String, String> fields = new LinkedHashMap<>(with);
    List<String> columns = kerfwright.catalogue.number.DrawerFields.COLUMNS;
    for (String name : with.keySet()) {
      if (!columns.contains(name)) {
        String nearest = kerfwright.catalogue.NearestName.nearest(name, columns).orElse(null);
        Message problem = Message.of("fault.no-field", String.join(", ", columns));
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
      throw new BadInput("alike", Message.of("command.alike-none"));
    }
    return fields;
  }
}
