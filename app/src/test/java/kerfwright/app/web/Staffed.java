package kerfwright.app.web;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.UUID;
import kerfwright.app.input.BadInput;
import kerfwright.app.security.Doors;
import kerfwright.app.security.OneTimeCodes;
import kerfwright.app.security.PasswordHash;
import kerfwright.app.security.SignInService;
import kerfwright.app.storage.people.Accounts;
import kerfwright.app.storage.people.Authenticators;
import kerfwright.app.storage.people.Sessions;
import kerfwright.practice.people.Account;
import kerfwright.practice.people.Role;

/** A practice that people sign in to: one of each role, all with the same password and digits. */
final class Staffed implements AutoCloseable {
  static final String PASSWORD = "velvet anvil under seven lamps";
  static final String PIN = "4071";
  static final String START = "a-start-token-of-the-tests-that-nobody-guesses";
  private static final Map<Role, String> INITIALS =
      Map.of(
          Role.OWNER, "OW",
          Role.CLINICIAN, "CL",
          Role.ASSISTANT, "AS",
          Role.STUDENT, "ST",
          Role.READ_ONLY, "RO");

  final Served app;
  final SignInService service;
  final OneTimeCodes codes;
  private final Map<Role, Account> people = new EnumMap<>(Role.class);

  Staffed() throws BadInput {
    this.app = new Served(true, Doors.here(START), null);
    Accounts accounts = new Accounts(app.practice().database());
    this.codes = new OneTimeCodes(new Authenticators(app.practice().database()), Clock.systemUTC());
    this.service =
        new SignInService(
            accounts,
            new Sessions(app.practice().database()),
            codes,
            () -> Duration.ofMinutes(5),
            Clock.systemUTC());
    String password = PasswordHash.of(PASSWORD);
    String pin = PasswordHash.of(PIN);
    for (Role role : Role.values()) {
      Account account =
          new Account(UUID.randomUUID(), 1, INITIALS.get(role), role, true, password, pin, null);
      accounts.add(account);
      people.put(role, account);
      int version = app.practice().settings().read().version();
      role.usual()
          .ifPresent(
              does ->
                  app.practice()
                      .settings()
                      .write(version, Map.of("person." + account.initials(), does.id())));
    }
  }

  Account account(Role role) {
    return people.get(role);
  }

  /** A device somebody of this role is signed in on: its cookie. */
  String device(Role role) {
    return "kerfwright=" + service.begin(people.get(role)).token();
  }

  HttpResponse<String> send(String cookie, String method, String path, String body)
      throws IOException, InterruptedException {
    return app.send(
        HttpRequest.newBuilder(URI.create(app.address(path)))
            .header("Cookie", cookie)
            .header("Origin", app.address(""))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .method(
                method,
                method.equals("GET")
                    ? HttpRequest.BodyPublishers.noBody()
                    : HttpRequest.BodyPublishers.ofString(body))
            .build());
  }

  HttpResponse<String> get(String cookie, String path) throws IOException, InterruptedException {
    return send(cookie, "GET", path, "");
  }

  /** Sends a form: names and values in turn. */
  HttpResponse<String> post(String cookie, String path, String... fields)
      throws IOException, InterruptedException {
    StringBuilder body = new StringBuilder();
    for (int i = 0; i < fields.length; i += 2) {
      body.append(i == 0 ? "" : "&").append(fields[i]).append('=');
      body.append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
    }
    return send(cookie, "POST", path, body.toString());
  }

  static String to(HttpResponse<String> answer) {
    return answer.headers().firstValue("Location").orElse("");
  }

  /** The cookie an answer sets for the session. */
  static String cookie(HttpResponse<String> answer) {
    return answer.headers().allValues("Set-Cookie").stream()
        .filter(one -> one.startsWith("kerfwright="))
        .map(one -> one.split(";")[0])
        .findFirst()
        .orElse("");
  }

  @Override
  public void close() {
    app.close();
  }
}
