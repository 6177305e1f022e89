package kerfwright.catalogue.number;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import kerfwright.quantity.Basis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class IsoNumberTest {
  @Test
  void anyDigitsDecodeAndEncodeToThemselves() {
    SplittableRandom random = new SplittableRandom(20_26);
    char[] text = new char[15];
    for (int n = 0; n < 3_000_000; n++) {
      for (int i = 0; i < text.length; i++) {
        text[i] = (char) ('0' + random.nextInt(10));
      }
      String digits = new String(text);
      if (!digits.equals(IsoNumber.parse(digits).digits())) {
        assertEquals(digits, IsoNumber.parse(digits).digits());
      }
    }
  }

  @Test
  void allThreeFormsInAnySpellingEncodeToThemselves() {
    SplittableRandom random = new SplittableRandom(5);
    String[] separators = {" ", ".", "-", "", "  ", " - ", "\u00a0", "\u2013"};
    for (int n = 0; n < 200_000; n++) {
      int groups = new int[] {3, 5, 6}[random.nextInt(3)];
      StringBuilder typed = new StringBuilder();
      StringBuilder spaced = new StringBuilder();
      for (int g = 0; g < groups; g++) {
        String group = String.valueOf(1000 + random.nextInt(1000)).substring(1);
        typed.append(g == 0 ? "" : separators[random.nextInt(separators.length)]).append(group);
        spaced.append(g == 0 ? "" : " ").append(group);
      }
      assertEquals(spaced.toString(), IsoNumber.parse(typed.toString()).encode());
    }
  }

  @Test
  void anyDigitsCanBeExplainedAndNoGroupIsLost() {
    SplittableRandom random = new SplittableRandom(11);
    for (int n = 0; n < 100_000; n++) {
      IsoNumber number = new IsoNumber(random.nextLong(1_000_000_000_000_000L), 15);
      StringBuilder told = new StringBuilder();
      for (NumberGroup group : number.explain().groups()) {
        told.append(group.digits());
        assertFalse(group.meaning().isBlank());
        assertTrue(group.known() != group.meaning().contains("unknown"), group.meaning());
      }
      assertEquals(number.digits(), told.toString());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          80 6314001524016      | 3  | separator
          806 314 001 52A 016   | 15 | 'A'
          806/314/001/524/016   | 4  | '/'
          806..314 001 524 016  | 5  | '.'
          .806 314 001 524 016  | 1  | '.'
          806 314 001 524 016-  | 20 | separator at the end
          806 314 001 524 \u0661\u0661\u0661 | 17 | '\u0661'
          """)
  void aWrongSignIsNamedWithItsPlace(String text, int position, String found) {
    MalformedNumberException fault =
        assertThrows(MalformedNumberException.class, () -> IsoNumber.parse(text));
    assertEquals(position, fault.position(), fault.getMessage());
    assertTrue(fault.found().contains(found), fault.getMessage());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 8, 10, 12, 14, 16, 17, 19, 21, 100_000})
  void anyOtherCountOfDigitsIsRefusedAndCounted(int count) {
    MalformedNumberException fault =
        assertThrows(MalformedNumberException.class, () -> IsoNumber.parse("1".repeat(count)));
    assertEquals(count + (count == 1 ? " digit" : " digits"), fault.found());
    assertTrue(fault.getMessage().length() < 300);
  }

  @Test
  void theShortFormLeavesMaterialAndShankOpen() {
    IsoNumber number = IsoNumber.parse("001 524 016");
    assertNull(number.material());
    assertNull(number.shank());
    assertEquals("001", number.shape());
    assertEquals("524", number.characteristic());
    assertEquals("016", number.size());
    assertEquals(3, number.explain().groups().size());
  }

  @Test
  void theThirdDigitIsACoatingOnCarbideAndABondOnDiamond() {
    assertTrue(meaning("506 314 001 001 010", 0).contains("coating: titanium nitride"));
    assertTrue(meaning("806 314 001 524 016", 0).contains("bond: galvanic"));
    assertTrue(meaning("807 314 001 524 016", 0).contains("bond: sintered metal"));
    assertTrue(meaning("508 314 001 001 010", 0).contains("third digit 8 unknown"));
    assertEquals("unknown material", meaning("999 314 001 001 010", 0));
  }

  @Test
  void aGritCodeOnACarbideIsCalledUnknownThere() {
    NumberExplanation told = IsoNumber.parse("500 314 001 524 016").explain();
    assertNull(told.characteristic());
    assertTrue(told.groups().get(3).meaning().contains("listed for diamond instruments only"));
  }

  /** Taper digit: GOST R ISO 6360-5 (standards-s05): twelfth digit in per cent. */
  @Test
  void aRootCanalShapeIsReadInHundredthsWithItsTaper() {
    NumberExplanation told = IsoNumber.parse("330 204 680 002 090").explain();
    assertTrue(told.rootCanal());
    assertEquals(0.90, told.size().length().millimetres(), 1e-12);
    assertEquals(Basis.FROM_MEMORY, told.size().basis());
    assertTrue(told.groups().get(3).meaning().contains("2 %"));
  }

  @Test
  void steelOfUnknownShapeLeavesTheSizeUndecided() {
    NumberExplanation told = IsoNumber.parse("330 204 654 452 025").explain();
    assertFalse(told.rootCanal());
    assertNull(told.size().length());
    String words = told.groups().get(4).meaning();
    assertTrue(words.contains("2.5 mm if a rotary") && words.contains("0.25 mm if a root"), words);
  }

  @Test
  void diamondAndCarbideAreNeverReadInHundredths() {
    for (String material : List.of("806", "807", "500", "658")) {
      NumberExplanation told = IsoNumber.parse(material + " 314 654 452 025").explain();
      assertEquals(2.5, told.size().length().millimetres(), 1e-12);
    }
  }

  @Test
  void sizeZeroIsUnknownAndHasNoLength() {
    NumberExplanation told = IsoNumber.parse("806 314 001 524 000").explain();
    assertNull(told.size().length());
    assertFalse(told.groups().get(4).known());
  }

  @Test
  void digitsSixteenToEighteenAreKeptAndNotInterpreted() {
    IsoNumber number = IsoNumber.parse("806 314 001 524 016 080");
    assertEquals("080", number.extension());
    assertEquals("806 314 001 524 016 080", number.encode());
    assertTrue(meaning(number.encode(), 5).contains("not interpreted"));
  }

  @Test
  void theRecordRefusesWhatItCannotHold() {
    assertThrows(IllegalArgumentException.class, () -> new IsoNumber(1, 14));
    assertThrows(IllegalArgumentException.class, () -> new IsoNumber(1_000_000_000L, 9));
    assertThrows(IllegalArgumentException.class, () -> new IsoNumber(-1, 15));
  }

  private static String meaning(String number, int group) {
    return IsoNumber.parse(number).explain().groups().get(group).meaning();
  }
}
