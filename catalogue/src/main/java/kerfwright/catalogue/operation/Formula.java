package kerfwright.catalogue.operation;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.function.ToDoubleFunction;
import kerfwright.quantity.Message;

/**
 * A formula of a data row, read once; the case gives the values of its names.
 *
 * <p>Numbers, names, brackets, {@code + - * / ^}, {@code <} and {@code >} (1 where true, else 0),
 * {@code min(a, b)}, {@code max(a, b)}, {@code sqrt(a)}. A name may carry an argument that is not
 * computed: {@code t(#alloy)}, {@code bottom(enamel|dentine)}; the whole of it is the name.
 */
public final class Formula {
  /** A text that is no formula. */
  public static final class Unreadable extends IllegalArgumentException {
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

  private final String text;
  private final Set<String> names = new LinkedHashSet<>();
  private final Node root;
  private int at;

  private Formula(String text) {
    this.text = text;
    this.root = comparison();
    if (at < text.length()) {
      throw fault(Message.of("fault.formula-operator"));
    }
  }

  /**
   * Reads a formula.
   *
   * @throws Unreadable says where it cannot be read and what was expected
   */
  public static Formula of(String text) {
    return new Formula(text.strip());
  }

  /** The names it asks for, an argument with them. */
  public Set<String> names() {
    return Set.copyOf(names);
  }

  /**
   * Its value.
   *
   * @param values value of every name, in mm, mm2 or a plain number; asked for by name
   * @throws IllegalArgumentException where a name is not known
   */
  public double value(ToDoubleFunction<String> values) {
    return root.value(values);
  }

  private interface Node {
    double value(ToDoubleFunction<String> values);
  }

  private Node comparison() {
    Node left = sum();
    if (takes('<')) {
      return both(left, sum(), (a, b) -> a < b ? 1 : 0);
    }
    return takes('>') ? both(left, sum(), (a, b) -> a > b ? 1 : 0) : left;
  }

  private Node sum() {
    Node left = product();
    while (true) {
      if (takes('+')) {
        left = both(left, product(), Double::sum);
      } else if (takes('-')) {
        left = both(left, product(), (a, b) -> a - b);
      } else {
        return left;
      }
    }
  }

  private Node product() {
    Node left = power();
    while (true) {
      if (takes('*')) {
        left = both(left, power(), (a, b) -> a * b);
      } else if (takes('/')) {
        left = both(left, power(), (a, b) -> a / b);
      } else {
        return left;
      }
    }
  }

  private Node power() {
    if (takes('-')) {
      Node right = power();
      return values -> -right.value(values);
    }
    Node base = atom();
    return takes('^') ? both(base, power(), Math::pow) : base;
  }

  private Node atom() {
    if (takes('(')) {
      Node inside = comparison();
      expect(')');
      return inside;
    }
    int start = at;
    while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
      at++;
    }
    if (at > start) {
      String digits = text.substring(start, at);
      if (!digits.matches("\\d+\\.?\\d*|\\.\\d+")) {
        at = start;
        throw fault(Message.of("fault.formula-operand"));
      }
      double number = Double.parseDouble(digits);
      return values -> number;
    }
    while (at < text.length()
        && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_')) {
      at++;
    }
    if (at == start) {
      throw fault(Message.of("fault.formula-operand"));
    }
    return named(text.substring(start, at));
  }

  private Node named(String word) {
    if (!takes('(')) {
      return name(word);
    }
    switch (word) {
      case "sqrt":
        Node root = comparison();
        expect(')');
        return values -> Math.sqrt(root.value(values));
      case "min":
      case "max":
        Node first = comparison();
        expect(',');
        Node second = comparison();
        expect(')');
        return both(first, second, word.equals("min") ? Math::min : Math::max);
      default:
        int end = text.indexOf(')', at);
        if (end < 0) {
          throw fault(Message.of("fault.found-text", ")"));
        }
        String whole = word + "(" + text.substring(at, end).strip() + ")";
        at = end + 1;
        return name(whole);
    }
  }

  private Node name(String name) {
    names.add(name);
    return values -> values.applyAsDouble(name);
  }

  private static Node both(Node a, Node b, DoubleBinaryOperator of) {
    return values -> of.applyAsDouble(a.value(values), b.value(values));
  }

  private boolean takes(char sign) {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
    if (at < text.length() && text.charAt(at) == sign) {
      at++;
      while (at < text.length() && text.charAt(at) == ' ') {
        at++;
      }
      return true;
    }
    return false;
  }

  private void expect(char sign) {
    if (!takes(sign)) {
      throw fault(Message.of("fault.found-text", String.valueOf(sign)));
    }
  }

  private Unreadable fault(Message expected) {
    return new Unreadable(Message.of("fault.formula", text, at, expected));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Formula one && one.text.equals(text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
