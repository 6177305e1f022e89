package kerfwright.app.chairside;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Optional;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.Drawer;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.TimeOrderedIds;
import kerfwright.practice.record.Logged;

/** What a device at the chair sends, for the fuzzer. */
public final class ChairForms {
  private static final Say SAY = Say.in(Language.ENGLISH);
  private static final ObjectMapper JSON = new ObjectMapper();

  private ChairForms() {}

  /** Reads a log whose events were all kept before. */
  public static void log(String text, Drawer drawer) {
    DrawerService service =
        new DrawerService(
            drawer, new TimeOrderedIds(Clock.systemUTC(), new SecureRandom()), Clock.systemUTC());
    ChairReports reports =
        new ChairReports(
            use -> new Logged(null, null, false), new EventReports(event -> false, service));
    try {
      reports.take(JSON.readTree(text), Optional.empty(), SAY);
    } catch (JsonProcessingException unreadable) {
      // answered as a bad request
    }
  }
}
