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

/** What a case file may name: materials, handpieces, teeth and the usual layers. */
public final class CaseCatalogue {
  public List<Material> materials() {
    Materials all = Materials.packaged();
    return all.all().stream().filter(material -> all.isCaseMaterial(material.id())).toList();
  }

  public List<Handpiece> handpieces() {
    return Handpieces.all();
  }

  /** Ids of the restorations the catalogue knows the usual layers of. */
  public List<String> restorations() {
    return List.copyOf(UsualStacks.packaged().restorations().keySet());
  }

  /** The tooth written in one notation: fdi, universal or palmer. */
  public Optional<Tooth> tooth(String notation, String text) {
    ToothSystem system = Identified.of(ToothSystem.class, notation).orElseThrow();
    try {
      return Optional.of(ToothNotation.parse(text, system));
    } catch (IllegalArgumentException none) {
      return Optional.empty();
    }
  }

  /** Ids of the procedures a case may ask for. */
  public List<String> procedures() {
    return Procedure.ids();
  }

  /** Ids of the restorations a procedure may prepare for, over all procedures. */
  public List<String> intended() {
    UsualStacks stacks = UsualStacks.packaged();
    return procedures().stream()
        .flatMap(id -> stacks.procedure(id).intended().stream())
        .distinct()
        .toList();
  }
}
