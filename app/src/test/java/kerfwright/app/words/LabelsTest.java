package kerfwright.app.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.Arrays;
import java.util.stream.Stream;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.Grits;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.planner.casework.Outline;
import kerfwright.planner.casework.Procedure;
import kerfwright.planner.casework.PulpState;
import kerfwright.quantity.Basis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every id has its name in both languages; the English one is the catalogue's own. */
class LabelsTest {
  private static final Say ENGLISH = Say.in(Language.ENGLISH);
  private static final Say GERMAN = Say.in(Language.GERMAN);

  static Stream<Arguments> named() {
    return Stream.of(
            Materials.packaged().all().stream()
                .map(one -> arguments(Labels.material(ENGLISH, one), one.label())),
            UsualStacks.packaged().restorations().entrySet().stream()
                .map(one -> arguments(Labels.restoration(ENGLISH, one.getKey()), one.getValue())),
            Arrays.stream(InstrumentKind.values())
                .map(one -> arguments(Labels.kind(ENGLISH, one), one.label())),
            Shapes.all().stream().map(one -> arguments(Labels.shape(ENGLISH, one), one.name())),
            Arrays.stream(ShapeFamily.values())
                .map(one -> arguments(Labels.shape(ENGLISH, one), one.label())),
            Arrays.stream(GritClass.values())
                .map(one -> arguments(Labels.grit(ENGLISH, one), one.label())),
            Arrays.stream(GritClass.values())
                .map(one -> arguments(Labels.ring(ENGLISH, one), one.ring())),
            Arrays.stream(ShankType.values())
                .map(one -> arguments(Labels.shank(ENGLISH, one), one.label())),
            Handpieces.all().stream()
                .map(one -> arguments(Labels.handpiece(ENGLISH, one), one.label())),
            Arrays.stream(Basis.values())
                .map(one -> arguments(Labels.basis(ENGLISH, one), one.label())))
        .flatMap(all -> all);
  }

  @ParameterizedTest
  @MethodSource("named")
  void theEnglishNameIsTheCataloguesOwn(String label, String own) {
    assertEquals(own, label);
  }

  @Test
  void everyOtherIdHasItsNameInBothLanguages() {
    for (Say say : new Say[] {ENGLISH, GERMAN}) {
      Arrays.stream(PulpState.values()).map(one -> Labels.pulp(say, one)).forEach(this::isThere);
      Arrays.stream(Outline.Shape.values())
          .map(one -> Labels.outline(say, one))
          .forEach(this::isThere);
      Grits.all().stream()
          .flatMap(grit -> grit.rings().stream())
          .map(ring -> Labels.ring(say, ring))
          .forEach(this::isThere);
    }
  }

  @Test
  void withinASentenceEnglishBeginsSmallAndAbbreviationsAndGermanNounsDoNot() {
    assertEquals("zirconia 3Y", Labels.materialWithin(ENGLISH, "zirconia-3y"));
    assertEquals("PEEK", Labels.materialWithin(ENGLISH, "peek"));
    assertEquals("Zirkonoxid 3Y", Labels.materialWithin(GERMAN, "zirconia-3y"));
    assertEquals("access cavity", Labels.procedureWithin(ENGLISH, Procedure.ACCESS_CAVITY));
  }

  private void isThere(String label) {
    assertFalse(label.isBlank());
  }
}
