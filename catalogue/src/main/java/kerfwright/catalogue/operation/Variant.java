package kerfwright.catalogue.operation;

import java.util.List;
import kerfwright.catalogue.material.Material;

/**
 * One way a procedure is done, and the cases it is for. An empty list asks nothing; a minus among
 * its words stands for "not given"; {@code #trait} stands for every material with that trait.
 *
 * @param id id of the variant; several rows may lead to one
 * @param procedure id of the procedure
 * @param teeth classes of teeth
 * @param restorations ids of restorations
 * @param outer materials of the outermost layer
 * @param holds materials one of which some layer is of
 * @param intended what is to be made
 * @param lesion depth of the decay, or opened
 * @param pulp states of the pulp
 */
public record Variant(
    String id,
    String procedure,
    List<String> teeth,
    List<String> restorations,
    List<String> outer,
    List<String> holds,
    List<String> intended,
    List<String> lesion,
    List<String> pulp) {
  /** Whether a case gets it. */
  boolean fits(Asked asked) {
    return procedure.equals(asked.procedure())
        && told(teeth, asked.tooth().toothClass().id())
        && told(restorations, asked.restoration())
        && (outer.isEmpty() || outer.stream().anyMatch(asked.layers().get(0)::is))
        && (holds.isEmpty() || asked.layers().stream().anyMatch(this::held))
        && (told(intended, asked.intended())
            || asked.intendedMaterial().map(m -> intended.stream().anyMatch(m::is)).orElse(false))
        && told(lesion, asked.lesion())
        && told(pulp, asked.pulp());
  }

  private boolean held(Material layer) {
    return holds.stream().anyMatch(layer::is);
  }

  private static boolean told(List<String> words, String word) {
    return words.isEmpty() || words.contains(word.isEmpty() ? "-" : word);
  }

  /** How many things it asks for: the more, the more specific. */
  int specificity() {
    return (int)
        List.of(teeth, restorations, outer, holds, intended, lesion, pulp).stream()
            .filter(words -> !words.isEmpty())
            .count();
  }
}
