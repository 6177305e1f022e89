package kerfwright.practice.teaching;

import java.util.List;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;
import org.jspecify.annotations.Nullable;

/**
 * A question with four answers, one of them right.
 *
 * @param kind id of the kind it was made by, {@code own} for the teacher's
 * @param topic what it is about
 * @param asked the question
 * @param picture what is drawn with it, or null
 * @param options the answers
 * @param right place of the right one, 0 first
 * @param why the explanation
 * @param basis how sure the answer is
 * @param sources where it comes from; empty where the models computed it
 */
public record Question(
    String kind,
    Topic topic,
    Message asked,
    @Nullable Picture picture,
    List<Message> options,
    int right,
    Message why,
    Basis basis,
    List<SourceKey> sources) {
  /** Answers of every question. */
  public static final int OPTIONS = 4;

  public Question {
    options = List.copyOf(options);
    sources = List.copyOf(sources);
    if (options.size() != OPTIONS || right < 0 || right >= OPTIONS) {
      throw new IllegalArgumentException("Four answers, one right; got " + options.size());
    }
  }

  /** What is drawn with a question. */
  public sealed interface Picture {
    /** An instrument seen from the side. */
    record OfInstrument(InstrumentProperties instrument) implements Picture {}

    /** A ring by its colour. */
    record OfRing(String colour) implements Picture {}
  }

  /** What makes it the same as another: what is asked, what is drawn, and what is right. */
  List<Object> same() {
    return List.of(asked, picture == null ? "" : picture, options.get(right));
  }
}
