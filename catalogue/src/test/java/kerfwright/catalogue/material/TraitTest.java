package kerfwright.catalogue.material;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TraitTest {
  @ParameterizedTest
  @EnumSource
  void whatTheProgramAsksForIsATraitOfSomeMaterial(Trait trait) {
    assertTrue(
        Materials.packaged().all().stream().anyMatch(material -> material.has(trait)), trait.id());
  }
}
