package kerfwright.app.cli;

import java.util.concurrent.Callable;
import kerfwright.app.evidence.EvidenceJson;
import kerfwright.app.evidence.EvidenceText;
import kerfwright.planner.evidence.EvidenceReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "evidence", mixinStandardHelpOptions = true)
final class EvidenceCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Option(names = "--json")
  private boolean json;

  EvidenceCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    EvidenceReport report = EvidenceReport.compute();
    if (json) {
      terminal.printJson(EvidenceJson.text(report));
    } else {
      terminal.print(EvidenceText.of(terminal.say(), report));
    }
    return Terminal.DONE;
  }
}
