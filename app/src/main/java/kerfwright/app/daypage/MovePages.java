package kerfwright.app.daypage;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kerfwright.app.form.Sent;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.DayChange;
import kerfwright.practice.daylist.DayFollowed;
import kerfwright.practice.daylist.DaySetting;
import kerfwright.practice.daylist.PlannedDay;
import org.jspecify.annotations.Nullable;

/** An appointment is moved or runs late: what that does, told before it is done. */
public record MovePages(DayPages day, DayService service, Templates templates) {
  private static final int LATEST_MIN = 240;

  void routes(JavalinConfig config) {
    config.routes.get("/day/{date}/move", this::effect, Access.CASES);
    config.routes.post("/day/{date}/move", this::move, Access.WORK);
  }

  /** A move or lateness as sent, from the address or the form. */
  public record Wanted(String booking, String start, String chair, String late, String now) {
    static Wanted of(Function<String, @Nullable String> field) {
      return new Wanted(
          DayPages.sent(field.apply("booking")),
          DayPages.sent(field.apply("start")),
          DayPages.sent(field.apply("chair")),
          DayPages.sent(field.apply("late")),
          DayPages.sent(field.apply("now")));
    }
  }

  private static Optional<LocalTime> time(String text) {
    return DaySetting.isTime(text) ? Optional.of(LocalTime.parse(text)) : Optional.empty();
  }

  /** The list with the wish fulfilled; empty where the wish cannot be understood. */
  private Optional<List<Booking>> changed(DayBook book, Wanted wanted, DaySetting setting) {
    Booking one = book.booking(wanted.booking()).orElse(null);
    if (one == null) {
      return Optional.empty();
    }
    if (!wanted.late().isEmpty()) {
      LocalTime now = time(wanted.now()).orElse(setting.opens());
      return Sent.whole(wanted.late())
          .filter(late -> late > 0 && late <= LATEST_MIN)
          .map(late -> DayChange.late(book.bookings(), one, late, now));
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
    DayFollowed followed = effect.map(DayService.Effect::followed).orElse(null);
    PlannedDay planned = followed == null ? null : followed.planned();
    List<Booking> bookings = effect.map(DayService.Effect::bookings).orElse(book.bookings());
    Map<String, Object> values = new HashMap<>();
    values.put("board", day.view(say, book.with(bookings, planned), planned, null));
    values.put("possible", effect.filter(DayService.Effect::possible).isPresent());
    values.put(
        "faults",
        effect
            .map(one -> FaultWords.of(say, one))
            .orElseGet(() -> List.of(say.at("day.not-understood"))));
    values.put("followed", followed);
    values.put(
        "moved", bookings.stream().filter(b -> !b.equals(book.booking(b.id()).orElse(b))).toList());
    values.put("wanted", wanted);
    templates.html(call, "day/effect.jte", values);
  }

  /** Never an error status: the answer is shown in place of the last one. */
  private void effect(Context call) {
    Wanted wanted = Wanted.of(call::queryParam);
    DayBook book = service.books().read(DayPages.date(call));
    tell(call, book, wanted, effect(book, wanted));
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
