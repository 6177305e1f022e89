package kerfwright.app.learner;

import java.util.List;
import java.util.stream.Stream;
import kerfwright.app.drawing.instrument.InstrumentDrawing;
import kerfwright.app.drawing.instrument.RingSwatch;
import kerfwright.app.words.Labels;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.practice.teaching.Question;
import kerfwright.practice.teaching.Question.Picture;
import kerfwright.practice.teaching.QuestionSet;
import kerfwright.quantity.Message;

/** Questions in words and drawings. */
public final class QuestionWords {
  private QuestionWords() {}

  /** The questions of a set whose answers differ in words too, in every language. */
  public static List<Question> of(QuestionSet set) {
    return set.questions(QuestionWords::clear);
  }

  private static boolean clear(Question question) {
    return Stream.of(Language.values())
        .map(Say::in)
        .allMatch(
            say -> question.options().stream().map(say::of).distinct().count() == Question.OPTIONS);
  }

  /** An answer, with a capital as a list begins. */
  public static String option(Say say, Question question, int option) {
    Message message = question.options().get(option);
    String text = say.of(message);
    return message.key().equals("learner.plain") ? text : Labels.first(text);
  }

  /** What an answer is called on the screen. */
  public static String letter(int option) {
    return String.valueOf((char) ('A' + option));
  }

  /** What is drawn, empty where nothing is. Its own title would tell the answer. */
  public static String drawing(Say say, Question question, String id) {
    Picture picture = question.picture();
    if (picture instanceof Picture.OfInstrument one) {
      return InstrumentDrawing.small(say, id, one.instrument())
          .replaceAll("(<title[^>]*>)[^<]*(</title>)", "$1" + say.at("learner.drawn") + "$2")
          .replaceAll("(<desc[^>]*>)[^<]*(</desc>)", "$1$2");
    }
    return picture instanceof Picture.OfRing ring ? RingSwatch.draw(say, id, ring.colour()) : "";
  }
}
