package kerfwright.app.drawer;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import kerfwright.app.feature.Feature;
import kerfwright.app.feature.Notice;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.drawer.DrawerPage;
import kerfwright.practice.drawer.DrawerService;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.drawer.Obstacle;
import kerfwright.practice.drawer.Outcome;
import kerfwright.practice.drawer.Pick;
import kerfwright.practice.drawer.Refusal;
import kerfwright.quantity.Identified;

/** The list of the drawer, and changes of many instruments in one go. */
public final class DrawerPages implements Feature {
  private static final int MOST_PICKED = 500;

  private final DrawerService service;
  private final Templates templates;
  private final boolean demo;

  public DrawerPages(DrawerService service, Templates templates, boolean demo) {
    this.service = service;
    this.templates = templates;
    this.demo = demo;
  }

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/drawer", this::list, Access.SEE);
    config.routes.post("/drawer/move", this::move, Access.WORK);
    config.routes.post("/drawer/undo", this::undo, Access.WORK);
  }

  @Override
  public List<String> pages() {
    return List.of("/drawer");
  }

  @Override
  public List<Notice> notices(Say say) {
    return DrawerNotices.of(say, service.drawer());
  }

  private void list(Context call) {
    ListForm form = ListForm.of(call::queryParam);
    show(call, form, notice(call), Set.of(), "page".equals(call.queryParam("tick")));
  }

  private MoveNotice notice(Context call) {
    return id(call.queryParam("did"))
        .map(
            batch ->
                MoveNotice.done(
                    templates.say(call),
                    service.drawer().batch(batch),
                    service.drawer().undone(batch)))
        .orElse(MoveNotice.NONE);
  }

  private void show(Context call, ListForm form, MoveNotice notice, Set<UUID> ticked, boolean all) {
    DrawerPage page = service.drawer().list(form.toQuery());
    Map<InstrumentState, Integer> pieces = service.drawer().pieces();
    Set<UUID> ticks = new HashSet<>(ticked);
    if (all) {
      page.items().forEach(item -> ticks.add(item.id()));
    }
    templates.html(
        call,
        "drawer/list.jte",
        Map.of(
            "form", form, "page", page, "pieces", pieces, "notice", notice, "ticks", ticks, "demo",
            demo));
  }

  private void move(Context call) {
    List<Pick> picks = new ArrayList<>();
    for (String one : call.formParams("pick")) {
      pick(one).ifPresent(picks::add);
    }
    Optional<InstrumentState> to =
        Identified.of(InstrumentState.class, Optional.ofNullable(call.formParam("to")).orElse(""));
    ListForm form = ListForm.of(call::formParam);
    if (picks.isEmpty() || to.isEmpty() || picks.size() > MOST_PICKED) {
      Say say = templates.say(call);
      String reason =
          picks.isEmpty()
              ? say.at("drawer.tick-one")
              : to.isEmpty()
                  ? say.at("drawer.choose-a-state")
                  : say.at("drawer.move-at-most", MOST_PICKED);
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(call, form, MoveNotice.refused(say, "", List.of(reason)), items(picks), false);
      return;
    }
    Outcome outcome = service.move(picks, to.get(), note(call));
    UUID batch = outcome.batch();
    if (batch != null) {
      String item = call.formParam("item");
      String back =
          id(item).isPresent()
              ? "/drawer/item/" + item + "?"
              : "/drawer?" + form.query() + (form.values().isEmpty() ? "" : "&");
      call.redirect(back + "did=" + batch, HttpStatus.SEE_OTHER);
      return;
    }
    Set<UUID> left = items(picks);
    outcome.obstacles().forEach(one -> left.remove(one.item()));
    call.status(HttpStatus.CONFLICT);
    show(call, form, MoveNotice.refused(templates.say(call), outcome.obstacles()), left, false);
  }

  private static Set<UUID> items(List<Pick> picks) {
    Set<UUID> items = new HashSet<>();
    picks.forEach(pick -> items.add(pick.item()));
    return items;
  }

  private void undo(Context call) {
    Optional<UUID> batch = id(call.formParam("batch"));
    Outcome outcome =
        batch
            .map(one -> service.undo(one, note(call)))
            .orElseGet(
                () ->
                    new Outcome(
                        null, List.of(new Obstacle(null, "", Refusal.Plain.CHANGE_UNKNOWN))));
    UUID done = outcome.batch();
    if (done != null) {
      call.redirect("/drawer?did=" + done, HttpStatus.SEE_OTHER);
      return;
    }
    call.status(HttpStatus.CONFLICT);
    show(
        call,
        ListForm.of(name -> null),
        MoveNotice.refused(templates.say(call), outcome.obstacles()),
        Set.of(),
        false);
  }

  static String note(Context call) {
    String note = call.formParam("note");
    return note == null ? "" : note.strip().substring(0, Math.min(200, note.strip().length()));
  }

  /** An id from outside; empty where it is none. */
  static Optional<UUID> id(@org.jspecify.annotations.Nullable String text) {
    if (text == null || !text.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")) {
      return Optional.empty();
    }
    return Optional.of(UUID.fromString(text));
  }

  static Optional<Pick> pick(String text) {
    int colon = text.indexOf(':');
    if (colon < 0 || !text.substring(colon + 1).matches("\\d{1,9}")) {
      return Optional.empty();
    }
    int version = Integer.parseInt(text.substring(colon + 1));
    return id(text.substring(0, colon)).map(item -> new Pick(item, version));
  }
}
