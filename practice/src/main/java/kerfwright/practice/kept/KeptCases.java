package kerfwright.practice.kept;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import kerfwright.catalogue.tooth.Tooth;

/** Where cases are kept. */
public interface KeptCases {
  /**
   * Keeps a version of a case.
   *
   * @return false where somebody else kept that version first, and nothing is kept
   */
  boolean keep(KeptCase version);

  /** The newest version. */
  Optional<KeptCase> find(UUID id);

  /** Every version of a case, newest first. */
  List<KeptCase> versions(UUID id);

  /** The newest version of the case with this reference (letters large or small) and procedure. */
  Optional<KeptCase> find(String reference, Tooth tooth, String procedure);

  /** The newest versions of those that fit, newest first. */
  List<KeptCase> list(KeptCaseQuery query);
}
