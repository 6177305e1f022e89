package kerfwright.app.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import kerfwright.app.storage.cases.DayDocument;
import kerfwright.app.storage.stock.ItemJson;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.PieceNeed;
import kerfwright.practice.drawer.StockItem;
import org.junit.jupiter.api.Test;

/** Documents as they were written before there were pieces that are no rotary instruments. */
class OldDocumentsPinnedTest {
  private static final String ITEM =
      "{\"id\":\"018f0000-0000-7000-8000-000000000001\",\"version\":3,\"label\":\"D1\",\"pieces\":1,"
          + "\"fields\":{\"iso\":\"806 314 197 534 014\",\"head_length_mm\":\"8.0\",\"max_rpm\":\"450000\"},"
          + "\"single_use\":false,\"place\":\"A2\",\"price\":\"3.90\",\"uses\":2,\"sterilisations\":2,"
          + "\"cut_mm3\":{\"enamel\":1.5},\"state\":\"clean\",\"removed\":false}";
  private static final String BOOKING =
      "{\"id\":\"A1\",\"chair\":\"1\",\"start\":\"08:00\",\"end\":\"08:30\",\"caseReference\":\"K-0501\","
          + "\"tooth\":\"46\",\"work\":\"cavity\",\"caseText\":null,"
          + "\"needs\":[{\"type\":\"diamond-coarse-round-018\",\"lifeAsked\":0.1,\"substitutes\":[]}]}";

  @Test
  void anOldItemOpensAndIsWrittenAsItWas() {
    StockItem item = ItemJson.item(ITEM);
    assertTrue(item.isRotary());
    assertEquals(1.4, item.properties().headDiameter().millimetres(), 1e-9);
    assertEquals(ITEM, ItemJson.text(item));
  }

  @Test
  void aPlannedDayOfTheFirstLayoutOpensAndStandsAsItWas() throws IOException {
    String old =
        new String(
            getClass().getResourceAsStream("day-layout-1.json").readAllBytes(),
            StandardCharsets.UTF_8);
    DayBook book = DayDocument.read(old, DayBook.class);
    assertEquals(3, book.version());
    assertEquals("08:00", book.planned().problem().start().toString());
    assertTrue(book.planned().plan().trays().size() > 10);
    String now = DayDocument.text(book);
    ObjectMapper json = new ObjectMapper();
    assertEquals(json.readTree("{\"layout\":1," + old.substring(1)), json.readTree(now));
    assertEquals(book, DayDocument.read(now, DayBook.class));
    String newer = now.replace("\"layout\":1", "\"layout\":2");
    assertThrows(IllegalStateException.class, () -> DayDocument.read(newer, DayBook.class));
  }

  @Test
  void anOldAppointmentOpensWithoutPieces() {
    Booking old = DayDocument.read(BOOKING, Booking.class);
    assertEquals(List.of(), old.pieces());
    Booking now =
        old.needing(old.needs(), List.of(new PieceNeed(List.of("spoon", "excavator"), true)));
    assertEquals(now, DayDocument.read(DayDocument.text(now), Booking.class));
  }
}
