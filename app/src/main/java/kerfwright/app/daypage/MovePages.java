package kerfwright.app.daypage;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.BookingFault;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.DayChange;
import kerfwright.practice.daylist.DayFollowed;
import kerfwright.practice.daylist.DaySetting;
import kerfwright.practice.daylist.PlannedDay;
import kerfwright.schedule.Shortage;
import org.jspecify.annotations.Nullable;

/** An appointment is moved or runs late: what that does, told before it is done. */
final class MovePages {
  private final DayPages day;
  private final DayService service;
  private final TypeWords types;
  private final Templates templates;

  MovePages(DayPages day, DayService service, TypeWords types, Templates templates) {
    this.day = day;
    this.service = service;
    this.types = types;
    this.templates = templates;
  }

  void routes(JavalinConfig config) {
    config.routes.get("/day/{date}/move", this::effect, Access.CASES);
    config.routes.post("/day/{date}/move", this::move, Access.WORK);
  }

  /** A move or lateness as sent, from the address or the form. */
  private record Wanted(String booking, String start, String chair, String late, String now) {
    static Wanted of(java.util.function.Function<String, @Nullable String> field) {
      return new Wanted(
          DayPages.sent(field.apply("booking")),
          DayPages.sent(field.apply("start")),
          DayPages.sent(field.apply("chair")),
          DayPages.sent(field.apply("late")),
          DayPages.sent(field.apply("now")));
    }
  }

  private static Optional<LocalTime> time(String text) {
    return text.matches("([01]\\d|2[0-3]):[0-5]\\d")
        ? Optional.of(LocalTime.parse(text))
        : Optional.empty();
  }

  /** The list with the wish fulfilled; empty where the wish cannot be understood. */
  private Optional<List<Booking>> changed(DayBook book, Wanted wanted, DaySetting setting) {
    Booking one = book.booking(wanted.booking()).orElse(null);
    if (one == null) {
      return Optional.empty();
    }
    if (!wanted.late().isEmpty()) {
      Integer late = DayPages.whole(wanted.late(), 240);
      return late == null || late == 0
          ? Optional.empty()
          : Optional.of(
              DayChange.late(
                  book.bookings(), one, late, time(wanted.now()).orElse(setting.opens())));
    }
    String chair = wanted.chair().isEmpty() ? one.chair() : wanted.chair();
    return time(wanted.start()).map(at -> DayChange.moved(book.bookings(), one, at, chair));
  }

  private int nowMin(Wanted wanted, LocalDate date, DaySetting setting) {
    return time(wanted.now())
        .map(setting::minute)
        .map(minute -> Math.max(0, Math.min(setting.lengthMin(), minute)))
        .orElseGet(() -> service.nowMin(date));
  }

  /** What the wish would do; empty where it cannot be understood. */
  private Optional<DayService.Effect> effect(DayBook book, Wanted wanted) {
    DaySetting setting = service.setting();
    return changed(book, wanted, setting)
        .map(list -> service.effect(book, list, nowMin(wanted, book.date(), setting)));
  }

  private void tell(Context call, DayBook book, Wanted wanted, Optional<DayService.Effect> effect) {
    Say say = templates.say(call);
    tell(
        call,
        book,
        wanted,
        effect.orElse(null),
        effect.map(one -> faults(say, one)).orElse(List.of(say.at("day.not-understood"))));
  }

  /** Never an error status: the answer is shown in place of the last one. */
  private void effect(Context call) {
    Wanted wanted = Wanted.of(call::queryParam);
    DayBook book = service.books().read(DayPages.date(call));
    tell(call, book, wanted, effect(book, wanted));
  }

  private static List<String> faults(Say say, DayService.Effect effect) {
    List<String> words = new ArrayList<>();
    for (BookingFault fault : effect.faults()) {
      words.add(FaultWords.of(say, fault));
    }
    if (effect.factsBroken()) {
      words.add(say.at("day.fault-happened"));
    }
    return words;
  }

  private void tell(
      Context call,
      DayBook book,
      Wanted wanted,
      DayService.@Nullable Effect effect,
      List<String> faults) {
    Say say = templates.say(call);
    Map<String, Object> values = new HashMap<>();
    DayFollowed followed = effect == null ? null : effect.followed();
    List<String> breaks = new ArrayList<>();
    List<String> ends = new ArrayList<>();
    if (followed != null) {
      for (Shortage s : followed.newlyShort()) {
        breaks.add(say.at("day.newly-short", s.appointment(), types.brief(say, s.type())));
      }
      for (Shortage s : followed.ended()) {
        ends.add(say.at("day.ended", s.appointment(), types.brief(say, s.type())));
      }
    }
    List<Booking> bookings = effect == null ? book.bookings() : effect.bookings();
    PlannedDay planned = followed == null ? null : followed.planned();
    DayView after =
        new DayView(
            say,
            book.with(bookings, planned),
            planned,
            null,
            service.setting(),
            service.nowMin(book.date()),
            type -> types.brief(say, type),
            Set.of());
    values.put("board", after);
    values.put("possible", effect != null && effect.possible());
    values.put("faults", faults);
    values.put("breaks", breaks);
    values.put("ends", ends);
    values.put("trays", followed == null ? List.of() : followed.changedTrays());
    values.put("moved", moved(say, book, bookings));
    Map<String, String> fields = new HashMap<>();
    fields.put("booking", wanted.booking());
    fields.put("start", wanted.start());
    fields.put("chair", wanted.chair());
    fields.put("late", wanted.late());
    fields.put("now", wanted.now());
    values.put("fields", fields);
    templates.html(call, "day/effect.jte", values);
  }

  private static List<String> moved(Say say, DayBook book, List<Booking> bookings) {
    List<String> moved = new ArrayList<>();
    for (Booking b : bookings) {
      Booking was = book.booking(b.id()).orElse(b);
      if (!was.equals(b)) {
        moved.add(say.at("day.moved", b.id(), say.time(b.start()), say.time(b.end()), b.chair()));
      }
    }
    return moved;
  }

  private void move(Context call) {
    LocalDate date = DayPages.date(call);
    Wanted wanted = Wanted.of(call::formParam);
    DayBook book = service.books().read(date);
    Optional<DayService.Effect> effect = effect(book, wanted);
    if (effect.filter(DayService.Effect::possible).isEmpty()) {
      call.status(effect.isEmpty() ? HttpStatus.UNPROCESSABLE_CONTENT : HttpStatus.CONFLICT);
      tell(call, book, wanted, effect);
    } else if (service.apply(book, effect.get(), wanted.late().isEmpty() ? "moved" : "late")) {
      DayPages.back(call, date);
    } else {
      day.refuse(call, date, "day.changed-meanwhile");
    }
  }
}
