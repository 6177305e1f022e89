package kerfwright.app.chairside;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import java.util.function.Predicate;
import kerfwright.app.words.Say;
import kerfwright.practice.chairside.RunEvent;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.StockItem;
import kerfwright.quantity.Identified;

/**
 * Takes what happened at the chair beside the cuts; where an instrument dropped out, the drawer
 * follows: a blunt or broken one is withdrawn, a dropped one is used, one that was not there is
 * looked for in quarantine.
 */
public final class EventReports {
  private final Predicate<RunEvent> keep;
  private final DrawerService service;

  /**
   * Takes events.
   *
   * @param keep keeps an event; false where it was kept before
   */
  public EventReports(Predicate<RunEvent> keep, DrawerService service) {
    this.keep = keep;
    this.service = service;
  }

  /** Keeps one event; sent twice it changes nothing more. */
  void take(JsonNode one, Say say) {
    RunEvent event = event(one);
    if (!keep.test(event)) {
      return;
    }
    switch (event.what()) {
      case BLUNT, BROKEN, PIECES_MISSING -> move(one, InstrumentState.WITHDRAWN, event, say);
      case DROPPED -> move(one, InstrumentState.USED, event, say);
      case NOT_HERE -> move(one, InstrumentState.QUARANTINE, event, say);
      case SEEN, BLEEDING, EXPOSURE, PERFORATION, FRACTURE, FINISHED -> {}
    }
  }

  private static RunEvent event(JsonNode one) {
    String what = one.path("event").asText();
    return new RunEvent(
        UUID.fromString(one.path("id").asText()),
        UUID.fromString(one.path("run").asText()),
        one.path("step").asInt(),
        Identified.of(RunEvent.What.class, what)
            .orElseThrow(() -> new IllegalArgumentException(what)),
        one.path("label").asText(),
        one.path("mm").isNumber() ? one.path("mm").asDouble() : null,
        one.path("by").asText(),
        Instant.parse(one.path("at").asText()).truncatedTo(ChronoUnit.MICROS));
  }

  /** Of a lot one piece is taken out; a move the rules forbid has been made by somebody already. */
  private void move(JsonNode one, InstrumentState to, RunEvent event, Say say) {
    String id = one.path("item").asText();
    if (id.isEmpty()) {
      return;
    }
    StockItem item = service.drawer().find(UUID.fromString(id)).orElse(null);
    String note =
        say.at(
            "chairside.event-note",
            say.at("chairside.event-" + event.what().id(), event.label()),
            event.by());
    if (item != null && item.lot()) {
      UUID batch = service.lay(List.of(new Pick(item.id(), item.version())), note).batch();
      item =
          batch == null
              ? null
              : service.drawer().batch(batch).stream()
                  .map(entry -> entry.after())
                  .filter(after -> after.state() == InstrumentState.ON_TRAY)
                  .findFirst()
                  .orElse(null);
    }
    if (item != null && !item.removed()) {
      service.move(List.of(new Pick(item.id(), item.version())), to, note);
    }
  }
}
