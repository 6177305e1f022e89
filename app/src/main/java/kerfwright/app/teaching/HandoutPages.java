package kerfwright.app.teaching;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.Sent;
import kerfwright.app.print.OnePage;
import kerfwright.app.print.Paper;
import kerfwright.app.security.Access;
import kerfwright.app.storage.teaching.Handouts;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;
import kerfwright.practice.handout.Handout;

/** Handouts: made of anything that is shown, with the practice's own words, kept and printed. */
record HandoutPages(
    Sheets sheets, Handouts handouts, Supplier<UUID> ids, Templates templates, Clock clock)
    implements Feature {
  private static final int LISTED = 200;
  private static final int LONGEST_TITLE = 120;
  private static final int LONGEST_WORDS = 2_000;
  private static final int LONGEST_SUBJECT = 6_000;

  /** Size of letters in points, from large to small; pictures shrink with them. */
  private static final List<Double> SIZES = List.of(11.5, 10.5, 9.5, 8.5, 7.5, 6.8, 6.0);

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/teach/handouts", this::list, Access.CASES);
    config.routes.get("/teach/handouts/new", this::fresh, Access.CASES);
    config.routes.post("/teach/handouts", this::keep, Access.WORK);
    config.routes.get("/teach/handouts/{id}", this::page, Access.CASES);
    config.routes.get("/teach/handouts/{id}/pdf", this::pdf, Access.CASES);
  }

  @Override
  public List<String> pages() {
    return List.of("/teach/handouts");
  }

  private void list(Context call) {
    templates.html(call, "teaching/handouts.jte", Map.of("found", handouts.newest(LISTED)));
  }

  /** One that is not kept yet: version 0. */
  private void fresh(Context call) {
    String subject = ShowPages.typed(call, "of");
    Say say = templates.say(call);
    Sheet sheet = sheet(say, subject);
    Handout draft = new Handout(ids.get(), 0, Instant.EPOCH, subject, sheet.title(), "");
    show(call, draft, sheet, "");
  }

  private void page(Context call) {
    Handout kept = kept(call);
    show(call, kept, sheet(templates.say(call), kept.subject()), "");
  }

  private void show(Context call, Handout handout, Sheet sheet, String fault) {
    templates.html(
        call, "teaching/handout.jte", Map.of("handout", handout, "sheet", sheet, "fault", fault));
  }

  private void keep(Context call) {
    Say say = templates.say(call);
    UUID id = Sent.id(Sent.text(call, "id")).orElseThrow(NotFoundResponse::new);
    Handout before = handouts.find(id).orElse(null);
    String subject = before == null ? Sent.text(call, "of") : before.subject();
    String title = Sent.text(call, "title");
    String words = Sent.text(call, "words").replace("\r\n", "\n");
    Sheet sheet = sheet(say, subject);
    int version = before == null ? 0 : before.version();
    Handout next = new Handout(id, version + 1, now(), subject, title, words);
    String fault =
        title.isEmpty() || title.length() > LONGEST_TITLE
            ? say.at("teaching.fault-title", LONGEST_TITLE)
            : words.length() > LONGEST_WORDS
                ? say.at("teaching.fault-words", LONGEST_WORDS)
                : Sent.version(call) != version || !handouts.keep(next)
                    ? say.at("teaching.fault-changed")
                    : "";
    if (fault.isEmpty()) {
      call.redirect("/teach/handouts/" + id, HttpStatus.SEE_OTHER);
      return;
    }
    call.status(HttpStatus.UNPROCESSABLE_CONTENT);
    // what was typed stays; the version is the one now kept, so that it can be kept on top
    show(call, new Handout(id, version, now(), subject, title, words), sheet, fault);
  }

  private void pdf(Context call) {
    Handout kept = kept(call);
    Say say = templates.say(call);
    Sheet sheet = sheet(say, kept.subject());
    byte[] pdf = OnePage.pdf(SIZES, size -> document(say, kept, sheet, size));
    call.contentType("application/pdf")
        .header("Content-Disposition", "inline; filename=\"handout.pdf\"")
        .result(pdf);
  }

  private static String document(Say say, Handout kept, Sheet sheet, double size) {
    double share = size / SIZES.get(0);
    List<Sheet.Picture> sized =
        sheet.pictures().stream()
            .map(
                one ->
                    new Sheet.Picture(
                        Paper.drawing(one.svg(), share * scale(sheet)), one.caption()))
            .toList();
    return Templates.render(
        say,
        "teaching/handout-print.jte",
        Map.of("handout", kept, "sheet", sheet, "pictures", sized, "size", size));
  }

  /** Lectures are drawn large; on paper two stand beside each other. */
  private static double scale(Sheet sheet) {
    boolean large = sheet.pictures().stream().anyMatch(one -> one.svg().contains("width=\"600\""));
    return large ? 0.52 : 0.8;
  }

  private Handout kept(Context call) {
    return Sent.id(call.pathParam("id")).flatMap(handouts::find).orElseThrow(NotFoundResponse::new);
  }

  private Sheet sheet(Say say, String subject) {
    if (subject.length() > LONGEST_SUBJECT) {
      throw new NotFoundResponse();
    }
    return sheets.of(say, subject).orElseThrow(NotFoundResponse::new);
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MICROS);
  }
}
