package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(value = 2, unit = TimeUnit.MINUTES)
class ComputedOnceTest {
  @Test
  void theSameIsComputedOnceHoweverManyAsk() throws Exception {
    ComputedOnce<String> once = new ComputedOnce<>(2);
    AtomicInteger computed = new AtomicInteger();
    CountDownLatch go = new CountDownLatch(1);
    ExecutorService askers = Executors.newFixedThreadPool(20);
    List<Future<Integer>> answers = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      answers.add(
          askers.submit(
              () ->
                  once.get(
                      "same",
                      () -> {
                        await(go);
                        return computed.incrementAndGet();
                      })));
    }
    // all of them have asked before it is done
    Thread.sleep(300);
    go.countDown();
    for (Future<Integer> one : answers) {
      assertEquals(1, one.get());
    }
    askers.shutdown();
    assertEquals(2, once.get("same", computed::incrementAndGet), "asked anew, computed anew");
  }

  @Test
  void noMoreAreComputedAtOnceThanThereAreWorkers() throws Exception {
    ComputedOnce<Integer> once = new ComputedOnce<>(2);
    AtomicInteger now = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    ExecutorService askers = Executors.newFixedThreadPool(16);
    List<Future<Integer>> answers = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      int key = i;
      answers.add(
          askers.submit(
              () ->
                  once.get(
                      key,
                      () -> {
                        most.accumulateAndGet(now.incrementAndGet(), Math::max);
                        sleep();
                        now.decrementAndGet();
                        return key;
                      })));
    }
    for (int i = 0; i < 16; i++) {
      assertEquals(i, answers.get(i).get());
    }
    askers.shutdown();
    assertTrue(most.get() <= 2, "at once: " + most.get());
  }

  @Test
  void aFailureIsThatOfWhoeverAskedAndIsNotKept() {
    ComputedOnce<String> once = new ComputedOnce<>(1);
    assertThrows(
        UnsupportedOperationException.class,
        () ->
            once.get(
                "a",
                () -> {
                  throw new UnsupportedOperationException();
                }));
    assertEquals(7, once.get("a", () -> 7));
  }

  @Test
  void whatSomebodyStillWaitsForGoesOnAndWhatNobodyWaitsForIsStopped() throws Exception {
    ComputedOnce<String> once = new ComputedOnce<>(1);
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    AtomicBoolean firstGone = new AtomicBoolean();
    AtomicBoolean secondGone = new AtomicBoolean();
    AtomicBoolean stopped = new AtomicBoolean();
    AtomicInteger queued = new AtomicInteger();
    Supplier<Integer> work =
        () -> {
          begun.countDown();
          try {
            go.await();
            return 1;
          } catch (InterruptedException interrupted) {
            stopped.set(true);
            return 0;
          }
        };
    ExecutorService askers = Executors.newFixedThreadPool(3);
    Future<Integer> first = askers.submit(() -> once.get("a", work, firstGone::get));
    Future<Integer> second = askers.submit(() -> once.get("a", work, secondGone::get));
    begun.await();
    Future<Integer> third =
        askers.submit(() -> once.get("b", queued::incrementAndGet, firstGone::get));
    firstGone.set(true);
    assertInstanceOf(
        CancellationException.class, assertThrows(ExecutionException.class, first::get).getCause());
    assertInstanceOf(
        CancellationException.class, assertThrows(ExecutionException.class, third::get).getCause());
    assertFalse(stopped.get(), "the second still waits");
    assertFalse(second.isDone());
    secondGone.set(true);
    assertInstanceOf(
        CancellationException.class,
        assertThrows(ExecutionException.class, second::get).getCause());
    // the one worker is free again, and what was queued was dropped
    assertEquals(5, once.get("c", () -> 5));
    assertTrue(stopped.get());
    assertEquals(0, queued.get());
    assertEquals(6, once.get("a", () -> 6), "asked anew, computed anew");
    askers.shutdown();
  }

  private static void await(CountDownLatch go) {
    try {
      go.await();
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  private static void sleep() {
    try {
      Thread.sleep(20);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }
}
