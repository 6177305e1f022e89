package kerfwright.catalogue.number;

import java.util.List;
import kerfwright.catalogue.Confidence;

/**
 * A US size that fits an instrument.
 *
 * @param size the size
 * @param confidence the row's own confidence, lowered for every doubt
 * @param doubts what is not the same or not known, in words; empty where everything known fits
 */
public record UsMatch(UsSize size, Confidence confidence, List<String> doubts) {
  public UsMatch {
    doubts = List.copyOf(doubts);
  }
}
