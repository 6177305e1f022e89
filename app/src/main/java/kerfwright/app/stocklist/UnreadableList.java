package kerfwright.app.stocklist;

import kerfwright.app.words.Say;
import kerfwright.quantity.Message;

/** A file that is no list of instruments; says what it is instead. */
public final class UnreadableList extends Exception {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final int line;
  private final transient Message problem;

  /**
   * @param file name of the file
   * @param line where in it, 0 for the whole
   * @param key key of what is wrong
   */
  UnreadableList(String file, int line, String key, Object... values) {
    super(key);
    this.file = file;
    this.line = line;
    this.problem = Message.of(key, values);
  }

  /** In one line: file, line, what is wrong. */
  public String in(Say say) {
    return say.of(placed());
  }

  /** The same, to be told within something else. */
  public Message placed() {
    return line > 0
        ? Message.of("listed.line", file, Integer.toString(line), problem)
        : Message.of("listed.problem", file, problem);
  }
}
