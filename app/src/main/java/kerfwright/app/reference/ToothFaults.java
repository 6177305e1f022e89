package kerfwright.app.reference;

import java.util.List;
import kerfwright.catalogue.tooth.ToothReading;
import kerfwright.quantity.Message;

/** What is wrong with a tooth as typed. */
public final class ToothFaults {
  private ToothFaults() {}

  public static Message unknown(String typed) {
    return Message.of("reference.tooth-unknown", typed);
  }

  /** More than one tooth, each told in FDI. */
  static Message ambiguous(ToothReading reading) {
    List<Message> meanings =
        reading.meanings().stream()
            .map(
                one ->
                    Message.of(
                        "reference.tooth-in",
                        Integer.toString(one.tooth().fdi()),
                        Message.of("label.teeth-" + one.system().id())))
            .toList();
    return Message.of("reference.tooth-ambiguous", reading.text(), meanings);
  }
}
