package kerfwright.catalogue.operation;

import java.util.List;
import java.util.Optional;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.tooth.Tooth;

/**
 * What decides which list of operations a case gets. Texts that are not given stay empty.
 *
 * @param procedure id of the procedure the case asks for
 * @param tooth the tooth
 * @param restoration id of what stands on it
 * @param layers materials of the stack, outermost first
 * @param intended what is to be made: a restoration's id, or a word such as ceramic
 * @param lesion how deep the decay goes (shallow, moderate, deep), or opened where the chamber is
 *     open already
 * @param pulp state of the pulp
 */
public record Asked(
    String procedure,
    Tooth tooth,
    String restoration,
    List<Material> layers,
    String intended,
    String lesion,
    String pulp) {
  public Asked {
    layers = List.copyOf(layers);
  }

  /** The intended material, where the word for it is the id of one. */
  Optional<Material> intendedMaterial() {
    return Materials.packaged().find(intended);
  }
}
