package kerfwright.app.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OnePageTest {
  private static final List<Integer> SIZES = List.of(40, 30, 20, 14, 10, 8, 6);

  private static String document(int lines, int points) {
    return "<html><head><style>@page{size:A5;margin:10mm} p{margin:0;font:"
        + points
        + "pt/1.2 sans-serif}</style></head><body>"
        + "<p>a</p>".repeat(lines)
        + "</body></html>";
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 8, 12, 18, 26, 40, 55, 70})
  void theLargestThatFitsIsTaken(int lines) {
    List<Integer> tried = new ArrayList<>();
    byte[] pdf =
        OnePage.pdf(
            SIZES,
            size -> {
              tried.add(size);
              return document(lines, size);
            });
    int first =
        SIZES.stream()
            .filter(size -> Paper.pages(Paper.pdf(document(lines, size))) == 1)
            .findFirst()
            .orElse(6);
    assertTrue(tried.contains(first), first + " in " + tried);
    assertTrue(tried.size() <= 4, tried.toString());
    assertEquals(Paper.pages(Paper.pdf(document(lines, first))), Paper.pages(pdf));
    int above = SIZES.indexOf(first) - 1;
    assertTrue(above < 0 || Paper.pages(Paper.pdf(document(lines, SIZES.get(above)))) > 1);
  }

  @Test
  void theLastIsTakenWhereNoneFits() {
    assertTrue(Paper.pages(OnePage.pdf(SIZES, size -> document(500, size))) > 1);
  }
}
