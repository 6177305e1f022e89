package kerfwright.app.teaching;

import java.util.List;
import java.util.function.Function;
import kerfwright.app.drawing.instrument.InstrumentDrawing;
import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.GritClass;
import kerfwright.catalogue.instrument.InstrumentKind;

/**
 * One way to teach, on the page of all of them.
 *
 * @param path where it leads
 * @param title key of its title
 * @param about key of what it is for, one sentence
 * @param picture computes what is drawn beside it
 */
public record Card(String path, String title, String about, Function<Say, String> picture) {
  static List<Card> all() {
    return List.of(
        of("show", Topic.PRESSED::picture),
        of("compare", Topic.FLUTES::picture),
        of("claims", Topic.THRESHOLD::picture),
        of("number", Card::instrument),
        new Card("/learn", "learner.title", "learner.lead", Topic.PLOUGHED::picture),
        of("handouts", Topic.CHIP::picture));
  }

  private static Card of(String name, Function<Say, String> picture) {
    return new Card("/teach/" + name, "teaching." + name, "teaching." + name + "-about", picture);
  }

  private static String instrument(Say say) {
    var usual = Scene.of(Topic.GRITS, name -> "").bench();
    return InstrumentDrawing.full(
        say, "card-number", usual.tool(InstrumentKind.DIAMOND, GritClass.COARSE, null));
  }
}
