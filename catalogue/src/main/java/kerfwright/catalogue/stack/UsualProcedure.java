package kerfwright.catalogue.stack;

import java.util.List;
import kerfwright.catalogue.material.Material;

/**
 * What a case of one procedure usually is, and what it must be to make sense.
 *
 * @param id the procedure
 * @param backTooth place the stack is told from on premolars and molars
 * @param frontTooth the same on incisors and canines
 * @param teeth classes of teeth it is done on; empty where any will do
 * @param restoration what usually stands on the tooth, an id of {@link UsualStacks#restorations()}
 * @param intended restorations it prepares for, the usual one first; empty where it does not matter
 * @param lesion true where the decay decides how it is done
 * @param holds materials, by id or {@code #trait}, one of which must be among the layers; empty
 *     where none must
 * @param outer materials one of which must be outermost; empty where any may
 * @param pulp the only state of the pulp it goes with besides unknown; empty where any will do
 */
public record UsualProcedure(
    String id,
    String backTooth,
    String frontTooth,
    List<String> teeth,
    String restoration,
    List<String> intended,
    boolean lesion,
    List<String> holds,
    List<String> outer,
    String pulp) {
  /** One that nobody has described: done on any tooth, on what is there. */
  static UsualProcedure plain(String id) {
    return new UsualProcedure(
        id,
        "occlusal",
        "facial",
        List.of(),
        UsualStacks.NATURAL,
        List.of(),
        false,
        List.of(),
        List.of(),
        "");
  }

  /** Whether layers of these materials, outermost first, can be what it is done on. */
  public boolean fits(List<Material> layers) {
    return (holds.isEmpty() || layers.stream().anyMatch(m -> holds.stream().anyMatch(m::is)))
        && (outer.isEmpty() || outer.stream().anyMatch(layers.get(0)::is));
  }
}
