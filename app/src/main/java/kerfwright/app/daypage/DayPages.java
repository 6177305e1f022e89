package kerfwright.app.daypage;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerfwright.app.drawer.MoveNotice;
import kerfwright.app.drawer.RefusalWords;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Day;
import kerfwright.app.form.Sent;
import kerfwright.app.input.BadInput;
import kerfwright.app.kept.Sitting;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.daylist.Booking;
import kerfwright.practice.daylist.DayBook;
import kerfwright.practice.daylist.PieceCount;
import kerfwright.practice.daylist.PlannedDay;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.kept.KeptCases;
import kerfwright.practice.restock.PurchaseRequest;
import kerfwright.practice.restock.PurchaseRequests;
import kerfwright.schedule.InstrumentRef;
import kerfwright.schedule.InvalidDayException;
import kerfwright.schedule.remedy.Remedy;
import org.jspecify.annotations.Nullable;

/** The page of a day, and what can be done on it. */
record DayPages(
    DayService service,
    PurchaseRequests requests,
    TypeWords types,
    KeptCases cases,
    Templates templates)
    implements Feature {
  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/day", call -> call.redirect("/day/" + service.today()), Access.CASES);
    config.routes.get("/day/{date}", call -> show(call, date(call), ""), Access.CASES);
    config.routes.get("/day/{date}/tray", this::tray, Access.CASES);
    config.routes.get("/day/{date}/board", this::board, Access.CASES);
    new MovePages(this, service, templates).routes(config);
    config.routes.post("/day/{date}/plan", this::plan, Access.WORK);
    config.routes.post("/day/{date}/stop", this::stop, Access.WORK);
    config.routes.post("/day/{date}/remedy", this::remedy, Access.WORK);
    config.routes.post("/day/{date}/buy", this::buy, Access.WORK);
    config.routes.post("/day/{date}/laid", this::laid, Access.WORK);
    config.routes.post("/day/{date}/undo", this::undo, Access.WORK);
  }

  @Override
  public List<String> pages() {
    return List.of("/day/" + service.today());
  }

  static LocalDate date(Context call) {
    String text = call.pathParam("date");
    return Day.of(text).orElseThrow(() -> new NotFoundResponse(text));
  }

  private DayView look(Context call, LocalDate date) {
    DayBook book = service.books().read(date);
    DayJob.State job = service.job(date).orElse(null);
    PlannedDay kept = book.planned();
    boolean best = job != null && job.planned() != null && (job.running() || kept == null);
    PlannedDay shown = best && job != null ? job.planned() : kept;
    return view(templates.say(call), book, shown, job);
  }

  DayView view(Say say, DayBook book, @Nullable PlannedDay shown, DayJob.@Nullable State job) {
    return new DayView(
        say,
        book,
        shown,
        job,
        service.setting(),
        service.nowMin(book.date()),
        type -> types.brief(say, type),
        Set.copyOf(requests.all()));
  }

  void show(Context call, LocalDate date, String notice) {
    show(call, date, notice, List.of());
  }

  private void show(Context call, LocalDate date, String notice, List<MoveNotice.Line> lines) {
    DayView board = look(call, date);
    templates.html(
        call,
        "day/day.jte",
        Map.of(
            "board", board,
            "notice", notice,
            "lines", lines,
            "today", service.today(),
            "beside", beside(board.book(), board.book().bookings())));
  }

  /** What is needed beside what the plan of the day finds. */
  private List<PieceCount> beside(DayBook book, List<Booking> bookings) {
    PlannedDay planned = book.planned();
    return PieceCount.of(
        bookings.stream()
            .map(
                one ->
                    one.pieces().stream()
                        .filter(need -> planned == null || !need.scheduledOn(planned, one.id()))
                        .toList())
            .toList(),
        service.drawer());
  }

  private void tray(Context call) {
    LocalDate date = date(call);
    DayView board = look(call, date);
    String id = sent(call.queryParam("id"));
    Booking booking =
        board.book().booking(id).orElseThrow(() -> new NotFoundResponse("no appointment " + id));
    Tray tray = Tray.of(booking, board.shown());
    Map<InstrumentRef, StockItem> items = new HashMap<>();
    for (InstrumentRef piece : tray.pieces()) {
      String label = PlannedDay.itemLabel(board.label(piece));
      service.drawer().labelled(label).ifPresent(item -> items.put(piece, item));
    }
    templates.html(
        call,
        "day/tray.jte",
        Map.of(
            "board", board,
            "tray", tray,
            "items", items,
            "cases", Sitting.of(cases, booking.caseText()),
            "beside", beside(board.book(), List.of(booking))));
  }

  private void board(Context call) {
    templates.html(call, "day/board.jte", Map.of("board", look(call, date(call))));
  }

  private void plan(Context call) {
    LocalDate date = date(call);
    try {
      if (!service.books().read(date).bookings().isEmpty()) {
        service.plan(date);
      }
      back(call, date);
    } catch (BadInput bad) {
      refuse(call, date, "day.case-refused");
    } catch (InvalidDayException invalid) {
      refuse(call, date, "day.list-impossible");
    }
  }

  private void stop(Context call) {
    service.stop(date(call));
    back(call, date(call));
  }

  static void back(Context call, LocalDate date) {
    call.redirect("/day/" + date, HttpStatus.SEE_OTHER);
  }

  private void undo(Context call) {
    LocalDate date = date(call);
    Optional<DayMoves.Done> done = service.undo(date);
    if (done.isPresent()) {
      answer(call, date, done.get(), "day.not-undone");
    } else {
      refuse(call, date, "day.nothing-to-undo");
    }
  }

  void refuse(Context call, LocalDate date, String why) {
    call.status(HttpStatus.CONFLICT);
    show(call, date, why);
  }

  /** The remedy a button stands at; empty where the day has another plan by now. */
  private Optional<Remedy> chosen(Context call) {
    PlannedDay planned = service.books().read(date(call)).planned();
    return planned == null
        ? Optional.empty()
        : Sent.whole(call.formParam("remedy"))
            .filter(index -> index < planned.remedies().size())
            .map(index -> planned.remedies().get(index).remedy());
  }

  private void remedy(Context call) {
    LocalDate date = date(call);
    if (chosen(call).filter(one -> service.take(date, one)).isPresent()) {
      back(call, date);
    } else {
      refuse(call, date, "day.remedy-gone");
    }
  }

  /** Puts what a remedy wants bought on the order list. */
  private void buy(Context call) {
    LocalDate date = date(call);
    if (chosen(call).orElse(null) instanceof Remedy.BuyMore more) {
      requests.keep(new PurchaseRequest(more.type(), date, more.pieces()));
      back(call, date);
    } else {
      refuse(call, date, "day.remedy-gone");
    }
  }

  private void laid(Context call) {
    LocalDate date = date(call);
    DayBook book = service.books().read(date);
    PlannedDay planned = book.planned();
    String id = Sent.text(call, "booking");
    Optional<Booking> booking = book.booking(id);
    if (planned == null || booking.isEmpty()) {
      refuse(call, date, "day.changed-meanwhile");
      return;
    }
    answer(call, date, service.lay(book, planned, booking.get()), "day.not-laid");
  }

  private void answer(Context call, LocalDate date, DayMoves.Done done, String refused) {
    if (done.written()) {
      back(call, date);
    } else if (done.obstacles().isEmpty()) {
      refuse(call, date, "day.changed-meanwhile");
    } else {
      call.status(HttpStatus.CONFLICT);
      Say say = templates.say(call);
      show(
          call,
          date,
          refused,
          done.obstacles().stream().map(one -> RefusalWords.line(say, one)).toList());
    }
  }

  static String sent(@Nullable String value) {
    return value == null ? "" : value.strip();
  }
}
