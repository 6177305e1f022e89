package kerfwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NearestNameTest {
  private static final List<String> NAMES =
      List.of(
          "lithium-disilicate", "leucite-glass-ceramic", "zirconia-3y", "zirconia-5y", "dentine");

  @Test
  void aSlipOfTheKeyFindsTheName() {
    assertEquals(Optional.of("dentine"), NearestName.nearest("dentin", NAMES));
    assertEquals(Optional.of("dentine"), NearestName.nearest("DETNINE", NAMES));
    assertEquals(
        Optional.of("lithium-disilicate"), NearestName.nearest("lithium disilicat", NAMES));
  }

  @Test
  void aBeginningFindsEveryNameThatBeginsSo() {
    assertEquals(
        List.of("zirconia-3y", "zirconia-5y"), NearestName.suggestions("zirconia", NAMES, 3));
  }

  @Test
  void nothingIsOfferedForNonsenseOrNothing() {
    assertEquals(Optional.empty(), NearestName.nearest("qqqqqqqq", NAMES));
    assertEquals(Optional.empty(), NearestName.nearest("  ", NAMES));
  }

  @Test
  void aSwapOfNeighboursCostsOne() {
    assertEquals(1, NearestName.distance("ab", "ba"));
    assertEquals(3, NearestName.distance("kitten", "sitting"));
    assertEquals(0, NearestName.distance("", ""));
    assertEquals(4, NearestName.distance("", "four"));
  }

  @Test
  void theDistanceIsSymmetricAndZeroOnlyForTheSame() {
    Random random = new Random(7);
    for (int i = 0; i < 2000; i++) {
      String a = letters(random);
      String b = letters(random);
      assertEquals(NearestName.distance(a, b), NearestName.distance(b, a), a + " " + b);
      assertEquals(a.equals(b), NearestName.distance(a, b) == 0, a + " " + b);
    }
  }

  @Test
  void aHugeTextIsNotChewedAtLength() {
    assertEquals(Optional.empty(), NearestName.nearest("z".repeat(1_000_000), NAMES));
  }

  private static String letters(Random random) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(6); i > 0; i--) {
      text.append((char) ('a' + random.nextInt(3)));
    }
    return text.toString();
  }
}
