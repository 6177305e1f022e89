package kerfwright.app.stocklist;

import kerfwright.app.words.Say;
import kerfwright.quantity.Message;

/**
 * What stands against a row.
 *
 * @param field the field it is about, as in {@link ColumnMapping#FIELDS}
 * @param what what is wrong, and what was expected
 */
public record RowProblem(String field, Message what) {
  static RowProblem of(String field, String key, Object... values) {
    return new RowProblem(field, Message.of(key, values));
  }

  /** With the name of the field before it. */
  public String in(Say say) {
    String name = say.at("drawer.field-" + field.replace('_', '-'));
    return say.at("listed.problem", name, say.of(what));
  }
}
