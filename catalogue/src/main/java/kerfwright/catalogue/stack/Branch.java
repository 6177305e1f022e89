package kerfwright.catalogue.stack;

import java.util.List;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;

/**
 * What a restoration of unknown material may turn out to be.
 *
 * @param id id of the row; its text says what the first touch tells
 * @param restoration the restoration named without its material
 * @param procedures procedures it is for
 * @param branch the restoration it turns out to be
 * @param becomes procedure done then, empty for the one asked
 */
public record Branch(
    String id,
    String restoration,
    List<String> procedures,
    String branch,
    String becomes,
    List<SourceKey> sources,
    Basis basis) {
  /** True where a case names this restoration for this procedure. */
  boolean serves(String named, String asked) {
    return restoration.equals(named) && procedures.contains(asked);
  }
}
