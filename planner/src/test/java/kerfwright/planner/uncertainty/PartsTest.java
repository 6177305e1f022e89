package kerfwright.planner.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.api.Test;

class PartsTest {
  @Test
  void eachPartIsDoneOnce() {
    AtomicIntegerArray done = new AtomicIntegerArray(1000);
    Parts parts = Parts.begin(1000, () -> done::incrementAndGet);
    parts.finish();
    for (int i = 0; i < 1000; i++) {
      assertEquals(1, done.get(i), "part " + i);
    }
  }

  @Test
  void aWorkerIsNeverSharedByTwo() {
    AtomicInteger clashes = new AtomicInteger();
    Parts.begin(
            200,
            () -> {
              AtomicInteger inside = new AtomicInteger();
              return part -> {
                if (inside.incrementAndGet() > 1) {
                  clashes.incrementAndGet();
                }
                Thread.yield();
                inside.decrementAndGet();
              };
            })
        .finish();
    assertEquals(0, clashes.get());
  }

  @Test
  void whatIsLeftIsNotBegun() {
    AtomicInteger done = new AtomicInteger();
    Parts parts =
        Parts.begin(
            100_000,
            () ->
                part -> {
                  done.incrementAndGet();
                  Thread.yield();
                });
    parts.leave();
    parts.finish();
    assertTrue(done.get() < 100_000, done + " parts done");
  }

  @Test
  void aFaultReachesWhoWaits() {
    Parts parts =
        Parts.begin(
            20,
            () ->
                part -> {
                  throw new IllegalArgumentException("part");
                });
    assertThrows(IllegalArgumentException.class, parts::finish);
  }
}
