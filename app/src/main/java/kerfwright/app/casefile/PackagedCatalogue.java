package kerfwright.app.casefile;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.stack.UsualStacks;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.catalogue.tooth.ToothSystem;
import kerfwright.planner.casework.Procedure;
import kerfwright.quantity.Identified;

/** What a case file may name, from the data packaged with the catalogue. */
public final class PackagedCatalogue implements CaseCatalogue {
  @Override
  public List<Material> materials() {
    Materials all = Materials.packaged();
    return all.all().stream().filter(material -> all.isCaseMaterial(material.id())).toList();
  }

  @Override
  public List<Handpiece> handpieces() {
    return Handpieces.all();
  }

  @Override
  public List<Restoration> restorations() {
    return UsualStacks.packaged().restorations().entrySet().stream()
        .map(entry -> new Restoration(entry.getKey(), entry.getValue()))
        .toList();
  }

  @Override
  public Optional<Tooth> tooth(String notation, String text) {
    ToothSystem system = Identified.of(ToothSystem.class, notation).orElseThrow();
    try {
      return Optional.of(ToothNotation.parse(text, system));
    } catch (IllegalArgumentException none) {
      return Optional.empty();
    }
  }

  @Override
  public List<String> procedures() {
    return Procedure.ids();
  }

  @Override
  public List<String> intended() {
    UsualStacks stacks = UsualStacks.packaged();
    return procedures().stream()
        .flatMap(id -> stacks.procedure(id).intended().stream())
        .distinct()
        .toList();
  }
}
