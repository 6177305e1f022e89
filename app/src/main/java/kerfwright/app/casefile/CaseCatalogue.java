package kerfwright.app.casefile;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.tooth.Tooth;

/** What a case file may name: materials, handpieces, teeth and the usual layers. */
public interface CaseCatalogue {
  List<Material> materials();

  List<Handpiece> handpieces();

  List<Restoration> restorations();

  /** Ids of the procedures a case may ask for. */
  List<String> procedures();

  /** Ids of the restorations a procedure may prepare for, over all procedures. */
  List<String> intended();

  /** The tooth written in one notation: fdi, universal or palmer. */
  Optional<Tooth> tooth(String notation, String text);

  /** A restoration the catalogue knows the usual layers of. */
  record Restoration(String id, String label) {}
}
