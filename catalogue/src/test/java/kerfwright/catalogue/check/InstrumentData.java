package kerfwright.catalogue.check;

import java.util.List;
import java.util.stream.Stream;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.instrument.BladeCounts;
import kerfwright.catalogue.instrument.Characteristics;
import kerfwright.catalogue.instrument.Grits;
import kerfwright.catalogue.instrument.NominalSizes;
import kerfwright.catalogue.instrument.Shanks;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.instrument.WorkingParts;
import kerfwright.catalogue.number.UsSizes;
import kerfwright.catalogue.piece.PieceKinds;
import kerfwright.catalogue.table.BadDataException;
import kerfwright.catalogue.table.DataFault;

/** The data of instruments, numbers and handpieces: called at start-up, fails with all faults. */
public final class InstrumentData {
  private InstrumentData() {}

  /** Every fault in every file; empty in a sound build. */
  public static List<DataFault> faults() {
    return Stream.of(
            BladeCounts.dataFaults(),
            Characteristics.dataFaults(),
            Grits.dataFaults(),
            Handpieces.dataFaults(),
            PieceKinds.dataFaults(),
            NominalSizes.dataFaults(),
            Shanks.dataFaults(),
            Shapes.dataFaults(),
            UsSizes.dataFaults(),
            WorkingParts.dataFaults())
        .flatMap(List::stream)
        .distinct()
        .toList();
  }

  /** Throws one exception with all faults, if there is one. */
  public static void requireSound() {
    List<DataFault> faults = faults();
    if (!faults.isEmpty()) {
      throw new BadDataException(faults);
    }
  }
}
