package kerfwright.app.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerfwright.app.Golden;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.SourceText;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.operation.Asked;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.FilledIn;
import kerfwright.planner.casework.KeepDefaults;
import kerfwright.planner.casework.Known;
import kerfwright.planner.casework.Layer;
import kerfwright.planner.casework.Lesion;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CaseFileTest {
  /** Line numbers of the faults below count in this text. */
  private static final String GOOD =
      """
      case: K-0412
      procedure: access-cavity
      tooth: {fdi: 16}
      pulp: vital
      layers:
        - {material: feldspathic-porcelain, thickness_mm: {low: 1.0, typical: 1.2, high: 1.5}}
        - {material: co-cr-alloy, thickness_mm: 0.4}
        - material: dentine
          thickness_mm: 3.0
      keep: {material: dentine, at_least_mm: 0.5}
      outline: {shape: ellipse, length_mm: 4.0, width_mm: 3.0}
      goal: {finish_ra_um: 0.5}
      handpieces: [turbine, electric-1to5]
      coolant_ml_per_min: 50
      """;

  private final CaseFile file = new CaseFile(new CaseCatalogue());

  private CutCase read(String text) throws BadInput {
    return file.yaml(new SourceText("case.yaml", text));
  }

  private String faults(String text) {
    BadInput bad = assertThrows(BadInput.class, () -> read(text));
    return bad.faults().stream()
        .map(fault -> fault.in(Say.in(Language.ENGLISH)))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void readsEveryFieldOfTheContract() throws BadInput {
    CutCase read = read(GOOD);
    assertEquals("K-0412", read.reference());
    assertEquals("access-cavity", read.procedure().id());
    assertEquals(16, read.tooth().fdi());
    assertEquals(PulpState.VITAL, read.pulp());
    assertEquals(3, read.layers().size());
    assertEquals(1.0, read.layers().get(0).thickness().low().millimetres(), 1e-12);
    assertEquals(0.4, read.layers().get(1).thickness().typical().millimetres(), 1e-12);
    assertEquals(Known.RANGE, read.layers().get(0).known());
    assertEquals(Known.FILM, read.layers().get(1).known());
    assertEquals(0.5, read.keep().atLeast().millimetres(), 1e-12);
    assertEquals(3.0, read.outline().width().millimetres(), 1e-12);
    assertEquals(0.5, read.finishRa().micrometres(), 1e-12);
    assertEquals(2, read.handpieces().size());
    assertEquals(50, read.coolant().millilitresPerMinute(), 1e-9);
    assertFalse(read.stackFilledIn());
  }

  @Test
  void readsTheSameObjectAsJson() throws BadInput {
    String json =
        """
        {"case": "K-0412", "procedure": "access-cavity", "tooth": {"fdi": 16}, "pulp": "vital",
         "layers": [
           {"material": "feldspathic-porcelain", "thickness_mm": {"low": 1.0, "typical": 1.2, "high": 1.5}},
           {"material": "co-cr-alloy", "thickness_mm": 0.4},
           {"material": "dentine", "thickness_mm": 3.0}],
         "keep": {"material": "dentine", "at_least_mm": 0.5},
         "outline": {"shape": "ellipse", "length_mm": 4.0, "width_mm": 3.0},
         "goal": {"finish_ra_um": 0.5}, "handpieces": ["turbine", "electric-1to5"],
         "coolant_ml_per_min": 50}
        """;
    assertEquals(read(GOOD), file.json(new SourceText("request", json)));
  }

  @ParameterizedTest
  @CsvSource({
    "'{universal: 3}', 16",
    "'{palmer: UR6}', 16",
    "16, 16",
    "'{fdi: 55}', 55",
    "'{universal: A}', 55"
  })
  void readsAToothInAnyNotation(String written, int fdi) throws BadInput {
    assertEquals(fdi, read(GOOD.replace("{fdi: 16}", written)).tooth().fdi());
  }

  @Test
  void keepsAllOfAMaterial() throws BadInput {
    CutCase read = read(GOOD.replace("at_least_mm: 0.5", "at_least_mm: all"));
    assertNull(read.keep().atLeast());
  }

  @Test
  void aCircleMayGiveItsDiameterAlone() throws BadInput {
    CutCase read =
        read(GOOD.replace("ellipse, length_mm: 4.0, width_mm: 3.0", "circle, diameter_mm: 2"));
    assertEquals(read.outline().length(), read.outline().width());
  }

  @Test
  void fillsInTheUsualLayersAndSaysSo() throws BadInput {
    String text = GOOD.replaceAll("(?s)layers:.*keep", "restoration: metal-ceramic\nkeep");
    CutCase read = read(text);
    assertTrue(read.stackFilledIn());
    assertTrue(read.layers().size() >= 3);
    assertFalse(read.stackSources().isEmpty());
  }

  @Test
  void asksForLayersWhereNoUsualThicknessIsKnown() {
    String faults = faults("procedure: cavity-preparation\ntooth: 55\n");
    assertTrue(faults.contains("lacks a thickness of"), faults);
    assertTrue(faults.contains("carious dentine"), faults);
  }

  @Test
  void toothAndProcedureAreEnoughAndAllElseIsNamedAsFilledIn() throws BadInput {
    CutCase read = read("procedure: access-cavity\ntooth: 46\n");
    assertEquals("46-access-cavity", read.reference());
    assertEquals(
        Set.of("case", "layers", "chamber", "outline", "handpieces", "coolant_ml_per_min"),
        read.filledIn().stream().map(FilledIn::field).collect(Collectors.toSet()));
    assertEquals(50, read.coolant().millilitresPerMinute(), 1e-9);
    assertEquals(3, read.handpieces().size());
    assertEquals(6.36, read.condition().chamber().below().typical().millimetres(), 1e-9);
    assertNull(KeepDefaults.of(read), "an access keeps nothing");
    assertTrue(read(GOOD.replaceAll("keep.*\n", "")).filledIn().isEmpty());
  }

  @Test
  void everyProcedureIsReadOnEveryToothItIsDoneOn() throws BadInput {
    for (Procedure procedure : Procedure.all()) {
      List<String> teeth = UsualStacks.packaged().procedure(procedure.id()).teeth();
      for (int fdi : new int[] {11, 13, 14, 16, 31, 33, 35, 37}) {
        if (teeth.isEmpty() || teeth.contains(new Tooth(fdi).toothClass().id())) {
          CutCase read = read("procedure: " + procedure.id() + "\ntooth: " + fdi + "\n");
          assertTrue(read.filled("outline").isPresent(), procedure.id());
          assertEquals(read, read("procedure: " + procedure.id() + "\ntooth: " + fdi + "\n"));
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "film | 1.0 | 0.7 | 1.0 | 1.3",
        "film | 0.4 | 0.2 | 0.4 | 0.7",
        "film | 0.1 | 0.05 | 0.1 | 0.2",
        "measured | 1.0 | 0.9 | 1.0 | 1.1",
        "usual | 1.0 | 0.93 | 1.0 | 1.43",
      })
  void aSingleThicknessGetsTheErrorOfHowItIsKnown(
      String known, double mm, double low, double typical, double high) throws BadInput {
    CutCase read =
        read(
            "procedure: access-cavity\ntooth: 16\nlayers:\n"
                + "  - {material: enamel, thickness_mm: "
                + mm
                + ", known: "
                + known
                + "}\n  - {material: dentine, thickness_mm: {low: 2.9, typical: 3.0, high: 3.4}}\n");
    Range<Length> enamel = read.layers().get(0).thickness();
    if (!known.equals("usual")) {
      assertEquals(low, enamel.low().millimetres(), 1e-9);
      assertEquals(high, enamel.high().millimetres(), 1e-9);
    } else {
      assertTrue(enamel.low().millimetres() < 1 && enamel.high().millimetres() > 1);
    }
    assertEquals(typical, enamel.typical().millimetres(), 1e-9);
    assertEquals(2.9, read.layers().get(1).thickness().low().millimetres(), 1e-9, "its own range");
  }

  /** 0.7 of what is read, 0.4 to 1.0; enamel and decay are read as on any film. */
  @Test
  void aBitewingShowsTheDentineUnderDecayTooThick() throws BadInput {
    CutCase read =
        read(
            """
            procedure: cavity-preparation
            tooth: 36
            known: bitewing
            layers:
              - {material: enamel, thickness_mm: 1.0}
              - {material: carious-dentine, thickness_mm: 1.5}
              - {material: dentine, thickness_mm: 2.0}
            """);
    Range<Length> left = read.layers().get(2).thickness();
    assertEquals(0.8, left.low().millimetres(), 1e-9);
    assertEquals(1.4, left.typical().millimetres(), 1e-9);
    assertEquals(2.0, left.high().millimetres(), 1e-9);
    assertEquals(1.2, read.layers().get(1).thickness().low().millimetres(), 1e-9);
    assertEquals(Known.FILM, read.layers().get(0).known());
  }

  @Test
  void aChamberReadOnAFilmSetsTheDentineOverIt() throws BadInput {
    CutCase read = read("procedure: access-cavity\ntooth: 46\nchamber: {depth_mm: 7.0}\n");
    double depth =
        read.layers().stream().mapToDouble(l -> l.thickness().typical().millimetres()).sum();
    assertEquals(7.0 - 2.0, depth, 1e-9, "the fossa lies 2 mm below the cusp tip");
    Range<Length> dentine = read.layers().get(1).thickness();
    assertEquals(
        Math.hypot(0.3, 0.5), dentine.high().millimetres() - dentine.typical().millimetres(), 1e-9);
    Range<Length> mean =
        read("procedure: access-cavity\ntooth: 46\nchamber: {depth_mm: 6.4, known: usual}\n")
            .condition()
            .chamber()
            .below();
    assertEquals(0.9, mean.high().millimetres() - mean.typical().millimetres(), 1e-9);
  }

  @Test
  void decayIsAsDeepAsTheLayersSayWhereNobodyGradesIt() throws BadInput {
    String text =
        """
        procedure: cavity-preparation
        tooth: 36
        layers:
          - {material: carious-dentine, thickness_mm: 2.5}
          - {material: dentine, thickness_mm: LEFT}
        """;
    assertEquals(Lesion.Depth.DEEP, read(text.replace("LEFT", "0.8")).lesion().depth());
    assertEquals(Lesion.Depth.MODERATE, read(text.replace("LEFT", "2.0")).lesion().depth());
  }

  @Test
  void anUnknownPulpIsNotTakenForADeadOne() throws BadInput {
    assertEquals(PulpState.UNKNOWN, read(GOOD.replace("pulp: vital\n", "")).pulp());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pulp: vital | plup: vital | 4 | plup: there is no such field here | did you mean pulp?",
        "co-cr-alloy | co-cr-aloy | 7 | layers[1].material: there is no material 'co-cr-aloy' | did you mean co-cr-alloy?",
        "access-cavity | acces-cavity | 2 | procedure: there is no procedure | did you mean access-cavity?",
        "{fdi: 16} | {fdi: 19} | 3 | tooth.fdi: there is no tooth '19' | 11 to 18",
        "{fdi: 16} | {fid: 16} | 3 | tooth.fid: there is no such field here | did you mean fdi?",
        "{fdi: 16} | {fdi: 16, palmer: UR6} | 3 | tooth: must be a tooth such as | found 2",
        "pulp: vital | pulp: alive | 4 | pulp: there is no pulp state 'alive' | vital, non-vital",
        "0.4} | -0.4} | 7 | layers[1].thickness_mm: must be a number above 0 to 30 mm, found '-0.4' | mm",
        "0.4} | 400} | 7 | layers[1].thickness_mm: must be a number above 0 to 30 mm, found '400' | mm",
        "0.4} | thin} | 7 | layers[1].thickness_mm: must be a number above 0 to 30 mm, found 'thin' | mm",
        "0.4} | .nan} | 7 | layers[1].thickness_mm: must be a number | found '.nan'",
        "0.4} | 1e999} | 7 | layers[1].thickness_mm: must be a number | found '1e999'",
        "thickness_mm: 3.0 | thickness_mm: 0 | 9 | layers[2].thickness_mm: must be a number above 0 | found '0'",
        "low: 1.0 | low: 1.4 | 6 | layers[0].thickness_mm: must rise from low to typical to high | found 1.4, 1.2, 1.5",
        "low: 1.0, | '' | 6 | layers[0].thickness_mm.low: is missing | above 0",
        "length_mm: 4.0 | length_mm: 2.0 | 11 | outline.width_mm: must be the shorter side | found 3.0",
        "shape: ellipse | shape: oval | 11 | outline.shape: there is no shape 'oval' | ellipse, circle",
        "electric-1to5] | electric] | 13 | handpieces[1]: there is no handpiece 'electric' | electric-1to5",
        "[turbine, electric-1to5] | [] | 13 | handpieces: must name at least one of | turbine",
        "[turbine, electric-1to5] | turbine | 13 | handpieces: must be a list | found 'turbine'",
        "coolant_ml_per_min: 50 | coolant_ml_per_min: 5000 | 14 | coolant_ml_per_min: must be a number from 0 to 500 mL/min | '5000'",
        "pulp: vital | known: guessed | 4 | known: there is no way of knowing 'guessed' | film, bitewing, measured, usual",
        "pulp: vital | intended: golden | 4 | intended: there is no intended restoration 'golden' | did you mean gold?",
        "pulp: vital | 'lesion: {depth: dep}' | 4 | lesion.depth: there is no depth of caries 'dep' | did you mean deep?",
        "pulp: vital | 'lesion: {activity: active}' | 4 | lesion.depth: is missing | shallow, moderate, deep",
        "pulp: vital | 'chamber: 6' | 4 | chamber: must be depth_mm | found '6'",
        "pulp: vital | 'chamber: {depth_mm: 60}' | 4 | chamber.depth_mm: must be a number above 0 to 20 mm | '60'",
        "keep: {material: dentine | keep: {material: enamel | 10 | keep: names enamel, which is not among the layers | case",
        "at_least_mm: 0.5 | at_least_mm: some | 10 | keep.at_least_mm: must be a number above 0 | found 'some'",
        "case: K-0412 | case: Jane Doe | 1 | case: must be the practice's own reference | never a name",
        "case: K-0412 | case: [1] | 1 | case: must be the practice's own reference | found a list",
        "finish_ra_um: 0.5 | finish_ra_um: 0 | 12 | goal.finish_ra_um: must be a number from 0.01 | found '0'",
      })
  void namesLineFieldAndExpectation(String good, String bad, int line, String start, String more) {
    String text = GOOD.replace(good, bad);
    assertFalse(text.equals(GOOD), "the good text must hold " + good);
    String faults = faults(text);
    assertTrue(faults.contains("case.yaml:" + line + ": " + start), faults);
    assertTrue(faults.contains(more), faults);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "case: [ | broken YAML",
        "'' | is empty",
        "[1, 2] | fields such as",
        "'a: 1\na: 2' | stands here a second time",
        "'a: &x 1\nb: *x' | aliases",
        "'a: 1\n---\nb: 2' | one document was expected",
        "'a: [[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]' | nested too deeply",
      })
  void refusesWhatIsNoCaseAtAll(String text, String expected) {
    String faults = faults(text);
    assertTrue(faults.contains(expected), faults);
    assertFalse(faults.contains("com.fasterxml"), faults);
  }

  @Test
  void refusesADeeplyNestedFileWithoutOverflow() {
    assertTrue(faults("a: " + "[".repeat(100_000)).startsWith("case.yaml"));
  }

  @Test
  void tellsAllFaultsOfAFileAtOnce() throws IOException {
    String text =
        """
        procedure: root-canal
        tooth: {fdi: 99}
        layers:
          - {material: enamle, thickness_mm: -1}
          - {material: dentine}
        outline: {shape: ellipse, length_mm: wide, width_mm: 3.0, hight_mm: 1}
        handpieces: [turbin]
        coolant: 50
        """;
    Golden.check("case-faults.txt", faults(text) + "\n");
  }

  /** Every way the catalogue knows of doing a procedure is shown by an example that is read. */
  @Test
  void everyWayOfAProcedureHasAnExample() throws BadInput, IOException {
    Set<String> shown = new TreeSet<>();
    for (Path example : examples()) {
      CutCase read = file.read(example);
      Lesion lesion = read.lesion();
      Asked asked =
          new Asked(
              read.procedure().id(),
              read.tooth(),
              Objects.requireNonNullElse(read.restoration(), ""),
              read.layers().stream().map(Layer::material).toList(),
              Objects.requireNonNullElse(read.intended(), ""),
              lesion == null ? "" : lesion.depth().id(),
              read.pulp().id());
      OperationTable.packaged().variant(asked).ifPresent(one -> shown.add(one.id()));
    }
    Set<String> ways = new TreeSet<>(OperationTable.packaged().variants());
    ways.removeAll(shown);
    assertEquals(Set.of(), ways);
  }

  private static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("../examples"))) {
      List<Path> found = new ArrayList<>();
      for (Path one : files.sorted().toList()) {
        if (one.toString().endsWith(".yaml") && Files.readString(one).contains("\nprocedure:")) {
          found.add(one);
        }
      }
      return found;
    }
  }

  @Test
  void refusesMissingAndHugeFiles(@TempDir Path folder) throws IOException {
    Path missing = folder.resolve("none.yaml");
    BadInput none = assertThrows(BadInput.class, () -> file.read(missing));
    assertTrue(none.faults().get(0).in(Say.in(Language.ENGLISH)).contains("there is no such file"));
    Path huge = folder.resolve("huge.yaml");
    Files.writeString(huge, GOOD + "# ".repeat(600_000));
    BadInput large = assertThrows(BadInput.class, () -> file.read(huge));
    assertTrue(large.faults().get(0).in(Say.in(Language.ENGLISH)).contains("larger than 1 MiB"));
    BadInput place = assertThrows(BadInput.class, () -> file.read(folder));
    assertTrue(place.faults().get(0).in(Say.in(Language.ENGLISH)).contains("is a folder"));
    Path binary = folder.resolve("binary.yaml");
    Files.write(binary, new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
    BadInput noText = assertThrows(BadInput.class, () -> file.read(binary));
    assertTrue(noText.faults().get(0).in(Say.in(Language.ENGLISH)).contains("not UTF-8"));
  }
}
