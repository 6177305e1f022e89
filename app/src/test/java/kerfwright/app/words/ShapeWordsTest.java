package kerfwright.app.words;

import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.stream.Stream;
import kerfwright.catalogue.instrument.Shapes;
import kerfwright.catalogue.number.UsSizes;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShapeWordsTest {
  static List<String> shapes() {
    return Stream.concat(
            Shapes.all().stream().map(shape -> shape.name()),
            UsSizes.all().stream().map(size -> size.shapeName()))
        .distinct()
        .toList();
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void everyShapeHasGermanWords(String shape) {
    assertNotEquals(shape, Labels.shape(Say.in(Language.GERMAN), shape));
  }
}
