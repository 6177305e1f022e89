package kerfwright.app.teaching;

import java.util.List;
import java.util.stream.Collectors;
import kerfwright.app.plan.PlanSources;
import kerfwright.app.words.Say;
import kerfwright.quantity.Finding;
import kerfwright.quantity.SourceKey;

/**
 * What stands on a handout beside the practice's own words, on screen and on paper.
 *
 * @param title as it is called where the practice has no title of its own
 * @param pictures drawings with what they show
 * @param table rows of figures, heads first; may be empty
 * @param says sentences with computed figures
 * @param sources where they come from
 * @param cautions the standing cautions that apply
 */
public record Sheet(
    String title,
    List<Picture> pictures,
    List<List<String>> table,
    List<String> says,
    List<SourceKey> sources,
    List<Finding> cautions) {
  private static final int MOST_IN_FULL = 8;

  public Sheet {
    pictures = List.copyOf(pictures);
    table = List.copyOf(table);
    says = List.copyOf(says);
    sources = List.copyOf(sources);
    cautions = List.copyOf(cautions);
  }

  /** The sources as paper shows them: what each is where they are few, their keys where not. */
  public List<String> sourceLines(Say say) {
    return sources.size() > MOST_IN_FULL
        ? List.of(sources.stream().map(SourceKey::key).collect(Collectors.joining(", ")))
        : sources.stream().map(one -> PlanSources.citation(say, one)).toList();
  }

  /** A drawing and what it shows. */
  public record Picture(String svg, String caption) {}
}
