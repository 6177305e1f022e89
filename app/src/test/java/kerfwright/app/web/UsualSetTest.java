package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.input.SourceText;
import kerfwright.app.today.UsualSet;
import kerfwright.planner.PlanOptions;
import kerfwright.planner.casework.DrawerSnapshot;
import kerfwright.planner.plan.CutPlan;
import kerfwright.practice.drawer.StockForPlanning;
import kerfwright.practice.drawer.StockItem;
import kerfwright.quantity.RotationalSpeed;
import org.junit.jupiter.api.Test;

/** The usual set a practice may begin with. */
class UsualSetTest {
  private static final int FRICTION_GRIP = 400_000;
  private static final int LATCH = 40_000;

  private static List<StockItem> pieces(Set<String> taken) {
    return UsualSet.pieces(FRICTION_GRIP, LATCH, "usual", taken, UUID::randomUUID);
  }

  @Test
  void everyProcedureIsPlannedWithItAlone() throws Exception {
    Wiring wiring = Wiring.production();
    List<String> refused = new ArrayList<>();
    try (Served practice = Served.empty()) {
      assertTrue(practice.practice().service().add(pieces(Set.of()), "usual").done());
      DrawerSnapshot drawer = StockForPlanning.of(practice.practice().service().drawer());
      for (Path file : examples()) {
        CutPlan plan =
            wiring
                .plans()
                .plan(
                    new CaseFile(wiring.cases()).yaml(SourceText.of(file)),
                    drawer,
                    new PlanOptions(1, 1));
        if (plan.refused() || !plan.unfilled().isEmpty()) {
          refused.add(file.getFileName() + " " + plan.unfilled());
        }
      }
    }
    assertEquals(List.of(), refused);
  }

  private static List<Path> examples() throws Exception {
    List<Path> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("../examples"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".yaml")).sorted().toList()) {
        if (Files.readAllLines(file).get(0).startsWith("# Plans")) {
          all.add(file);
        }
      }
    }
    assertTrue(all.size() > 30, all.toString());
    return all;
  }

  @Test
  void noPieceBearsMoreThanThePackagesSay() {
    for (StockItem piece : pieces(Set.of())) {
      RotationalSpeed greatest = piece.properties().maximumSpeed();
      int told = piece.properties().shank().name().equals("RA") ? LATCH : FRICTION_GRIP;
      assertTrue(greatest != null && Math.round(greatest.rpm()) == told, piece.label());
      assertEquals("usual", piece.place(), "marked");
    }
    int all = pieces(Set.of()).size();
    assertEquals(all - 1, pieces(Set.of("B06")).size(), "what is there already stays");
  }

  @Test
  void aPlanRefusedForWantOfAnInstrumentOffersToAddIt() throws Exception {
    try (Served practice = Served.empty()) {
      String query = "/plan?case=K-1&procedure=access-cavity&tooth=46";
      String refused = practice.get(query).body();
      assertTrue(refused.contains("With these it can be planned"), refused);
      java.util.regex.Matcher link =
          java.util.regex.Pattern.compile("href=\"(/drawer/new\\?[^\"]+)\"").matcher(refused);
      assertTrue(link.find(), refused);
      String form = practice.get(link.group(1).replace("&amp;", "&")).body();
      assertTrue(form.contains("name=\"iso\"") || form.contains("name=\"kind\""), form);
      String dry = practice.get(query + "&handpieces=slow-straight").body();
      assertTrue(!dry.contains("With these it can be planned"), "where instruments do not help");
    }
  }
}
