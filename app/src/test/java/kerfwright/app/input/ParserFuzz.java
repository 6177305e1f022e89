package kerfwright.app.input;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.app.stocklist.UnreadableList;

/**
 * The readers of a group behind one door, for the fuzzer. Where a group has several, the first byte
 * chooses one. Where a sound text is kept for a reader, the next byte chooses a word of that text
 * to put the rest in place of, so that a value deep in a document is as quick to try as a code; or
 * none, and the rest is the whole text. What comes out is a fault of the program.
 */
public final class ParserFuzz {
  static final Path KEPT = Path.of("src/test/fuzz");

  private static final char FIRST = 'a';
  private static final char WHOLE = '0';
  private static final Pattern WORD = Pattern.compile("[^\\s,;=&{}\\[\\]\"]+");
  private static final Map<FuzzTarget.Group, List<Door>> DOORS = new LinkedHashMap<>();

  private ParserFuzz() {}

  /** A reader with its sound text, cut before and after each word that can be exchanged. */
  private record Door(FuzzTarget target, String sound, List<int[]> words) {
    static Door of(FuzzTarget target) {
      Path kept = KEPT.resolve(target.name()).resolve("sound");
      String sound = "";
      try {
        sound = Files.exists(kept) ? Files.readString(kept) : "";
      } catch (IOException unreadable) {
        throw new UncheckedIOException(unreadable);
      }
      List<int[]> words = new ArrayList<>();
      Matcher word = WORD.matcher(sound);
      while (word.find()) {
        words.add(new int[] {word.start(), word.end()});
      }
      return new Door(target, sound, words);
    }

    /** The text meant by what follows the byte that chose this door. */
    String text(byte[] data, int from) {
      boolean inside = !words.isEmpty() && from < data.length;
      int which = inside ? Math.floorMod(data[from] - WHOLE, words.size() + 1) : 0;
      int rest = inside ? from + 1 : from;
      String text = new String(data, rest, data.length - rest, StandardCharsets.UTF_8);
      if (which == 0) {
        return text;
      }
      int[] word = words.get(which - 1);
      return sound.substring(0, word[0]) + text + sound.substring(word[1]);
    }
  }

  private static List<Door> doors(FuzzTarget.Group group) {
    return DOORS.computeIfAbsent(group, of -> FuzzTarget.of(of).stream().map(Door::of).toList());
  }

  /** What the fuzzer begins with for one reader: these whole texts, and every word in its place. */
  static Map<String, byte[]> begin(FuzzTarget target, Map<String, byte[]> whole) {
    List<Door> doors = doors(target.group());
    int which = doors.stream().map(door -> door.target().name()).toList().indexOf(target.name());
    Door door = doors.get(which);
    String head = doors.size() == 1 ? "" : String.valueOf((char) (FIRST + which));
    Map<String, byte[]> all = new LinkedHashMap<>();
    String none = door.words().isEmpty() ? "" : String.valueOf(WHOLE);
    whole.forEach((name, text) -> all.put(target.name() + " " + name, joined(head + none, text)));
    for (int i = 0; i < door.words().size(); i++) {
      int[] word = door.words().get(i);
      byte[] text =
          (head + "?" + door.sound().substring(word[0], word[1])).getBytes(StandardCharsets.UTF_8);
      text[head.length()] = (byte) (WHOLE + 1 + i);
      all.put(target.name() + " word " + i, text);
    }
    return all;
  }

  private static byte[] joined(String head, byte[] text) {
    byte[] first = head.getBytes(StandardCharsets.UTF_8);
    byte[] all = Arrays.copyOf(first, first.length + text.length);
    System.arraycopy(text, 0, all, first.length, text.length);
    return all;
  }

  /** The fuzzer calls it by this name; which group it is about is told to its process. */
  public static void fuzzerTestOneInput(byte[] data) {
    read(FuzzTarget.Group.valueOf(System.getProperty("fuzz.group", "")), data);
  }

  static void read(FuzzTarget.Group group, byte[] data) {
    if (data.length == 0) {
      return;
    }
    List<Door> doors = doors(group);
    boolean one = doors.size() == 1;
    Door door = doors.get(one ? 0 : Math.floorMod(data[0] - FIRST, doors.size()));
    try {
      door.target().reader().read(door.text(data, one ? 0 : 1));
    } catch (BadInput | UnreadableList itsOwn) {
      // told in words: that is how a bad input ends well
    }
  }
}
