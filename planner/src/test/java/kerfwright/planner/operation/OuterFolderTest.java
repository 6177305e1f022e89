package kerfwright.planner.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import kerfwright.catalogue.operation.Asked;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.catalogue.table.BadDataException;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.PulpState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A procedure added by a folder of rows and texts alone. */
class OuterFolderTest {
  private static final String HEADER =
      "id,order,task,from,to,kind,face,terms,kinds,forms,grits,least_blades,most_blades,safe_end,"
          + "least_head,most_head,reach,other_tools,abrasive,speeds,least_rpm,most_rpm,least_n,"
          + "most_n,water,least_ml_per_min,stroke,contact_s,pause_s,heat,spare,when,repeat,"
          + "least_seconds,least_chair_s,most_chair_s,says,sources,locator,basis,confidence,note\n";
  private static final String LOOK =
      "fissure-sealing.look,1,inspect,any,,none,,,,,,,,,,,,,,,,,,,none,,,,,none,,,,,,,,"
          + "common-practice,,common-practice,medium,\n";
  private static final String OPEN =
      "fissure-sealing.open-fissure,2,outline,enamel,enamel,groove,occlusal,"
          + "from = 0; to = 0.3; volume = n*L*0.5*(to - from); n = 2; length = n*L,"
          + "diamond,needle,fine,,,,0.4,0.8,,,,speed-increasing,40000,160000,0.1,0.5,spray,50,,,,"
          + "pulp-wall,,,,,,,to,common-practice,,common-practice,medium,\n";
  private static final String SMOOTH =
      "fissure-sealing.smooth-fissure,3,finish,enamel,enamel,sweep,occlusal,"
          + "area = 2*L*0.5; passes = 2,diamond,flame,extra-fine,,,,0.8,1.2,,,,speed-increasing,"
          + "20000,100000,0.1,0.3,spray,,,,,pulp-wall,,,,,,,,common-practice,,common-practice,"
          + "medium,\n";
  private static final String VARIANTS =
      "id,variant,procedure,teeth,restorations,outer,holds,intended,lesion,pulp,sources,locator,"
          + "basis,confidence,note\n"
          + "sealing,fissure-sealing,fissure-sealing,premolar; molar,,enamel,,,,,common-practice,,"
          + "common-practice,medium,\n";

  @TempDir Path folder;

  private OperationTable read(String... rows) throws IOException {
    Files.writeString(folder.resolve("values.csv"), HEADER + String.join("", rows));
    Files.writeString(folder.resolve("variants.csv"), VARIANTS);
    Files.writeString(
        folder.resolve("texts_en.properties"), "operation.open-fissure.name=Open the fissure\n");
    Files.writeString(
        folder.resolve("texts_de.properties"), "operation.open-fissure.name=Fissur eröffnen\n");
    return OperationTable.from(folder, name -> true);
  }

  private static CutCase molar() {
    return LaidCases.of("cavity-preparation", 46, PulpState.VITAL, "enamel", 1.2, "dentine", 3.0);
  }

  private static Laying lay(OperationTable table) {
    CutCase c = molar();
    Asked asked =
        new Asked(
            "fissure-sealing",
            c.tooth(),
            "",
            c.layers().stream().map(layer -> layer.material()).toList(),
            "",
            "",
            c.pulp().id());
    return Laying.of(c, table.operations(asked));
  }

  private static String ids(Laying laid) {
    return laid.works().stream().map(w -> w.operation().id()).collect(Collectors.joining(" "));
  }

  @Test
  void itsOperationsAreLaidWithComputedVolumes() throws IOException {
    OperationTable table = read(LOOK, OPEN, SMOOTH);
    assertTrue(table.procedures().contains("fissure-sealing"));
    Laying laid = lay(table);
    assertEquals("open-fissure smooth-fissure", ids(laid));
    assertEquals(1, laid.cues().size());
    Work opened = laid.works().get(0);
    assertEquals(2 * 4.0 * 0.5 * 0.3, opened.volumeM3(0.6e-3) * 1e9, 1e-9);
    assertEquals(8e-3, opened.pathM(), 1e-12);
    assertEquals(List.of(0.3), opened.saidMm());
  }

  @Test
  void takingARowOutOfTheFolderTakesTheOperationOutOfThePlan() throws IOException {
    read(LOOK, OPEN, SMOOTH);
    assertEquals("open-fissure", ids(lay(read(LOOK, OPEN))));
  }

  @Test
  void thePackagedProceduresStay() throws IOException {
    OperationTable table = read(LOOK, OPEN);
    assertEquals(
        OperationTable.packaged().operations("access-natural-molar"),
        table.operations("access-natural-molar"));
    assertTrue(table.procedures().containsAll(OperationTable.packaged().procedures()));
  }

  @Test
  void aPackagedVariantNamedInTheFolderIsReplacedAsAWhole() throws IOException {
    OperationTable table = read(OPEN.replace("fissure-sealing.", "enamel-bevel."));
    assertEquals(1, table.operations("enamel-bevel").size());
  }

  @Test
  void itsTextsComeWithIt() throws IOException {
    OperationTable table = read(LOOK, OPEN);
    assertEquals("Open the fissure", table.texts("en").get("operation.open-fissure.name"));
    assertEquals("Fissur eröffnen", table.texts("de").get("operation.open-fissure.name"));
  }

  @Test
  void aFaultIsToldWithFileLineColumnAndWhatWasExpected() {
    BadDataException bad =
        assertThrows(
            BadDataException.class,
            () -> read(LOOK, OPEN.replace("0.4,0.8", "0.4,half the width")));
    String told = bad.faults().get(0).toString();
    assertTrue(told.contains("values.csv:3, column most_head"), told);
    assertTrue(told.contains("fault.formula-operator"), told);
  }

  @Test
  void aMissingFileIsTold() {
    BadDataException bad =
        assertThrows(
            BadDataException.class,
            () -> OperationTable.from(folder.resolve("none"), name -> true));
    assertTrue(bad.getMessage().contains("fault.table-unreadable"), bad.getMessage());
  }
}
