package kerfwright.app.casefile;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.stack.UsualStack;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.planner.casework.Procedure;
import org.jspecify.annotations.Nullable;

/** What a case file may name: materials, handpieces, teeth and the usual layers. */
public interface CaseCatalogue {
  List<Material> materials();

  List<Handpiece> handpieces();

  List<Restoration> restorations();

  /** The tooth written in one notation: fdi, universal or palmer. */
  Optional<Tooth> tooth(String notation, String text);

  /** The usual stack; empty where the restoration has none for this procedure. */
  Optional<UsualStack> usualStack(Tooth tooth, Procedure procedure, @Nullable String restoration);

  /** A restoration the catalogue knows the usual layers of. */
  record Restoration(String id, String label) {}
}
