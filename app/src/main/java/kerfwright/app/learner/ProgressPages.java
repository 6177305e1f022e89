package kerfwright.app.learner;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.CellText;
import kerfwright.app.security.Access;
import kerfwright.app.template.Templates;
import kerfwright.practice.teaching.Alias;
import kerfwright.practice.teaching.Given;
import kerfwright.practice.teaching.Tally;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Progress over sets under an alias, and every answer as a list for a spreadsheet. */
record ProgressPages(LearnerPages.Parts with, Templates templates) implements Feature {
  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/learn/progress", this::page, Access.SEE);
    config.routes.post("/learn/progress/forget", this::forget, Access.WORK);
    config.routes.get("/learn/answers.csv", this::csv, Access.WORK);
  }

  @Override
  public List<String> pages() {
    return List.of("/learn/progress");
  }

  private static String alias(Context call) {
    return Alias.of(call.queryParam("alias")).orElse("");
  }

  private void page(Context call) {
    String alias = alias(call);
    List<Given> answers = alias.isEmpty() ? List.of() : with.lessons().answers(alias);
    Map<String, Object> values = new HashMap<>();
    values.put("alias", alias);
    values.put("aliases", with.lessons().aliases());
    values.put("sets", Tally.by(answers, Given::set));
    values.put("topics", Tally.by(answers, Given::topic));
    values.put("asking", call.queryParam("forget") != null && !alias.isEmpty());
    templates.html(call, "learner/progress.jte", values);
  }

  private void forget(Context call) {
    Alias.of(call.formParam("alias")).ifPresent(with.lessons()::forget);
    call.redirect("/learn/progress", HttpStatus.SEE_OTHER);
  }

  private void csv(Context call) {
    StringBuilder text = new StringBuilder();
    try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
      csv.printRecord("alias", "set", "time", "number", "topic", "kind", "answer", "right");
      for (Given one : with.lessons().answers(alias(call))) {
        csv.printRecord(
            CellText.of(one.alias()),
            one.set(),
            one.at(),
            one.number(),
            CellText.of(one.topic()),
            CellText.of(one.kind()),
            QuestionWords.letter(one.option()),
            one.right() ? "yes" : "no");
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    call.header("Content-Disposition", "attachment; filename=\"answers.csv\"");
    call.contentType("text/csv; charset=utf-8").result(text.toString());
  }
}
