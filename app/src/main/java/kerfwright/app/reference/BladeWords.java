package kerfwright.app.reference;

import kerfwright.app.words.Say;
import kerfwright.catalogue.instrument.BladeCountClass;
import kerfwright.quantity.Message;

/** Classes of blade counts in words. */
public final class BladeWords {
  private BladeWords() {}

  public static String count(Say say, BladeCountClass one) {
    Integer low = one.low();
    if (low == null) {
      return say.at("reference.up-to", one.high());
    }
    return low == one.high() ? say.whole(low) : say.at("reference.range", low, one.high());
  }

  /** What burs with so many blades are usually for. */
  public static String role(Say say, BladeCountClass one) {
    return say.of(phrase(one));
  }

  static Message phrase(BladeCountClass one) {
    Integer low = one.low();
    return Message.of("reference.blades-" + (low == null ? "up-to" : low) + "-" + one.high());
  }
}
