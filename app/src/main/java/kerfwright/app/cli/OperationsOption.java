package kerfwright.app.cli;

import java.nio.file.Path;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.words.OperationTexts;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.catalogue.table.BadDataException;
import kerfwright.catalogue.table.DataFault;
import kerfwright.planner.operation.Laying;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** A folder of operations of the practice's own, taken in before anything is planned. */
final class OperationsOption {
  @Option(names = "--operations", paramLabel = "DIR")
  private @Nullable Path folder;

  void take() throws BadInput {
    if (folder == null) {
      OperationTable.use(OperationTable.packaged());
      return;
    }
    try {
      OperationTable table = OperationTable.from(folder, Laying::knowsName);
      OperationTable.use(table);
      OperationTexts.take(table);
    } catch (BadDataException bad) {
      throw new BadInput(bad.faults().stream().map(OperationsOption::fault).toList());
    }
  }

  private static Fault fault(DataFault told) {
    String field = told.column().equals("-") ? "" : told.column();
    return new Fault(told.file(), (int) told.line(), field, told.expected(), null);
  }
}
