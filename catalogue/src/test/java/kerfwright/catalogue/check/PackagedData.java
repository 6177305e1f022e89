package kerfwright.catalogue.check;

import java.util.List;
import java.util.stream.Stream;
import kerfwright.catalogue.caution.Cautions;
import kerfwright.catalogue.claim.Claims;
import kerfwright.catalogue.evidence.CaseLists;
import kerfwright.catalogue.evidence.Discrepancies;
import kerfwright.catalogue.evidence.Evidence;
import kerfwright.catalogue.evidence.EvidenceCases;
import kerfwright.catalogue.limit.SafetyLimits;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.material.ToolMaterials;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.catalogue.reprocessing.ReprocessingFigures;
import kerfwright.catalogue.size.UsualSizes;
import kerfwright.catalogue.source.Sources;
import kerfwright.catalogue.stack.Anatomy;
import kerfwright.catalogue.stack.Readings;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.catalogue.table.Faults;

/** Reads every table of materials, stacks, evidence, cautions, limits and sources. */
public final class PackagedData {
  private PackagedData() {}

  /**
   * Reads all tables and throws {@link kerfwright.catalogue.table.BadDataException} with every
   * fault of every file, if there is one.
   */
  public static void verify() {
    faults().throwIfAny();
  }

  /** Every fault of every table. */
  public static Faults faults() {
    Faults faults = new Faults();
    Sources sources = Sources.load(faults);
    Materials materials = Materials.load(sources, faults);
    ToolMaterials.load(sources, faults);
    Anatomy anatomy = Anatomy.load(sources, faults);
    Readings.load(sources, faults);
    UsualStacks.load(anatomy, materials, sources, faults);
    Discrepancies.load(faults);
    Evidence evidence = Evidence.load(sources, faults);
    CaseLists.load(EvidenceCases.load(evidence, materials, faults), faults);
    Claims.load(sources, evidence, faults);
    Cautions.load(sources, faults);
    SafetyLimits.load(sources, faults);
    ReprocessingFigures.load(sources, faults);
    Stream.of(OperationTable.dataFaults(), UsualSizes.dataFaults())
        .flatMap(List::stream)
        .forEach(f -> faults.add(f.file(), f.line(), f.column(), f.expected()));
    return faults;
  }
}
