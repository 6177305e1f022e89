package kerfwright.practice.label;

import kerfwright.quantity.Identified;

/**
 * Why a scanned text cannot be read.
 *
 * @param kind what is wrong
 * @param at character of the scanned text where it is wrong, from 1
 * @param element the application identifier it is about, empty where about none
 * @param found what stands there
 * @param expected what should, empty where the kind says it
 */
public record ScanFault(Kind kind, int at, String element, String found, String expected) {

  /** What may be wrong. */
  public enum Kind implements Identified {
    EMPTY,
    TOO_MUCH,
    SYMBOLOGY,
    ELEMENT_UNKNOWN,
    ELEMENT_TWICE,
    NO_VALUE,
    TOO_SHORT,
    TOO_LONG,
    NOT_DIGITS,
    CHARACTER,
    CHECK_DIGIT,
    MONTH,
    DAY
  }
}
