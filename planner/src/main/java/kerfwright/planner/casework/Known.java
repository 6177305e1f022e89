package kerfwright.planner.casework;

import java.util.Arrays;
import java.util.List;
import kerfwright.catalogue.stack.Readings;
import kerfwright.catalogue.stack.Readings.Reading;
import kerfwright.quantity.Identified;
import kerfwright.quantity.Length;
import kerfwright.quantity.Range;
import org.jspecify.annotations.Nullable;

/** How a thickness is known; it decides how far the true one may lie from it. */
public enum Known implements Identified {
  /** Read between two clear edges on a parallel radiograph. */
  FILM,
  /** Dentine left under proximal decay, read on a bitewing: the true one is thinner. */
  BITEWING,
  /** Measured on the piece, with a gauge. */
  MEASURED,
  /** The usual thickness as published. */
  USUAL,
  /** Given with a low and a high end of its own. */
  RANGE;

  /**
   * An error never takes more than half of a thickness away, nor doubles it: a film of cement is
   * thinner than the error of a radiograph (project setting).
   */
  private static final double MOST_OFF = 2;

  /** Ids a case may give; a range says by itself that it is one. */
  public static List<String> ids() {
    return Arrays.stream(values()).filter(one -> one != RANGE).map(Known::id).toList();
  }

  /**
   * The range a single figure stands for.
   *
   * @param told the figure
   * @param published the usual range of such a layer, or null where there is none
   */
  public Range<Length> around(Length told, @Nullable Range<Length> published) {
    return switch (this) {
      case FILM, MEASURED -> within(told, Readings.packaged().get(id()).typical());
      case BITEWING -> share(told, Readings.packaged().get(id()));
      case USUAL -> published == null ? FILM.around(told, null) : holding(told, published);
      case RANGE -> Range.exactly(told);
    };
  }

  /** The range a depth of the chamber stands for: a mean alone may be off by its deviation. */
  Range<Length> aroundDepth(Length told) {
    return this == USUAL
        ? within(told, Readings.packaged().get("mean").typical())
        : (this == BITEWING ? FILM : this).around(told, null);
  }

  private static Range<Length> within(Length told, double errorMm) {
    double mm = told.millimetres();
    return new Range<>(
        Length.ofMillimetres(Math.max(mm - errorMm, mm / MOST_OFF)),
        told,
        Length.ofMillimetres(Math.min(mm + errorMm, mm * MOST_OFF)));
  }

  private static Range<Length> share(Length told, Reading share) {
    return new Range<>(
        new Length(told.metres() * share.low()),
        new Length(told.metres() * share.typical()),
        new Length(told.metres() * share.high()));
  }

  private static Range<Length> holding(Length told, Range<Length> published) {
    return new Range<>(
        told.compareTo(published.low()) < 0 ? told : published.low(),
        told,
        told.compareTo(published.high()) > 0 ? told : published.high());
  }
}
