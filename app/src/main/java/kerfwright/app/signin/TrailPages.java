package kerfwright.app.signin;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import kerfwright.app.feature.Feature;
import kerfwright.app.form.CellText;
import kerfwright.app.form.Day;
import kerfwright.app.security.Access;
import kerfwright.app.storage.people.Accounts;
import kerfwright.app.storage.people.Trail;
import kerfwright.app.template.Templates;
import kerfwright.practice.people.Account;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Who saw, exported and changed what: searched, checked, handed out; to the owner alone. */
public record TrailPages(Trail trail, Accounts accounts, Templates templates, Clock clock)
    implements Feature {
  private static final int SHOWN = 200;
  private static final Instant EVER = Instant.parse("2200-01-01T00:00:00Z");

  private static final Pattern ID = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

  @Override
  public void routes(JavalinConfig config) {
    config.routes.get("/trail", this::show, Access.OWN);
    config.routes.get("/trail.csv", this::csv, Access.OWN);
  }

  @Override
  public List<String> pages() {
    return List.of("/trail");
  }

  private void show(Context call) {
    String who = typed(call, "who").toUpperCase(Locale.ROOT);
    String what = typed(call, "what");
    Trail.Query query =
        new Trail.Query(
            who,
            what,
            Day.of(typed(call, "from")).map(this::begin).orElse(Instant.EPOCH),
            Day.of(typed(call, "until")).map(one -> begin(one.plusDays(1))).orElse(EVER));
    Map<String, Object> values = new HashMap<>();
    values.put("lines", trail.find(query, SHOWN));
    values.put("most", SHOWN);
    values.put("plain", plain());
    values.put("who", who);
    values.put("what", what);
    values.put("from", typed(call, "from"));
    values.put("until", typed(call, "until"));
    values.put(
        "check", call.queryParam("check") == null ? Optional.empty() : Optional.of(trail.check()));
    templates.html(call, "signin/trail.jte", values);
  }

  /** A line as it is read: people by their initials, and without the verb of the web. */
  private UnaryOperator<String> plain() {
    Map<String, String> initials =
        accounts.all().stream()
            .collect(Collectors.toMap(one -> one.id().toString(), Account::initials));
    return what ->
        ID.matcher(what.replaceFirst("^(GET|POST) ", ""))
            .replaceAll(one -> initials.getOrDefault(one.group(), one.group()));
  }

  private static String typed(Context call, String name) {
    String value = call.queryParam(name);
    return value == null ? "" : value.strip();
  }

  private Instant begin(LocalDate day) {
    return day.atStartOfDay(clock.getZone()).toInstant();
  }

  private void csv(Context call) {
    StringWriter text = new StringWriter();
    try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
      csv.printRecord("number", "at", "who", "act", "what", "sha256");
      trail.walk(
          line -> {
            Trail.Entry one = line.entry();
            try {
              csv.printRecord(
                  line.number(),
                  one.at(),
                  CellText.of(one.who()),
                  one.act().id(),
                  CellText.of(one.what()),
                  line.hash());
            } catch (IOException never) {
              throw new UncheckedIOException(never);
            }
          });
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    call.header("Content-Disposition", "attachment; filename=\"trail.csv\"");
    call.contentType("text/csv; charset=utf-8").result(text.toString());
  }
}
