package kerfwright.app.drawerfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import kerfwright.app.demo.DemoPractice;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.SourceText;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.DrawerInstrument;
import kerfwright.planner.casework.DrawerSnapshot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrawerFileTest {
  private static final String HEADER =
      "id,kind,iso,us,shape,grit,blades,head_mm,head_length_mm,shank,overall_mm,max_rpm,uses,"
          + "sterilisations,state\n";
  private static final String DIAMOND =
      "D1,diamond,806 314 197 534 014,,,,,,8.0,,,450000,0,0,clean\n";
  private static final String CARBIDE = "B1,carbide,,330,,,6,,,FG,19,400000,2,2,used\n";

  private final DrawerFile file = new DrawerFile(new PackagedInstruments());

  private DrawerSnapshot read(String text) throws BadInput {
    return file.read(new SourceText("drawer.csv", text));
  }

  private String faults(String text) {
    BadInput bad = assertThrows(BadInput.class, () -> read(text));
    return bad.faults().stream()
        .map(fault -> fault.in(Say.in(Language.ENGLISH)))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void readsInstrumentsByNumberAndBySize() throws BadInput {
    DrawerSnapshot drawer = read(HEADER + DIAMOND + CARBIDE);
    assertEquals(2, drawer.instruments().size());
    DrawerInstrument bur = drawer.instruments().get(1);
    assertEquals(DrawerInstrument.State.USED, bur.state());
    assertEquals(2, bur.uses());
    assertEquals(6, bur.properties().blades());
  }

  @Test
  void whatIsNoRotaryInstrumentIsPassedOver() throws BadInput {
    DrawerSnapshot drawer = read(HEADER + DIAMOND + "TU1,turbine,,,,,,,,,,,3,3,clean\n");
    assertEquals(1, drawer.instruments().size());
  }

  @Test
  void readsTheDemoDrawer() throws BadInput {
    assertTrue(DemoPractice.drawer(file).instruments().size() > 40);
  }

  @Test
  void columnsMayStandInAnyOrder() throws BadInput {
    String text = "state,kind,id,iso,max_rpm\nclean,diamond,D1,806 314 001 534 014,450000\n";
    assertEquals("D1", read(text).instruments().get(0).id());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "D1,diamond | D1,dimond | 2 | kind | diamond",
        "B1,carbide | B1, | 3 | kind | expected",
        "D1,diamond | ,diamond | 2 | id: must be up to 40 letters | spaces",
        "D1,diamond | B1,diamond | 3 | id: 'B1' is already in line 2 | line 2",
        "534 014 | 534 01 | 2 | iso | expected",
        "450000,0,0 | fast,0,0 | 2 | max_rpm | expected",
        "450000,0,0 | 450000,-1,0 | 2 | uses: must be a number from 0 | found '-1'",
        "450000,0,0 | 450000,1.5,0 | 2 | uses: must be a whole number | found '1.5'",
        "0,0,clean | 0,0,claen | 2 | state: there is no state 'claen' | did you mean clean?",
        "0,0,clean | 0,0, | 2 | state: is missing | withdrawn",
        "0,0,clean | 0,0,clean,1 | 2 | holds 16 cells, the header 15 | 15",
        ",330, | ,33O, | 3 | us | 330",
      })
  void namesLineColumnAndExpectation(String good, String bad, int line, String start, String more) {
    String text = HEADER + DIAMOND + CARBIDE;
    assertTrue(text.contains(good), good);
    String faults = faults(text.replace(good, bad));
    assertTrue(faults.contains("drawer.csv:" + line + ": " + start), faults);
    assertTrue(faults.contains(more), faults);
  }

  @Test
  void refusesUnknownTwiceAndMissingColumns() {
    String faults = faults("id,knd,iso,iso\nD1,diamond,806 314 001 534 014,\n");
    assertTrue(faults.contains("drawer.csv:1: knd: there is no such column"), faults);
    assertTrue(faults.contains("did you mean kind?"), faults);
    assertTrue(faults.contains("iso: this column is in the header twice"), faults);
    assertTrue(faults.contains("state: this column is missing"), faults);
  }

  @Test
  void tellsTheFaultsOfAllRowsAtOnce() {
    String faults =
        faults(HEADER + DIAMOND.replace("clean", "dirty") + CARBIDE.replace("carbide", "wood"));
    assertTrue(faults.contains("drawer.csv:2: state"), faults);
    assertTrue(faults.contains("drawer.csv:3: kind"), faults);
  }

  @Test
  void refusesEmptyAndBrokenFiles() {
    assertTrue(faults("").contains("is empty, a header was expected"));
    assertTrue(faults(HEADER).contains("holds no instrument"));
    String broken = faults(HEADER + "\"D1,diamond\nB1,carbide\n");
    assertTrue(broken.contains("broken CSV"), broken);
    assertFalse(broken.contains("Exception"), broken);
  }
}
