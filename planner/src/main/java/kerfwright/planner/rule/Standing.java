package kerfwright.planner.rule;

import java.util.List;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/** How sure a rule is and where it comes from. */
public interface Standing {
  /** Stable code, words with hyphens. */
  String code();

  Basis basis();

  List<SourceKey> sources();
}
