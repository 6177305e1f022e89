package kerfwright.app.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What people read stands in the bundles: no sentence is written in Java. */
class SentencesTest {
  private static final List<String> MODULES =
      List.of("app", "planner", "practice", "schedule", "catalogue");

  /** A text, a sign, or a comment. */
  private static final String TEXT = "\"\"\"(?s:.*?)\"\"\"|\"(?:[^\"\\\\\\n]|\\\\.)*\"";

  private static final String SIGN = "'(?:[^'\\\\]|\\\\.)+'";
  private static final Pattern COMMENT =
      Pattern.compile(TEXT + "|" + SIGN + "|/\\*(?s:.*?)\\*/|//[^\\n]*");
  private static final Pattern PART = Pattern.compile(TEXT + "|" + SIGN + "|[()]");

  /** Three or more words in a row, none of them a name or an abbreviation. */
  private static final Pattern SENTENCE =
      Pattern.compile("(?:\\b(?:a|[a-z][a-z']+)[,;:]?(?: |\\\\n)+){2,}[a-z']{2,}");

  private static final Pattern SQL =
      Pattern.compile("\\b(SELECT|INSERT|UPDATE|DELETE|GRANT|ORDER BY)\\b");

  /** Whatever stands in a call of these is told to programmers, in the log or to programs. */
  private static final Pattern FOR_PROGRAMMERS =
      Pattern.compile(
          "(?:LOG\\.\\w+|(?:Illegal\\w+|Malformed\\w+|UncheckedIO|UnsupportedOperation|Cancellation|SQL)Exception"
              + "|NotFoundResponse|ForbiddenResponse|UnauthorizedResponse|super)$");

  /** Calls that name the fault of a packaged table to whoever writes the table. */
  private static final Pattern OF_A_TABLE = Pattern.compile("(?:fault|expected|faults\\.add)$");

  /** Files with sentences that are none, or that are not for people who use the program. */
  private static final Map<String, String> EXCEPTED =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("schedule/Referee", "what a plan of the program's own breaks: its fault"),
              Map.entry("schedule/search/NativeSolver", "why a library is not there, as a system"),
              Map.entry("app/storage/StorageFault", "what drivers say, looked for in their words"),
              Map.entry("app/storage/StoredNames", "names of fields in stored documents"),
              Map.entry("app/demo/DemoHistory", "an entry of the invented practice"),
              Map.entry("planner/evidence/Coverage", "names of streams of random draws"),
              Map.entry("planner/bench/Bench", "name of a shape, as in files"),
              Map.entry("practice/record/CanonicalText", "text that is hashed"),
              Map.entry("catalogue/evidence/ConditionKind", "label in docs/VALIDATION.md"),
              Map.entry("catalogue/instrument/Characteristic", "label in JSON"),
              Map.entry("catalogue/instrument/GritClass", "ring colour as the standard has it"),
              Map.entry("catalogue/instrument/InstrumentKind", "label in files and JSON"),
              Map.entry("catalogue/instrument/Shapes", "place within a source"),
              Map.entry("catalogue/number/NumberExplanation", "held to published vectors"),
              Map.entry("catalogue/number/UsSizes", "remark of a source, marked as English"),
              Map.entry("catalogue/stack/DepthOfDecay", "how a thickness was reckoned, in JSON"),
              Map.entry("catalogue/stack/UsualStacks", "how a thickness was reckoned, in JSON"),
              Map.entry("catalogue/tooth/ToothNotation", "of exceptions; people read fault.tooth"),
              Map.entry("catalogue/tooth/ToothReading", "of exceptions")));

  @Test
  void noSentenceForPeopleStandsInJava() throws IOException {
    Map<String, Set<String>> found = new TreeMap<>();
    int files = 0;
    for (String module : MODULES) {
      Path root = Path.of("..", module, "src/main/java/kerfwright");
      try (Stream<Path> all = Files.walk(root)) {
        for (Path file : all.filter(one -> one.toString().endsWith(".java")).toList()) {
          files++;
          List<String> sentences = sentences(Files.readString(file), module);
          if (!sentences.isEmpty()) {
            String name = root.relativize(file).toString().replace('\\', '/');
            found.put(name.replaceFirst("\\.java$", ""), new TreeSet<>(sentences));
          }
        }
      }
    }
    assertTrue(files > 800, "only " + files + " files found");
    Set<String> idle = new TreeSet<>(EXCEPTED.keySet());
    idle.removeAll(found.keySet());
    found.keySet().removeAll(EXCEPTED.keySet());
    assertEquals(Map.of(), found, "sentences that belong into a bundle");
    assertEquals(Set.of(), idle, "exceptions nothing needs any more");
  }

  @Test
  void aSentenceIsFoundWhereItIsForPeople() {
    String java =
        "// not this one here\nout(\"the drawer \" + n + \" is empty now\" + \" or gone\");";
    assertEquals(List.of("\" is empty now or gone\""), sentences(java, "app"));
    assertEquals(List.of(), sentences("LOG.warn(say(\"the drawer is empty\"));", "app"));
    assertEquals(List.of(), sentences("row.fault(x, \"must be a number\");", "catalogue"));
    assertEquals(1, sentences("row.fault(x, \"must be a whole number\");", "app").size());
    assertEquals(List.of(), sentences("sql(\"SELECT id FROM the loads here\");", "app"));
  }

  private static List<String> sentences(String java, String module) {
    String code =
        COMMENT
            .matcher(java)
            .replaceAll(
                one -> one.group().startsWith("/") ? " " : Matcher.quoteReplacement(one.group()))
            .replaceAll("\"\\s*\\+\\s*\"", "");
    List<String> found = new ArrayList<>();
    Deque<String> calls = new ArrayDeque<>();
    Matcher part = PART.matcher(code);
    while (part.find()) {
      String text = part.group();
      if (text.equals("(")) {
        calls.push(code.substring(Math.max(0, part.start() - 60), part.start()).strip());
      } else if (text.equals(")")) {
        calls.poll();
      } else if (SENTENCE.matcher(text).find()
          && !text.startsWith("\"{")
          && !SQL.matcher(text).find()
          && calls.stream().noneMatch(call -> forProgrammers(call, module))) {
        found.add(text);
      }
    }
    return found;
  }

  private static boolean forProgrammers(String call, String module) {
    return FOR_PROGRAMMERS.matcher(call).find()
        || module.equals("catalogue") && OF_A_TABLE.matcher(call).find();
  }
}
