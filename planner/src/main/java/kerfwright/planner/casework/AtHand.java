package kerfwright.planner.casework;

import java.util.List;
import kerfwright.catalogue.handpiece.Handpiece;
import kerfwright.quantity.FlowRate;

/**
 * What the operator has at hand.
 *
 * @param handpieces which handpieces
 * @param coolant water reaching the tip
 */
public record AtHand(List<Handpiece> handpieces, FlowRate coolant) {
  public AtHand {
    handpieces = List.copyOf(handpieces);
    if (handpieces.isEmpty()) {
      throw new IllegalArgumentException("A case needs at least one handpiece");
    }
  }
}
