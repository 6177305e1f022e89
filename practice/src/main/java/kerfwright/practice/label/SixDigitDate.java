package kerfwright.practice.label;

import java.time.LocalDate;
import java.time.YearMonth;

/**
 * Dates as YYMMDD. Day 00 is the last day of its month. The century is the one that puts the year
 * between 49 years before and 50 years after the present one (GS1 General Specifications,
 * determination of century in dates).
 */
final class SixDigitDate {
  private SixDigitDate() {}

  /** The year meant by two digits. */
  static int year(int twoDigits, int yearNow) {
    int ahead = twoDigits - yearNow % 100;
    int century = yearNow - yearNow % 100;
    if (ahead >= 51) {
      return century - 100 + twoDigits;
    }
    return ahead <= -50 ? century + 100 + twoDigits : century + twoDigits;
  }

  static boolean monthIsSound(String date) {
    int month = Integer.parseInt(date.substring(2, 4));
    return month >= 1 && month <= 12;
  }

  /** The last day of the month named. */
  static int lastDay(String date, int yearNow) {
    return month(date, yearNow).lengthOfMonth();
  }

  static LocalDate read(String date, int yearNow) {
    int day = day(date);
    YearMonth month = month(date, yearNow);
    return day == 0 ? month.atEndOfMonth() : month.atDay(day);
  }

  static int day(String date) {
    return Integer.parseInt(date.substring(4, 6));
  }

  private static YearMonth month(String date, int yearNow) {
    int year = year(Integer.parseInt(date.substring(0, 2)), yearNow);
    return YearMonth.of(year, Integer.parseInt(date.substring(2, 4)));
  }
}
