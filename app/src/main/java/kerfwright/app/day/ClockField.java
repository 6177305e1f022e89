package kerfwright.app.day;

import java.time.LocalTime;
import kerfwright.app.input.Fields;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * Reads clock times as minutes of the day that starts at {@code start}; earlier times are negative.
 *
 * @param start clock time of minute 0
 */
record ClockField(LocalTime start) {
  private static final Message EXPECTED = Message.of("day.file-time");

  @Nullable LocalTime clock(Fields fields, String name) {
    String text = fields.text(name, EXPECTED);
    if (text == null) {
      return null;
    }
    if (!text.matches("([01]?\\d|2[0-3]):[0-5]\\d")) {
      fields.fault(
          name, Message.of("fault.must-be", EXPECTED, Message.of("fault.found-text", text)));
      return null;
    }
    String[] parts = text.split(":");
    return LocalTime.of(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
  }

  @Nullable Integer minute(Fields fields, String name) {
    LocalTime time = clock(fields, name);
    return time == null ? null : (time.toSecondOfDay() - start.toSecondOfDay()) / 60;
  }
}
