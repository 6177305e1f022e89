package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpRequest;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kerfwright.app.input.BadInput;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Read in German, a page holds no English but what is marked as quoted from its source. */
class GermanPagesTest {
  private static final List<String> BESIDES =
      List.of("/drawer?q=nothing-fits", "/drawer?page=99999");

  /** Words of English that are none of German. */
  private static final Set<String> ENGLISH =
      Set.of(
          "the", "and", "of", "with", "not", "to", "from", "are", "which", "this", "for", "its",
          "is", "by", "it", "each", "at", "be", "has", "head", "shape", "speed", "blades", "shank",
          "tooth", "unknown", "known", "clean", "used");

  private static final Pattern PIECE =
      Pattern.compile("<!--.*?-->|<(?:\"[^\"]*\"|[^\">])*>|[^<]+", Pattern.DOTALL);
  private static final Set<String> VOID =
      Set.of("meta", "link", "input", "br", "img", "hr", "col", "source", "wbr", "!doctype");

  private static Served app;

  @BeforeAll
  static void start() throws BadInput {
    app = new Served();
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  private static List<String> paths() {
    return Stream.of(app.pages(), BESIDES, ReferencePagesTest.PAGES).flatMap(List::stream).toList();
  }

  private static String german(String path) throws Exception {
    return app.send(
            HttpRequest.newBuilder(URI.create(app.address(path)))
                .header("Accept-Language", "de")
                .build())
        .body();
  }

  @Test
  void noEnglishIsLeftButWhatIsMarkedAsEnglish() throws Exception {
    List<String> left = new ArrayList<>();
    List<String> paths = paths();
    for (String path : paths) {
      String page = german(path);
      assertTrue(page.contains("<html lang=\"de\""), path);
      for (String text : visible(page)) {
        for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")) {
          if (ENGLISH.contains(word)) {
            left.add(path + ": '" + word + "' in '" + text.strip() + "'");
          }
        }
      }
    }
    assertEquals(List.of(), left.stream().distinct().toList());
  }

  @Test
  void noPageIsHeavierThanTabletsBear() throws Exception {
    List<String> paths = paths();
    for (String path : paths) {
      int bytes = german(path).getBytes(java.nio.charset.StandardCharsets.UTF_8).length;
      assertTrue(bytes < 300_000, path + " is " + bytes);
    }
  }

  /** Text people see or hear, outside of what is marked as English and of program words. */
  private static List<String> visible(String page) {
    List<String> texts = new ArrayList<>();
    Deque<Boolean> quoted = new ArrayDeque<>(List.of(false));
    Matcher pieces = PIECE.matcher(page.substring(page.indexOf("<body"), page.indexOf("</body>")));
    while (pieces.find()) {
      String piece = pieces.group();
      if (!piece.startsWith("<")) {
        if (!quoted.peek()) {
          texts.add(piece);
        }
      } else if (piece.startsWith("</")) {
        quoted.pop();
      } else if (!piece.startsWith("<!")) {
        boolean skip =
            quoted.peek() || piece.contains("lang=\"en\"") || piece.matches("(?s)<(code|script).*");
        Matcher said = Pattern.compile("(?:title|aria-label)=\"([^\"]*)\"").matcher(piece);
        while (!skip && said.find()) {
          texts.add(said.group(1));
        }
        String name = piece.replaceAll("(?s)^<([a-zA-Z!]+).*", "$1");
        if (!piece.endsWith("/>") && !VOID.contains(name)) {
          quoted.push(skip);
        }
      }
    }
    return texts;
  }
}
