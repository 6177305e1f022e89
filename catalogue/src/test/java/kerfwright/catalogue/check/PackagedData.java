package kerfwright.catalogue.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import kerfwright.catalogue.caution.Cautions;
import kerfwright.catalogue.claim.Claims;
import kerfwright.catalogue.evidence.CaseLists;
import kerfwright.catalogue.evidence.Discrepancies;
import kerfwright.catalogue.evidence.Evidence;
import kerfwright.catalogue.evidence.EvidenceCases;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.instrument.BladeCounts;
import kerfwright.catalogue.instrument.Characteristics;
import kerfwright.catalogue.instrument.Grits;
import kerfwright.catalogue.instrument.NominalSizes;
import kerfwright.catalogue.instrument.Shanks;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.instrument.WorkingParts;
import kerfwright.catalogue.limit.SafetyLimits;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.material.ToolMaterials;
import kerfwright.catalogue.number.UsSizes;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.catalogue.operation.WholeTime;
import kerfwright.catalogue.piece.PieceKinds;
import kerfwright.catalogue.reprocessing.ReprocessingFigures;
import kerfwright.catalogue.size.UsualSizes;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.stack.Anatomy;
import kerfwright.catalogue.stack.Readings;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.quantity.Length;

/** Reads every packaged table. */
final class PackagedData {
  private static final List<Supplier<Object>> TABLES =
      List.of(
          Sources::packaged,
          Materials::packaged,
          ToolMaterials::packaged,
          Anatomy::packaged,
          Readings::packaged,
          UsualStacks::packaged,
          Discrepancies::packaged,
          Evidence::packaged,
          EvidenceCases::packaged,
          CaseLists::packaged,
          Claims::packaged,
          Cautions::packaged,
          SafetyLimits::packaged,
          ReprocessingFigures::packaged,
          OperationTable::packaged,
          WholeTime::all,
          UsualSizes::packaged,
          BladeCounts::all,
          Characteristics::all,
          Grits::all,
          Handpieces::all,
          PieceKinds::all,
          NominalSizes::all,
          Shanks::all,
          Shapes::all,
          () -> Shapes.usualHeadLength(Shapes.ofFamily(ShapeFamily.ROUND), Length.ofMillimetres(1)),
          UsSizes::all,
          () -> WorkingParts.byGroup("806"));

  private PackagedData() {}

  /** What is wrong with the tables, one message for each that could not be read. */
  static List<String> faults() {
    List<String> faults = new ArrayList<>();
    for (Supplier<Object> table : TABLES) {
      try {
        table.get();
      } catch (ExceptionInInitializerError unsound) {
        faults.add(String.valueOf(unsound.getCause()));
      }
    }
    return faults;
  }
}
