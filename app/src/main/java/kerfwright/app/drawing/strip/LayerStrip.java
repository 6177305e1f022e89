package kerfwright.app.drawing.strip;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import kerfwright.app.words.Say;
import kerfwright.planner.plan.CutPlan;

/**
 * A plan as a strip of pictures on one scale: the layers, then one stage for each instrument with
 * what is cut so far and the instrument at its depth. Page, card, kept case and chair show the same
 * one.
 *
 * @param key names and thicknesses of the layers
 * @param stages what each instrument does, in order
 * @param faces the tooth unfolded with what is done on each face; empty where the work is on one
 * @param width of all in one row, with the gaps
 */
public record LayerStrip(String key, List<Picture> stages, String faces, double width) {
  /** Where it is shown, and how much room there is. */
  public enum Place {
    PAGE(540, 300),
    CARD(500, 210),
    CARD_OF_FEW(500, 330),
    CHAIR(330, 420);

    private final double width;
    private final double height;

    Place(double width, double height) {
      this.width = width;
      this.height = height;
    }
  }

  /** One stage and its drawing. */
  public record Picture(Stage stage, String svg) {}

  static final double KEY = 122;
  private static final double NARROWEST = 64;
  private static final double NARROWEST_ON_PAPER = 44;
  private static final double WIDEST = 170;
  private static final double GAP = 4;

  public LayerStrip {
    stages = List.copyOf(stages);
  }

  /** Draws a plan; a refused one has its layers and no stage. */
  public static LayerStrip of(Say say, String id, CutPlan plan, Place place) {
    List<Stage> all = Stage.of(plan);
    // the chair shows one stage at a time
    int count = place == Place.CHAIR ? 1 : Math.max(1, all.size());
    double width =
        Math.max(
            place == Place.CARD || place == Place.CARD_OF_FEW ? NARROWEST_ON_PAPER : NARROWEST,
            Math.min(WIDEST, Math.floor((place.width - KEY) / count - GAP)));
    List<AtWork> works = all.stream().map(stage -> AtWork.of(plan, stage)).toList();
    StripScale scale = StripScale.of(plan, works, width, place.height);
    List<Picture> stages = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      String drawn = new StageDrawing(say, scale, works.get(i)).draw(id + "-" + (i + 1));
      stages.add(new Picture(all.get(i), drawn));
    }
    return new LayerStrip(
        new LayerKey(say, scale, KEY, true).draw(id + "-key"),
        stages,
        FacesDrawing.draw(say, id + "-faces", plan),
        KEY + stages.size() * (width + GAP));
  }

  /** The same with each drawing changed, as paper needs it. */
  public LayerStrip each(UnaryOperator<String> change) {
    return new LayerStrip(
        change.apply(key),
        stages.stream().map(one -> new Picture(one.stage(), change.apply(one.svg()))).toList(),
        change.apply(faces),
        width);
  }
}
