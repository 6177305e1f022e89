package kerfwright.planner.choice;

import kerfwright.quantity.Message;

/**
 * Why an instrument is not allowed.
 *
 * @param code stable code
 * @param message one plain sentence without its subject, which is the instrument
 */
public record Exclusion(String code, Message message) {
  /** An exclusion whose text is called as its code is. */
  public static Exclusion of(String code, Object... values) {
    return new Exclusion(code, Message.of("exclusion." + code, values));
  }
}
