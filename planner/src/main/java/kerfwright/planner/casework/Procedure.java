package kerfwright.planner.casework;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import kerfwright.catalogue.operation.OperationTable;
import kerfwright.catalogue.stack.UsualStacks;

/**
 * What is to be done, by its id in files. The ids are data, one list for all: a procedure added to
 * the catalogue can be asked for at once. The constants are those a rule speaks of by name.
 */
public record Procedure(String id) {
  public static final Procedure ACCESS_CAVITY = new Procedure("access-cavity");
  public static final Procedure DEROOF_AND_REFINE = new Procedure("deroof-and-refine");
  public static final Procedure CROWN_SECTIONING = new Procedure("crown-sectioning");
  public static final Procedure CAVITY_PREPARATION = new Procedure("cavity-preparation");
  public static final Procedure INLAY_CAVITY = new Procedure("inlay-cavity");
  public static final Procedure ONLAY_CAVITY = new Procedure("onlay-cavity");
  public static final Procedure ENAMEL_BEVEL = new Procedure("enamel-bevel");
  public static final Procedure CROWN_PREPARATION = new Procedure("crown-preparation");
  public static final Procedure VENEER_PREPARATION = new Procedure("veneer-preparation");
  public static final Procedure AMALGAM_REMOVAL = new Procedure("amalgam-removal");
  public static final Procedure COMPOSITE_REMOVAL = new Procedure("composite-removal");
  public static final Procedure ADHESIVE_CLEAN_UP = new Procedure("adhesive-clean-up");
  public static final Procedure FINISH_COMPOSITE = new Procedure("finish-composite");
  public static final Procedure FINISH_CERAMIC = new Procedure("finish-ceramic");
  public static final Procedure FINISH_METAL = new Procedure("finish-metal");
  public static final Procedure FINISH_ENAMEL = new Procedure("finish-enamel");
  public static final Procedure OCCLUSAL_ADJUSTMENT = new Procedure("occlusal-adjustment");
  public static final Procedure POST_EXPOSURE = new Procedure("post-exposure");
  public static final Procedure POST_REMOVAL = new Procedure("post-removal");

  public Procedure {
    if (!id.matches("[a-z]+(-[a-z0-9]+)*")) {
      throw new IllegalArgumentException("A procedure's id is lower-case words, got '" + id + "'");
    }
  }

  /** Every procedure a case may ask for. */
  public static List<Procedure> all() {
    List<Procedure> all = new ArrayList<>();
    ids().forEach(id -> all.add(new Procedure(id)));
    return all;
  }

  /** Their ids: those of the catalogue, then those of a folder outside the program. */
  public static List<String> ids() {
    Set<String> ids = new LinkedHashSet<>(UsualStacks.packaged().procedures());
    ids.addAll(OperationTable.inUse().procedures());
    return List.copyOf(ids);
  }

  /** True where the pulp chamber is opened. */
  public boolean opensChamber() {
    return equals(ACCESS_CAVITY) || equals(DEROOF_AND_REFINE);
  }
}
