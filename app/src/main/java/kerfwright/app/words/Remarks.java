package kerfwright.app.words;

import java.util.List;
import kerfwright.catalogue.Remark;
import kerfwright.catalogue.number.FieldFault;
import kerfwright.quantity.Message;

/** What the catalogue says, in the language of whoever reads it. */
public final class Remarks {
  private Remarks() {}

  /** Why a field names no instrument, without the name of the field. */
  public static Message of(FieldFault fault) {
    return nearest(found(fault), fault.nearest());
  }

  /** The same without the nearest valid entries. */
  public static Message found(FieldFault fault) {
    Message expected = fault.expected().message();
    return fault.found().isEmpty()
        ? Message.of("listed.blank", expected)
        : Message.of("listed.found", fault.found(), expected);
  }

  /** With the nearest valid entries, where there are any. */
  public static Message nearest(Message what, List<String> nearest) {
    return nearest.isEmpty()
        ? what
        : Message.of("listed.nearest", what, String.join(", ", nearest));
  }

  public static List<String> in(Say say, List<Remark> remarks) {
    return remarks.stream().map(one -> say.of(one.message())).toList();
  }
}
