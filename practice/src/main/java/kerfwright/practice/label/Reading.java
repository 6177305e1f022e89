package kerfwright.practice.label;

import java.util.List;

/** What came of reading a maker's code. */
public sealed interface Reading {
  /** Read without doubt. */
  record Understood(MakersCode code) implements Reading {}

  /**
   * The separators are lost and it can be read in several ways; the first one takes every field of
   * no set length to the end, as the standard does.
   */
  record Several(List<MakersCode> codes) implements Reading {
    public Several {
      codes = List.copyOf(codes);
    }
  }

  /** Not readable. */
  record Refused(ScanFault fault) implements Reading {}
}
