package kerfwright.app.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Days that a form sends: what cannot be meant is none, and breaks nothing further on. */
class DayTest {
  @Test
  void aDayIsRead() {
    assertEquals(Optional.of(LocalDate.of(2026, 11, 30)), Day.of("2026-11-30"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "30.11.2026", "2026-02-30", "9999-12-31", "+999999999-12-31", "0001-01-01"})
  void whatIsNoneOrFarAwayIsNone(String typed) {
    assertEquals(Optional.empty(), Day.of(typed));
  }
}
