package kerfwright.planner.explain;

import java.util.Locale;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.InstrumentProperties;
import kerfwright.catalogue.material.Material;
import kerfwright.quantity.Message;
import kerfwright.quantity.Rounded;

/** Numbers and names in messages, rounded as a clinician reads them. */
public final class Words {
  private static final int FEW_BLADES = 8;

  private Words() {}

  /** "zirconia 3Y". */
  public static Message material(Material material) {
    return Message.of("label.material-" + material.id());
  }

  /** "carbide bur". */
  static Message kind(InstrumentKind kind) {
    return Message.of("label.kind-" + kind.id());
  }

  /** "450 000 rpm". */
  static Message rpm(double rpm) {
    return Message.of("figure.rpm", String.format(Locale.ROOT, "%,.0f", rpm).replace(',', ' '));
  }

  /** "350 nm" or "2.1 um". */
  static Message thickness(double metres) {
    return metres < 1e-6
        ? Message.of("figure.nm", Rounded.figure(metres * 1e9))
        : Message.of("figure.um", Rounded.figure(metres * 1e6));
  }

  /** "40 s" or "3 min 20 s". */
  public static Message time(double seconds) {
    if (seconds < 90) {
      return Message.of("figure.seconds", Rounded.figure(Math.max(1, seconds)));
    }
    int whole = (int) (Math.round(seconds / 10) * 10);
    int rest = whole % 60;
    return rest == 0
        ? Message.of("figure.minutes", whole / 60)
        : Message.of("figure.minutes-seconds", whole / 60, rest);
  }

  /** "friction grip carbide bur with 4 to 8 blades": what to ask for in a shop. */
  public static Message ordinary(InstrumentProperties what) {
    Message shank = Message.of("label.shank-" + what.shank().id());
    Message kind = kind(what.kind());
    Integer blades = what.blades();
    if (what.grit() != null) {
      Message grit = Message.of("label.grit-" + what.grit().id());
      return Message.of("finding.ordinary-grit", shank, kind, grit);
    }
    if (blades == null) {
      return Message.of("finding.ordinary", shank, kind);
    }
    return blades <= FEW_BLADES
        ? Message.of("finding.ordinary-few-blades", shank, kind)
        : Message.of("finding.ordinary-blades", shank, kind, blades);
  }
}
