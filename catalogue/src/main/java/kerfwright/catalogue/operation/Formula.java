package kerfwright.catalogue.operation;

import kerfwright.quantity.Message;

/** A formula of a data row: sums, products, powers and names whose values the case gives. */
public interface Formula {
  /** A text that is no formula. */
  final class Unreadable extends IllegalArgumentException {
    private static final long serialVersionUID = 1;
    private final transient Message told;

    Unreadable(Message told) {
      super(told.toString());
      this.told = told;
    }

    /** Where it cannot be read and what was expected. */
    public Message told() {
      return told;
    }
  }

  /** As written in the data file. */
  String text();

  /**
   * Reads a formula as {@link Expression} writes it.
   *
   * @throws Unreadable says where it cannot be read and what was expected
   */
  static Formula of(String text) {
    return Expression.of(text);
  }

  /** The names it asks for, an argument with them: {@code t(#alloy)}. */
  java.util.Set<String> names();

  /**
   * Its value.
   *
   * @param names value of every name, in mm, mm2 or a plain number; asked for by name
   * @throws IllegalArgumentException where a name is not known
   */
  double value(java.util.function.ToDoubleFunction<String> names);
}
