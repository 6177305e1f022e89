package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What goes into the log of a fault. */
class TraceTest {
  @Test
  void namesKindsAndPlacesButNoValues() {
    Throwable fault =
        new IllegalStateException(
            "case K-0398", new IllegalArgumentException("tooth 16 of K-0398"));
    String text = Trace.of(fault);
    assertTrue(text.contains("java.lang.IllegalStateException"), text);
    assertTrue(text.contains("java.lang.IllegalArgumentException"), text);
    assertTrue(text.contains("TraceTest.namesKindsAndPlacesButNoValues"), text);
    assertFalse(text.contains("K-0398"), text);
  }
}
