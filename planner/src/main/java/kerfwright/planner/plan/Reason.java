package kerfwright.planner.plan;

import java.util.List;
import kerfwright.quantity.Basis;
import kerfwright.quantity.Message;
import kerfwright.quantity.SourceKey;

/**
 * One piece of evidence for or against a choice.
 *
 * @param code stable code
 * @param message one plain sentence
 * @param supports true for, false against
 * @param basis how sure it is
 * @param sources where it comes from; empty where the plan's own models computed it
 */
public record Reason(
    String code, Message message, boolean supports, Basis basis, List<SourceKey> sources) {
  public Reason {
    sources = List.copyOf(sources);
  }
}
