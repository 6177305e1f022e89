package kerfwright.practice.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.SplittableRandom;
import kerfwright.practice.label.ScanFault.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** 09501101530003 is the sample number the standard's own documents use. */
class ElementStringTest {
  private static final String GTIN = "09501101530003";
  private static final String GS = "\u001d";

  private static MakersCode understood(String text) {
    return assertInstanceOf(Reading.Understood.class, ElementString.read(text, 2026), text).code();
  }

  private static ScanFault refused(String text) {
    return assertInstanceOf(Reading.Refused.class, ElementString.read(text, 2026), text).fault();
  }

  private static void assertWhole(MakersCode code) {
    assertEquals(
        new MakersCode(
            GTIN, "LOT12", "S-7/9", LocalDate.of(2025, 1, 31), LocalDate.of(2030, 2, 28), "FORM.B"),
        code);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "]d2",
        "]C1",
        "]d2\u001d",
        "\u001d",
        "",
      })
  void everyElementIsReadWhateverAnnouncesIt(String front) {
    assertWhole(
        understood(
            front
                + "01"
                + GTIN
                + "11250131"
                + "17300200"
                + "10LOT12"
                + GS
                + "21S-7/9"
                + GS
                + "240FORM.B"));
  }

  @Test
  void theOrderAndSpareSeparatorsDoNotMatter() {
    assertWhole(
        understood(
            "]d2240FORM.B"
                + GS
                + "10LOT12"
                + GS
                + "01"
                + GTIN
                + GS
                + "21S-7/9"
                + GS
                + "17300200"
                + "11250131"
                + GS));
  }

  @Test
  void bracketsAndWrittenSeparatorsAreRead() {
    assertWhole(understood("(01)" + GTIN + "(11)250131(17)300200(10)LOT12(21)S-7/9(240)FORM.B"));
    assertWhole(understood("01" + GTIN + "112501311730020010LOT12{GS}21S-7/9{GS}240FORM.B"));
    assertWhole(understood("01" + GTIN + "112501311730020010LOT12\u241d21S-7/9\u241d240FORM.B"));
  }

  @Test
  void withoutSeparatorsTheLastFieldMayBeOfAnyLength() {
    MakersCode code = understood("01" + GTIN + "17300228" + "10AB-3");
    assertEquals("AB-3", code.lot());
    assertEquals(LocalDate.of(2030, 2, 28), code.expires());
  }

  @Test
  void lostSeparatorsThatLeaveADoubtAreToldInEveryWay() {
    Reading reading = ElementString.read("01" + GTIN + "1012342155", 2026);
    List<MakersCode> codes = assertInstanceOf(Reading.Several.class, reading).codes();
    assertEquals(
        List.of(
            new MakersCode(GTIN, "12342155", null, null, null, null),
            new MakersCode(GTIN, "1234", "55", null, null, null)),
        codes);
  }

  @Test
  void lostSeparatorsThatLeaveOneWayOnlyAreNoDoubt() {
    // 24 characters are too many for one lot, and only one cut leaves two sound fields
    MakersCode code = understood("01" + GTIN + "10ABCDEFGHIJKLMNOPQRST" + "21X");
    assertEquals("ABCDEFGHIJKLMNOPQRST", code.lot());
    assertEquals("X", code.serial());
  }

  @Test
  void whereTheScannerKeepsSeparatorsDigitsThatLookLikeAFieldAreNoDoubt() {
    assertEquals("12342155", understood("]C101" + GTIN + "1012342155").lot());
  }

  @Test
  void theSecondBarOfAPackageNeedsNoNumber() {
    MakersCode code = understood("]C117300200" + "10LOT12");
    assertEquals("LOT12", code.lot());
    assertEquals(null, code.gtin());
  }

  @Test
  void aPlainArticleNumberIsFilledUpToFourteenDigits() {
    assertEquals(GTIN, understood("9501101530003").gtin());
    assertEquals(GTIN, understood("]d1" + GTIN).gtin());
  }

  @ParameterizedTest
  @CsvSource({
    "0109501101530004, CHECK_DIGIT, 16, 01, 4, 3",
    "]d20109501101530004, CHECK_DIGIT, 19, 01, 4, 3",
    "010950110153, TOO_SHORT, 3, 01, 0950110153, 14",
    "0109501101530A03, NOT_DIGITS, 14, 01, A, ''",
    "(01)09501101530003(17)251301, MONTH, 25, 17, 13, 01-12",
    "(17)250001, MONTH, 7, 17, 00, 01-12",
    "(17)250230, DAY, 9, 17, 30, 00-28",
    "(17)240230, DAY, 9, 17, 30, 00-29",
    "(11)250431, DAY, 9, 11, 31, 00-30",
    "(10)ABCDEFGHIJKLMNOPQRSTU, TOO_LONG, 5, 10, ABCDEFGHIJKLMNOPQRSTU, 20",
    "(10)A#B, CHARACTER, 6, 10, #, ''",
    "(10), NO_VALUE, 5, 10, '', ''",
    "(10)A(10)B, ELEMENT_TWICE, 10, 10, B, ''",
    "(37)5, ELEMENT_UNKNOWN, 1, '', (37), ''",
    "]d2375, ELEMENT_UNKNOWN, 4, '', 375, ''",
    "]Q3010950, SYMBOLOGY, 1, '', ]Q3, ''",
    "'', EMPTY, 1, '', '', ''",
    "]d2, EMPTY, 4, '', '', ''"
  })
  void whatIsWrongIsSaidWithItsPlace(
      String text, Kind kind, int at, String element, String found, String expected) {
    ScanFault fault = refused(text);
    String symbology = kind == Kind.SYMBOLOGY ? "]d1, ]d2, ]C1" : expected;
    assertEquals(new ScanFault(kind, at, element, found, symbology), fault);
  }

  @Test
  void aTextWithoutEndIsNotRead() {
    assertEquals(Kind.TOO_MUCH, refused("]d2" + "1".repeat(ElementString.LONGEST)).kind());
  }

  @ParameterizedTest
  @CsvSource({
    "76, 2026, 2076",
    "77, 2026, 1977",
    "00, 2026, 2000",
    "99, 2026, 1999",
    "00, 2051, 2100",
    "01, 2051, 2101",
    "02, 2051, 2002",
    "49, 1999, 2049",
    "50, 1999, 1950"
  })
  void theYearIsTheOneWithin49BeforeAnd50After(String year, int now, int expected) {
    Reading reading = ElementString.read("(17)" + year + "0615", now);
    LocalDate expires = assertInstanceOf(Reading.Understood.class, reading).code().expires();
    assertEquals(LocalDate.of(expected, 6, 15), expires);
  }

  @Test
  void dayZeroIsTheLastOfTheMonthInLeapYearsToo() {
    assertEquals(LocalDate.of(2028, 2, 29), understood("(17)280200").expires());
    assertEquals(LocalDate.of(2026, 12, 31), understood("(11)261200").produced());
  }

  @Test
  void everyWrongDigitOfANumberIsFound() {
    for (int place = 0; place < GTIN.length(); place++) {
      for (char digit = '0'; digit <= '9'; digit++) {
        String changed = GTIN.substring(0, place) + digit + GTIN.substring(place + 1);
        assertEquals(changed.equals(GTIN), CheckDigit.holds(changed), changed);
      }
    }
  }

  @Test
  void whatIsWrittenWithSeparatorsIsReadBack() {
    SplittableRandom chance = new SplittableRandom(11);
    String signs = "!\"%&'()*+,-./0123456789:;<=>?ABCXYZ_abcxyz";
    for (int i = 0; i < 2000; i++) {
      String digits = String.format("%013d", chance.nextLong(10_000_000_000_000L));
      String gtin = digits + CheckDigit.of(digits);
      String lot = any(chance, signs, 20);
      String serial = any(chance, signs, 20);
      YearMonth month = YearMonth.of(chance.nextInt(1977, 2077), chance.nextInt(1, 13));
      LocalDate day = month.atDay(chance.nextInt(1, month.lengthOfMonth() + 1));
      String date =
          String.format(
              "%02d%02d%02d", day.getYear() % 100, day.getMonthValue(), day.getDayOfMonth());
      MakersCode code = understood("]d210" + lot + GS + "17" + date + "01" + gtin + "21" + serial);
      assertEquals(new MakersCode(gtin, lot, serial, null, day, null), code);
    }
  }

  private static String any(SplittableRandom chance, String signs, int longest) {
    StringBuilder text = new StringBuilder();
    for (int length = chance.nextInt(1, longest + 1); length > 0; length--) {
      text.append(signs.charAt(chance.nextInt(signs.length())));
    }
    return text.toString();
  }

  @Test
  void labelsOfTheDrawerDoNotLookLikeMakersCodes() {
    for (String label : List.of("D1", "B-17", "1701", "KFWA0", "01/2")) {
      assertFalse(ElementString.looksLikeOne(label), label);
    }
    for (String code :
        List.of("0109501101530004", "]d2x", "(01)1", "9501101530003", "10A{GS}21B")) {
      assertTrue(ElementString.looksLikeOne(code), code);
    }
  }
}
