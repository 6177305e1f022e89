package kerfwright.app.daypage;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.kept.Sitting;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.TrayTemplate;
import kerfwright.practice.kept.KeptCase;
import kerfwright.practice.kept.KeptCaseQuery;
import kerfwright.practice.kept.KeptCases;
import kerfwright.schedule.Need;
import kerfwright.schedule.Substitute;

/** Appointments entered and changed, and the trays the practice uses again and again. */
record BookingPages(
    DayService service, TypeWords types, KeptCases cases, Templates templates, CaseNeeds needs)
    implements Feature {
  /** Lines of a tray's form. */
  private static final int TRAY_LINES = 8;

  private static final int LONGEST_NAME = 60;
  private static final int SHORTEST_MIN = 5;
  private static final int LONGEST_MIN = 600;
  private static final int OFFERED = 12;

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/day/{date}/booking", this::form, Access.WORK);
    config.routes.post("/day/{date}/booking", this::save, Access.WORK);
    config.routes.post("/day/{date}/booking/remove", this::remove, Access.WORK);
    config.routes.get("/day/trays", call -> trays(call, ""), Access.CASES);
    config.routes.post("/day/trays", this::keep, Access.WORK);
  }

  @Override
  public List<String> pages() {
    return List.of("/day/trays", "/day/" + service.today() + "/booking");
  }

  private void form(Context call) {
    LocalDate date = DayPages.date(call);
    DayBook book = service.books().read(date);
    String id = call.queryParam("id");
    Optional<Booking> known = id == null ? Optional.empty() : book.booking(id);
    BookingForm form =
        known.map(b -> BookingForm.of(b, service.books().trays())).orElseGet(() -> fresh(call));
    show(call, date, form, "");
  }

  /** A new appointment; one that comes from a kept case knows all of it but when. */
  private BookingForm fresh(Context call) {
    Optional<KeptCase> kept = Sent.id(call.queryParam("case")).flatMap(cases::find);
    return kept.map(one -> BookingForm.of(one, service.freeMinute()))
        .orElseGet(() -> BookingForm.of(call::queryParam));
  }

  /** What was sent; the kept cases that were ticked stand in for the words of a case file. */
  private static BookingForm sent(Context call) {
    List<UUID> ticked =
        call.formParams("kept").stream().flatMap(id -> Sent.id(id).stream()).toList();
    BookingForm form = BookingForm.of(call::formParam);
    return ticked.isEmpty() ? form : form.of(Sitting.text(ticked));
  }

  /** Cases to choose from: those of the reference first, then the newest. */
  private List<KeptCase> offered(BookingForm form) {
    Map<UUID, KeptCase> all = new LinkedHashMap<>();
    List<KeptCase> found = new ArrayList<>(Sitting.of(cases, form.at("case")));
    String reference = form.at("reference");
    if (!reference.isEmpty()) {
      found.addAll(cases.list(new KeptCaseQuery(reference, null, null, null, null, 0, OFFERED)));
    }
    found.addAll(cases.list(KeptCaseQuery.newest(OFFERED)));
    found.forEach(one -> all.putIfAbsent(one.id(), one));
    return List.copyOf(all.values());
  }

  private void show(Context call, LocalDate date, BookingForm form, String fault) {
    templates.html(
        call,
        "day/booking.jte",
        Map.of(
            "date", date,
            "form", form,
            "fault", fault,
            "offered", offered(form),
            "ticked", Sitting.ids(form.at("case")),
            "trays", service.books().trays(),
            "chairs", service.setting().chairs()));
  }

  private void save(Context call) {
    LocalDate date = DayPages.date(call);
    Say say = templates.say(call);
    DayBook book = service.books().read(date);
    BookingForm form = sent(call);
    Booking before = book.booking(form.at("id")).orElse(null);
    Map<String, String> found = new LinkedHashMap<>();
    String id = before == null ? book.freeId() : before.id();
    Optional<Booking> read = form.read(say, id, before, service.books().trays(), needs, found);
    if (read.isEmpty()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(call, date, form.with(found), "");
      return;
    }
    List<Booking> changed = new ArrayList<>(book.bookings());
    changed.removeIf(b -> b.id().equals(id));
    changed.add(read.get());
    DayService.Effect effect = service.effect(book, changed, service.nowMin(date));
    if (!effect.possible()) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      show(call, date, form, FaultWords.of(say, effect).get(0));
    } else if (service.apply(book, effect, before == null ? "added" : "changed")) {
      DayPages.back(call, date);
    } else {
      call.status(HttpStatus.CONFLICT);
      show(call, date, form, say.at("day.changed-meanwhile"));
    }
  }

  private void remove(Context call) {
    LocalDate date = DayPages.date(call);
    DayBook book = service.books().read(date);
    List<Booking> changed = new ArrayList<>(book.bookings());
    changed.removeIf(b -> b.id().equals(call.formParam("id")));
    DayService.Effect effect = service.effect(book, changed, service.nowMin(date));
    if (service.apply(book, effect, "removed")) {
      DayPages.back(call, date);
    } else {
      call.status(HttpStatus.CONFLICT);
      Say say = templates.say(call);
      show(
          call,
          date,
          BookingForm.of(call::formParam),
          say.at(effect.factsBroken() ? "day.fault-happened" : "day.changed-meanwhile"));
    }
  }

  private void trays(Context call, String fault) {
    Say say = templates.say(call);
    templates.html(
        call,
        "day/trays.jte",
        Map.of(
            "trays",
            service.books().trays(),
            "types",
            types.all(say),
            "fault",
            fault,
            "words",
            (UnaryOperator<String>) type -> types.of(say, type),
            "typed",
            (UnaryOperator<String>) name -> Sent.text(call, name)));
  }

  private void keep(Context call) {
    String name = Sent.text(call, "name");
    boolean forget = call.formParam("forget") != null;
    int minutes = forget ? SHORTEST_MIN : Sent.whole(call.formParam("minutes")).orElse(0);
    List<Need> asked = forget ? List.of() : asked(call);
    if (name.isEmpty()
        || name.length() > LONGEST_NAME
        || minutes < SHORTEST_MIN
        || minutes > LONGEST_MIN
        || asked.isEmpty() && !forget) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      trays(call, templates.say(call).at("day.tray-needed"));
      return;
    }
    service.books().keep(new TrayTemplate(name, minutes, asked));
    call.redirect("/day/trays", HttpStatus.SEE_OTHER);
  }

  private static List<Need> asked(Context call) {
    List<Need> asked = new ArrayList<>();
    for (int line = 0; line < TRAY_LINES; line++) {
      String type = Sent.text(call, "type-" + line);
      String other = Sent.text(call, "or-" + line);
      String ratio = Sent.text(call, "ratio-" + line).replace(',', '.');
      if (!type.isEmpty() && asked.stream().noneMatch(n -> n.type().equals(type))) {
        boolean usable =
            !other.isEmpty()
                && !other.equals(type)
                && ratio.matches("\\d{1,2}(\\.\\d{1,2})?")
                && Double.parseDouble(ratio) > 0;
        asked.add(
            new Need(
                type,
                0,
                usable ? List.of(new Substitute(other, Double.parseDouble(ratio))) : List.of()));
      }
    }
    return asked;
  }
}
