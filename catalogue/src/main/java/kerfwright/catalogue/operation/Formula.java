package kerfwright.catalogue.operation;

/** A formula of a data row: sums, products, powers and names whose values the case gives. */
public interface Formula {
  /** As written in the data file. */
  String text();

  /**
   * Reads a formula as {@link Expression} writes it.
   *
   * @throws IllegalArgumentException says where it cannot be read and what was expected
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
