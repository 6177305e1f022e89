package kerfwright.catalogue.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.size.Size;
import kerfwright.catalogue.size.UsualSizes;
import kerfwright.catalogue.tooth.Tooth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What holds across the operations of every procedure. */
class OperationTableTest {
  private static final OperationTable TABLE = OperationTable.packaged();
  private static final Set<String> OF_THE_CASE =
      Set.of("A", "P", "L", "W", "d", "s", "total", "all", "front", "vital", "pi");
  private static final Set<Task> ROUGH =
      Set.of(Task.OPEN, Task.OUTLINE, Task.BULK, Task.SLOT, Task.REDUCE, Task.PLANE);

  private static List<Operation> all() {
    return TABLE.variants().stream().flatMap(v -> TABLE.operations(v).stream()).toList();
  }

  @Test
  void everyVariantIsReadInOrderWithoutAGap() {
    assertEquals(44, TABLE.variants().size());
    for (String variant : TABLE.variants()) {
      List<Integer> orders = TABLE.operations(variant).stream().map(Operation::order).toList();
      assertEquals(IntStream.rangeClosed(1, orders.size()).boxed().toList(), orders, variant);
    }
  }

  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "access-cavity, 46, enamel dentine, -, -, access-natural-molar",
        "access-cavity, 15, enamel dentine, -, -, access-natural-premolar",
        "access-cavity, 13, enamel dentine, -, -, access-natural-anterior",
        "access-cavity, 36, amalgam dentine, -, -, access-natural-molar",
        "access-cavity, 26, feldspathic-porcelain co-cr-alloy dentine, -, -, access-metal-ceramic",
        "access-cavity, 26, feldspathic-porcelain zirconia-3y dentine, -, -, access-zirconia",
        "access-cavity, 26, zirconia-5y dentine, -, -, access-zirconia",
        "access-cavity, 11, lithium-disilicate dentine, -, -, access-glass-ceramic",
        "access-cavity, 47, gold-alloy dentine, -, -, access-full-metal",
        "access-cavity, 47, enamel dentine, -, opened, deroof-and-refine",
        "access-cavity, 47, zirconia-3y dentine, -, opened, deroof-and-refine",
        "crown-sectioning, 37, co-cr-alloy dentine, -, -, sectioning-metal",
        "crown-sectioning, 37, feldspathic-porcelain ni-cr-alloy dentine, -, -, sectioning-metal-ceramic",
        "crown-sectioning, 37, zirconia-3y dentine, -, -, sectioning-zirconia",
        "crown-sectioning, 37, leucite-glass-ceramic dentine, -, -, sectioning-glass-ceramic",
        "cavity-preparation, 36, enamel carious-dentine dentine, -, -, cavity-carious-moderate",
        "cavity-preparation, 36, enamel carious-dentine dentine, -, deep, cavity-carious-deep",
        "cavity-preparation, 36, enamel carious-dentine dentine, -, initial, cavity-conservative",
        "cavity-preparation, 36, enamel dentine, inlay-ceramic, -, inlay-cavity-ceramic",
        "cavity-preparation, 36, enamel dentine, onlay-metal, -, onlay-cavity-metal",
        "crown-preparation, 16, enamel dentine, -, -, crown-posterior-metal-ceramic",
        "cavity-preparation, 36, enamel carious-dentine dentine, -, shallow, cavity-conservative",
        "inlay-cavity, 36, enamel dentine, lithium-disilicate, -, inlay-cavity-ceramic",
        "onlay-cavity, 36, enamel dentine, gold, -, onlay-cavity-metal",
        "onlay-cavity, 36, enamel dentine, -, -, onlay-cavity-ceramic",
        "post-removal, 22, composite-aged fibre-post, -, -, post-removal-fibre",
        "deroof-and-refine, 46, enamel dentine, -, -, deroof-and-refine",
        "crown-preparation, 16, enamel dentine, zirconia, -, crown-posterior-ceramic",
        "crown-preparation, 16, enamel dentine, gold, -, crown-posterior-metal",
        "crown-preparation, 16, enamel dentine, zirconia-3y, -, crown-posterior-ceramic",
        "crown-preparation, 11, enamel dentine, lithium-disilicate, -, crown-anterior-ceramic",
        "crown-preparation, 11, enamel dentine, full-gold, -, crown-anterior-metal",
        "composite-removal, 36, composite dentine, -, -, composite-removal-fresh",
        "composite-removal, 36, composite-aged dentine, -, -, composite-removal-aged",
        "occlusal-adjustment, 36, enamel dentine, -, -, adjust-enamel",
        "occlusal-adjustment, 36, zirconia-3y dentine, -, -, adjust-zirconia",
        "occlusal-adjustment, 36, feldspathic-porcelain co-cr-alloy dentine, -, -, adjust-glass-ceramic",
        "occlusal-adjustment, 36, amalgam dentine, -, -, adjust-metal",
        "occlusal-adjustment, 36, composite dentine, -, -, adjust-composite",
        "finish-ceramic, 36, zirconia-3y dentine, -, -, finish-polish-zirconia",
        "finish-ceramic, 36, lithium-disilicate dentine, -, -, finish-polish-glass-ceramic",
        "post-exposure, 35, amalgam steel-post, -, -, post-removal-steel",
        "post-exposure, 22, composite-aged fibre-post, -, -, post-removal-fibre"
      })
  void theMostSpecificVariantStands(
      String procedure, int fdi, String layers, String intended, String lesion, String variant) {
    List<Material> stack = Arrays.stream(layers.split(" ")).map(Materials.packaged()::get).toList();
    Asked asked =
        new Asked(
            procedure,
            new Tooth(fdi),
            "",
            stack,
            Objects.requireNonNullElse(intended, ""),
            Objects.requireNonNullElse(lesion, ""),
            "vital");
    assertEquals(variant, TABLE.variant(asked).map(Variant::id).orElse("none"));
    assertFalse(TABLE.operations(asked).isEmpty());
  }

  @Test
  void aWordThatIsNotKnownIsNotTakenForSomethingElse() {
    List<Material> sound = List.of(Materials.packaged().get("enamel"));
    Asked asked =
        new Asked("crown-preparation", new Tooth(16), "", sound, "something", "", "vital");
    assertTrue(TABLE.variant(asked).isEmpty());
  }

  @Test
  void everyNameOfAFormulaIsKnown() {
    Set<String> known = new HashSet<>(OF_THE_CASE);
    UsualSizes.packaged().sizes().stream().map(Size::name).forEach(known::add);
    List<String> unknown = new ArrayList<>();
    for (Operation operation : all()) {
      formulas(operation)
          .flatMap(formula -> formula.names().stream())
          .filter(name -> !known.contains(name))
          .filter(name -> !operation.geometry().terms().containsKey(name))
          .filter(name -> !name.matches("(t|top|bottom|least)\\([#a-z0-9|-]+\\)"))
          .forEach(name -> unknown.add(operation.variant() + "." + operation.id() + ": " + name));
    }
    assertEquals(List.of(), unknown);
  }

  private static Stream<Formula> formulas(Operation operation) {
    Stream<Formula> when =
        operation.when().isEmpty() || operation.when().equals(Operation.HAND)
            ? Stream.of()
            : Stream.of(Formula.of(operation.when()));
    Window window = operation.window();
    return Stream.of(
            operation.geometry().terms().values().stream(),
            operation.says().stream(),
            when,
            Stream.of(window.headLeast(), window.headMost(), window.reach(), operation.spare())
                .filter(Objects::nonNull))
        .flatMap(formulas -> formulas);
  }

  @Test
  void everyWordForALayerIsAMaterialOrATraitOfOne() {
    List<String> unknown = new ArrayList<>();
    for (Operation operation : all()) {
      Stream.of(operation.fromLayer(), operation.toLayer())
          .flatMap(words -> Arrays.stream(words.split("\\|")))
          .filter(word -> !word.matches("|any|chamber|canal"))
          .filter(word -> Materials.packaged().all().stream().noneMatch(m -> m.is(word)))
          .forEach(word -> unknown.add(operation.id() + ": " + word));
    }
    assertEquals(List.of(), unknown);
  }

  /** R7: 6 to 8 blades are cavity burs, never finishers; a coarser grit than fine neither. */
  @Test
  void finishingIsFineOrHasManyBlades() {
    List<String> wrong = new ArrayList<>();
    for (Operation operation : all()) {
      Window window = operation.window();
      boolean bladed = window.kinds().stream().anyMatch(kind -> kind.bladed());
      boolean diamond = window.kinds().stream().anyMatch(kind -> kind.isDiamond());
      boolean coarse = window.grits().stream().anyMatch(grit -> grit.compareTo(GritClass.FINE) < 0);
      if (operation.task() == Task.FINISH
          && ((bladed && window.leastBlades() < 12)
              || (diamond && (coarse || window.grits().isEmpty())))) {
        wrong.add(operation.variant() + "." + operation.id());
      }
    }
    assertEquals(List.of(), wrong);
  }

  /** R2: what goes near the pulp is neither faster nor pressed harder than the cut before it. */
  @Test
  void approachingIsNeverFasterThanWhatCameBefore() {
    List<String> wrong = new ArrayList<>();
    for (String variant : TABLE.variants()) {
      double rpm = Double.POSITIVE_INFINITY;
      double load = Double.POSITIVE_INFINITY;
      for (Operation operation : TABLE.operations(variant)) {
        Operating run = operation.operating();
        boolean near = operation.task() == Task.APPROACH || operation.task() == Task.ENTER;
        if (near && operation.cuts() && (run.mostRpm() > rpm || run.mostN() > load)) {
          wrong.add(variant + "." + operation.id());
        }
        if (operation.cuts() && ROUGH.contains(operation.task())) {
          rpm = run.mostRpm();
          load = run.mostN();
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  /** R10 and section 5: a tip that cuts makes ledges and cuts the floor. */
  @Test
  void theRoofGoesWithASafeEndOrARoundHead() {
    List<Operation> roofs = all().stream().filter(o -> o.task() == Task.DEROOF).toList();
    assertFalse(roofs.isEmpty());
    assertTrue(roofs.stream().allMatch(o -> o.window().safeEnd()));
  }

  /** Section 4: a chamber that is opened is not spared; a tooth that lives is. */
  @Test
  void anAccessIsNotJudgedAtThePulpWall() {
    assertTrue(
        all().stream()
            .filter(o -> o.variant().startsWith("access-") && o.cuts())
            .allMatch(o -> o.heat() == HeatTarget.ROOT_SURFACE));
    assertTrue(
        all().stream()
            .filter(o -> o.variant().startsWith("crown-") && o.cuts())
            .allMatch(o -> o.heat() == HeatTarget.PULP_WALL));
  }

  @Test
  void everyWindowCanBeMet() {
    List<String> wrong = new ArrayList<>();
    for (Operation operation : all()) {
      Operating run = operation.operating();
      if (operation.cuts()
          && (run.speeds().isEmpty()
              || run.leastRpm() <= 0
              || run.leastRpm() > run.mostRpm()
              || run.leastN() > run.mostN()
              || run.mostN() <= 0
              || operation.window().leastBlades() > operation.window().mostBlades())) {
        wrong.add(operation.variant() + "." + operation.id());
      }
    }
    assertEquals(List.of(), wrong);
  }
}
