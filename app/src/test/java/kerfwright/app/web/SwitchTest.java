package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import kerfwright.app.security.OneTimeCodes;
import kerfwright.app.security.SignInService;
import kerfwright.app.security.Signed;
import kerfwright.app.storage.people.Accounts;
import kerfwright.app.storage.people.Authenticators;
import kerfwright.app.storage.people.Sessions;
import kerfwright.app.storage.people.Trail;
import kerfwright.practice.people.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** People take turns at a device: by one tap where they were there just now, else by their PIN. */
class SwitchTest {
  private static Staffed practice;

  @BeforeAll
  static void start() throws Exception {
    practice = new Staffed();
  }

  @AfterAll
  static void stop() {
    practice.close();
  }

  private static String id(Role role) {
    return practice.account(role).id().toString();
  }

  private static HttpResponse<String> tap(String device, Role role) throws Exception {
    return practice.post(device, "/switch", "person", id(role), "to", "/drawer");
  }

  private static String byPin(String device, Role role) throws Exception {
    return Staffed.cookie(
        practice.post(device, "/switch", "person", id(role), "pin", Staffed.PIN, "to", "/drawer"));
  }

  private static boolean asksForDigits(HttpResponse<String> answer) {
    return answer.statusCode() == 200
        && Staffed.cookie(answer).isEmpty()
        && answer.body().contains("name=\"pin\"");
  }

  @Test
  void whoWasHereJustNowComesBackByOneTap() throws Exception {
    String assistant = byPin(practice.device(Role.CLINICIAN), Role.ASSISTANT);
    String page = practice.get(assistant, "/switch?to=/drawer").body();
    assertTrue(page.contains("<b>CL</b> <small>one tap</small>"), page);
    assertTrue(page.contains("<b>OW</b> <small>with PIN</small>"), page);
    HttpResponse<String> answer = tap(assistant, Role.CLINICIAN);
    assertEquals("/drawer", Staffed.to(answer));
    String back = Staffed.cookie(answer);
    assertTrue(practice.get(back, "/drawer").body().contains("Account of CL"));
    assertEquals(303, practice.get(assistant, "/drawer").statusCode(), "the old token is over");
    Trail.Query taps =
        new Trail.Query("CL", "AS", Instant.EPOCH, Instant.parse("2200-01-01T00:00:00Z"));
    assertEquals(
        Trail.Act.SWITCHED,
        new Trail(practice.app.practice().database()).find(taps, 1).get(0).entry().act());
  }

  @Test
  void atAnotherDeviceTheDigitsAreAskedFor() throws Exception {
    practice.device(Role.CLINICIAN);
    assertTrue(asksForDigits(tap(practice.device(Role.ASSISTANT), Role.CLINICIAN)));
    assertTrue(asksForDigits(tap(practice.device(Role.ASSISTANT), Role.OWNER)));
  }

  @Test
  void aLockedDeviceIsOpenedByDigitsAlone() throws Exception {
    String device = byPin(practice.device(Role.CLINICIAN), Role.ASSISTANT);
    practice.post(device, "/lock");
    for (Role role : new Role[] {Role.CLINICIAN, Role.ASSISTANT}) {
      assertTrue(asksForDigits(practice.post(device, "/locked", "person", id(role))));
    }
    String open =
        Staffed.cookie(
            practice.post(device, "/locked", "person", id(Role.ASSISTANT), "pin", Staffed.PIN));
    assertTrue(asksForDigits(tap(open, Role.CLINICIAN)), "locking ended it");
  }

  @Test
  void aTapNeverLeadsToWhoMaySeeOrDoMore() throws Exception {
    String student = byPin(practice.device(Role.CLINICIAN), Role.STUDENT);
    assertTrue(asksForDigits(tap(student, Role.CLINICIAN)));
    String reader = byPin(practice.device(Role.ASSISTANT), Role.READ_ONLY);
    assertTrue(asksForDigits(tap(reader, Role.ASSISTANT)));
    String assistant = byPin(practice.device(Role.READ_ONLY), Role.ASSISTANT);
    assertEquals(303, tap(assistant, Role.READ_ONLY).statusCode());
  }

  @Test
  void settingsAndCorrectionsAskForTheDigitsOfWhoCameBackByATap() throws Exception {
    String back =
        Staffed.cookie(tap(byPin(practice.device(Role.CLINICIAN), Role.ASSISTANT), Role.CLINICIAN));
    assertEquals(200, practice.get(back, "/records").statusCode());
    HttpResponse<String> turned = practice.post(back, "/settings/look", "language", "en");
    assertEquals("/switch/" + id(Role.CLINICIAN), Staffed.to(turned));
    String proven = byPin(back, Role.CLINICIAN);
    HttpResponse<String> set = practice.post(proven, "/settings/look", "language", "en");
    assertTrue(set.statusCode() == 409 || Staffed.to(set).startsWith("/settings"), set.body());
  }

  @Test
  void wrongDigitsAtAnOpenDeviceEndItTooWhateverIsDoneBetween() throws Exception {
    String device = practice.device(Role.STUDENT);
    for (int i = 0; i < 5; i++) {
      practice.post(device, "/switch", "person", id(Role.OWNER), "pin", "9998");
      practice.get(device, "/drawer");
    }
    assertEquals("/sign-in?to=%2Fdrawer", Staffed.to(practice.get(device, "/drawer")));
  }

  /** A service whose clock is moved by hand. */
  private static final class AtHours {
    Duration holds = Duration.ofMinutes(5);
    final HandClock clock = new HandClock("2026-11-30T08:00:00Z");
    final OneTimeCodes codes =
        new OneTimeCodes(new Authenticators(practice.app.practice().database()), clock);
    final SignInService service =
        new SignInService(
            new Accounts(practice.app.practice().database()),
            new Sessions(practice.app.practice().database()),
            codes,
            () -> holds,
            clock);

    Signed signed(SignInService.Answer answer) {
      assertNotNull(answer.token());
      return service.who(answer.token()).orElseThrow();
    }

    /** The clinician was here; the assistant goes on. */
    Signed afterTheClinician() {
      Signed clinician = signed(service.begin(practice.account(Role.CLINICIAN)));
      return signed(
          service.turns().unlock(clinician, practice.account(Role.ASSISTANT).id(), Staffed.PIN));
    }
  }

  @Test
  void theMinutesAreThoseOfThePractice() {
    AtHours at = new AtHours();
    Signed soon = at.afterTheClinician();
    at.clock.forward(Duration.ofMinutes(4));
    SignInService.Answer back = at.service.turns().tap(soon, practice.account(Role.CLINICIAN).id());
    assertNotNull(back.token());
    Signed late = at.afterTheClinician();
    at.clock.forward(Duration.ofMinutes(5));
    assertNull(at.service.turns().tap(late, practice.account(Role.CLINICIAN).id()).token());
    at.holds = Duration.ZERO;
    Signed never = at.afterTheClinician();
    assertNull(at.service.turns().tap(never, practice.account(Role.CLINICIAN).id()).token());
  }

  @Test
  void afterTwelveHoursNoTapHelps() {
    AtHours at = new AtHours();
    Signed device = at.afterTheClinician();
    Role next = Role.CLINICIAN;
    Signed last = device;
    for (int i = 0; i < 180; i++) {
      at.clock.forward(Duration.ofMinutes(4));
      SignInService.Answer answer = at.service.turns().tap(last, practice.account(next).id());
      assertNotNull(answer.token());
      last = at.service.who(answer.token()).orElseThrow();
      next = next == Role.CLINICIAN ? Role.ASSISTANT : Role.CLINICIAN;
    }
    at.clock.forward(Duration.ofMinutes(1));
    SignInService.Answer over = at.service.turns().tap(last, practice.account(next).id());
    assertFalse(over.token() != null && at.service.who(over.token()).isPresent());
  }

  @Test
  void whoLeftOrGotANewCodeIsNotBackByATap() {
    AtHours at = new AtHours();
    Signed device = at.afterTheClinician();
    at.service.endAll(practice.account(Role.CLINICIAN));
    assertNull(at.service.turns().tap(device, practice.account(Role.CLINICIAN).id()).token());
  }
}
