package kerfwright.app.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.drawerfile.DrawerFile;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.SourceText;
import kerfwright.planner.casework.CutCase;
import kerfwright.planner.casework.DrawerSnapshot;

/** The invented practice: its drawer and a handful of cases, packaged with the program. */
public final class DemoPractice {
  private static final List<String> CASES =
      List.of(
          "access-metal-ceramic",
          "sectioning-zirconia",
          "cavity-carious",
          "bevel-incisor",
          "clean-up-adhesive",
          "polish-ceramic");

  private DemoPractice() {}

  public static DrawerSnapshot drawer(DrawerFile reader) throws BadInput {
    return reader.read(drawerText());
  }

  public static SourceText drawerText() throws BadInput {
    return packaged("drawer-demo.csv");
  }

  /** More pieces of a few types, so that a day of two chairs can be planned. */
  public static SourceText morePiecesText() throws BadInput {
    return packaged("drawer-day.csv");
  }

  /** Handpieces, hand instruments and tips. */
  public static SourceText piecesText() throws BadInput {
    return packaged("drawer-pieces.csv");
  }

  /** A case of the demo practice as it is written. */
  static String caseText(String name) throws BadInput {
    return packaged("cases/" + name + ".yaml").text();
  }

  public static List<CutCase> cases(CaseFile reader) throws BadInput {
    List<CutCase> cases = new ArrayList<>();
    for (String name : CASES) {
      cases.add(reader.yaml(packaged("cases/" + name + ".yaml")));
    }
    return cases;
  }

  private static SourceText packaged(String name) throws BadInput {
    try (InputStream in = DemoPractice.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("Not on the class path: " + name);
      }
      return SourceText.of("demo/" + name, in);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
