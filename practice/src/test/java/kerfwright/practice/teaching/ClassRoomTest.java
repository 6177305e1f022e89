package kerfwright.practice.teaching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import kerfwright.practice.teaching.ClassRoom.Stage;
import kerfwright.practice.teaching.ClassRoom.Taken;
import org.junit.jupiter.api.Test;

class ClassRoomTest {
  private static final int PHONES = 40;

  private static ClassRoom room() {
    QuestionSet set =
        new QuestionSet(
            new UUID(1, 2), Instant.EPOCH, 7, Level.EASY, List.of(Topic.LAYERS), 2, List.of());
    return new ClassRoom("ABCD", set, set.questions());
  }

  private static void on(ClassRoom room) {
    room.on(room.look().step());
  }

  @Test
  void fortyAnswersAtOnceAreAllCounted() throws Exception {
    ClassRoom room = room();
    on(room);
    ExecutorService phones = Executors.newFixedThreadPool(PHONES);
    List<Callable<Taken>> all = new ArrayList<>();
    for (int i = 0; i < PHONES; i++) {
      String key = "key" + i;
      assertTrue(room.join(key, "phone" + i));
      int option = i % 4;
      all.add(() -> room.answer(key, 1, option));
    }
    for (Future<Taken> taken : phones.invokeAll(all)) {
      assertEquals(Taken.YES, taken.get());
    }
    phones.shutdown();
    assertEquals(List.of(10, 10, 10, 10), room.look().spread());
    assertEquals(PHONES, room.given(Instant.EPOCH).size());
  }

  @Test
  void theFirstAnswerCountsAndOnlyWhileItIsAsked() {
    ClassRoom room = room();
    assertTrue(room.join("k", "blue"));
    assertEquals(Taken.TOO_LATE, room.answer("k", 1, 0), "nothing is asked yet");
    on(room);
    assertEquals(Taken.STRANGER, room.answer("other", 1, 0));
    assertEquals(Taken.STRANGER, room.answer("k", 1, 4));
    assertEquals(Taken.YES, room.answer("k", 1, 2));
    assertEquals(Taken.BEFORE, room.answer("k", 1, 3));
    assertEquals(List.of(0, 0, 1, 0), room.look().spread());
    on(room);
    assertEquals(Stage.SHOWING, room.look().stage());
    assertEquals(Taken.TOO_LATE, room.answer("k", 1, 1));
    on(room);
    assertEquals(2, room.look().number());
    assertEquals(0, room.look().answered());
  }

  @Test
  void oneTapIsOneStepAndTheEndIsTheEnd() {
    ClassRoom room = room();
    int seen = room.look().step();
    room.on(seen);
    room.on(seen);
    assertEquals(Stage.ASKING, room.look().stage(), "a second tap on the same screen does nothing");
    on(room);
    on(room);
    on(room);
    on(room);
    assertEquals(Stage.ENDED, room.look().stage());
    int end = room.look().step();
    on(room);
    assertEquals(end, room.look().step());
    assertFalse(room.join("late", "late"));
  }

  @Test
  void anAliasIsTakenOnce() {
    ClassRoom room = room();
    assertTrue(room.join("a", "Blue"));
    assertFalse(room.join("b", "blue"), "letters large or small");
    assertEquals("Blue", room.alias("a").orElseThrow());
    assertTrue(room.alias("b").isEmpty());
    assertTrue(room.alias(null).isEmpty());
  }
}
