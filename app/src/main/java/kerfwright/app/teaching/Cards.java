package kerfwright.app.teaching;

import java.util.List;
import kerfwright.app.drawing.instrument.InstrumentDrawing;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.planner.bench.Bench;

/** The ways to teach of this feature, each with a picture that it computes. */
final class Cards {
  private Cards() {}

  static List<Card> all() {
    return List.of(
        card("show", "show", say -> TopicPictures.of(say, Topic.PRESSED)),
        card("compare", "compare", say -> TopicPictures.of(say, Topic.FLUTES)),
        card("claims", "claims", say -> TopicPictures.of(say, Topic.THRESHOLD)),
        card("number", "number", Cards::instrument),
        new Card(
            "/learn",
            "learner.title",
            "learner.lead",
            say -> TopicPictures.of(say, Topic.PLOUGHED)),
        card("handouts", "handouts", say -> TopicPictures.of(say, Topic.CHIP)));
  }

  private static Card card(
      String path, String name, java.util.function.Function<Say, String> picture) {
    return new Card("/teach/" + path, "teaching." + name, "teaching." + name + "-about", picture);
  }

  private static String instrument(Say say) {
    Bench usual = Scene.of(Topic.GRITS, name -> "").bench();
    return InstrumentDrawing.full(
        say, "card-number", usual.tool(InstrumentKind.DIAMOND, GritClass.COARSE, null));
  }
}
