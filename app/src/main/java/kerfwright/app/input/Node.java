package kerfwright.app.input;

import java.util.List;
import java.util.Map;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.quantity.Identified;
import kerfwright.quantity.Message;

/** A piece of what was handed in, with the line it stands on (0 in a form). */
public sealed interface Node permits Node.Scalar, Node.Listing, Node.Mapping {
  int line();

  /** What it is, to be named among what is wrong: 'abc', a list, ... */
  Message found();

  /** The same in English. */
  default String describe() {
    return Say.in(Language.ENGLISH).of(found());
  }

  /** A single value; its text is exactly what was written. */
  record Scalar(String text, Kind kind, int line) implements Node {
    /** How the value was written. */
    public enum Kind implements Identified {
      TEXT,
      NUMBER,
      BOOLEAN,
      EMPTY
    }

    @Override
    public Message found() {
      String shown = text.length() > 60 ? text.substring(0, 57) + "..." : text;
      return kind == Kind.EMPTY
          ? Message.of("fault.found-nothing")
          : Message.of("fault.found-text", shown);
    }
  }

  /** Several values in order. */
  record Listing(List<Node> items, int line) implements Node {
    public Listing {
      items = List.copyOf(items);
    }

    @Override
    public Message found() {
      return Message.of("fault.found-list");
    }
  }

  /** Named values in the order written. */
  record Mapping(Map<String, Entry> entries, int line) implements Node {
    @Override
    public Message found() {
      return Message.of("fault.found-fields");
    }
  }

  /** A named value and the line of its name. */
  record Entry(Node value, int line) {}
}
