package kerfwright.app.daypage;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
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
import kerfwright.app.storage.cases.KeptCases;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.TrayTemplate;
import kerfwright.practice.kept.KeptCase;
import kerfwright.practice.kept.KeptCaseQuery;
import kerfwright.schedule.Need;
import kerfwright.schedule.Substitute;

/** Appointments entered and changed, and the trays the practice uses again and again. */
public final class BookingPages implements Feature {
  /** Lines of a tray's form. */
  static final int TRAY_LINES = 8;

  private static final int OFFERED = 12;

  private final DayService service;
  private final TypeWords types;
  private final Templates templates;
  private final CaseNeeds needs;
  private final KeptCases cases;

  BookingPages(
      DayService service, TypeWords types, KeptCases cases, Templates templates, CaseNeeds needs) {
    this.cases = cases;
    this.service = service;
    this.types = types;
    this.templates = templates;
    this.needs = needs;
  }

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
    Map<String, Object> values = new HashMap<>();
    values.put("date", date);
    values.put("form", form);
    values.put("fault", fault);
    values.put("offered", offered(form));
    values.put("ticked", Sitting.ids(form.at("case")));
    values.put("trays", service.books().trays());
    values.put("chairs", service.setting().chairs());
    templates.html(call, "day/booking.jte", values);
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
      String fault =
          effect.faults().isEmpty()
              ? say.at("day.fault-happened")
              : FaultWords.of(say, effect.faults().get(0));
      show(call, date, form, fault);
    } else if (service.apply(book, effect, before == null ? "added" : "changed")) {
      call.redirect("/day/" + date, HttpStatus.SEE_OTHER);
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
      call.redirect("/day/" + date, HttpStatus.SEE_OTHER);
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
    Map<String, Object> values = new HashMap<>();
    values.put("trays", service.books().trays());
    values.put("types", types.all(say));
    values.put("fault", fault);
    values.put("words", (UnaryOperator<String>) type -> types.of(say, type));
    values.put("typed", (UnaryOperator<String>) name -> text(call, name));
    templates.html(call, "day/trays.jte", values);
  }

  private void keep(Context call) {
    Say say = templates.say(call);
    String name = text(call, "name");
    String minutes = text(call, "minutes");
    List<Need> asked = new ArrayList<>();
    for (int line = 0; line < TRAY_LINES; line++) {
      String type = text(call, "type-" + line);
      String other = text(call, "or-" + line);
      String ratio = text(call, "ratio-" + line).replace(',', '.');
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
    boolean forget = call.formParam("forget") != null;
    if (name.isEmpty()
        || name.length() > 60
        || !forget
            && (asked.isEmpty()
                || !minutes.matches("\\d{1,3}")
                || Integer.parseInt(minutes) < 5
                || Integer.parseInt(minutes) > 600)) {
      call.status(HttpStatus.UNPROCESSABLE_CONTENT);
      trays(call, say.at("day.tray-needed"));
      return;
    }
    service
        .books()
        .keep(
            new TrayTemplate(
                name, forget ? 5 : Integer.parseInt(minutes), forget ? List.of() : asked));
    call.redirect("/day/trays", HttpStatus.SEE_OTHER);
  }

  private static String text(Context call, String name) {
    String value = call.formParam(name);
    return value == null ? "" : value.strip();
  }
}
