package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.UUID;
import kerfwright.app.security.OneTimeCodes;
import kerfwright.app.security.SignInService;
import kerfwright.app.security.Signed;
import kerfwright.app.security.Turns;
import kerfwright.app.storage.people.Authenticators;
import kerfwright.app.storage.people.Sessions;
import kerfwright.practice.people.Role;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Where people take turns: the code once at each device, digits and taps in between. */
class CodeAtDevicesTest {
  private static final String ADDRESS = "192.0.2.7";
  private final HandClock clock = new HandClock("2026-11-30T08:00:00Z");
  private Staffed practice;
  private SignInService service;
  private OneTimeCodes codes;
  private String ofClinician;
  private String ofAssistant;

  @BeforeEach
  void clinicianAndAssistantAreAskedForCodes() throws Exception {
    practice = new Staffed();
    codes = new OneTimeCodes(new Authenticators(practice.app.practice().database()), clock);
    service =
        new SignInService(
            practice.service.accounts(),
            new Sessions(practice.app.practice().database()),
            codes,
            () -> Duration.ofMinutes(5),
            clock);
    ofClinician = switchOn(Role.CLINICIAN);
    ofAssistant = switchOn(Role.ASSISTANT);
  }

  @AfterEach
  void stop() {
    practice.close();
  }

  private String switchOn(Role role) {
    codes.begin(id(role));
    String secret = codes.begun(id(role)).orElseThrow();
    assertEquals(10, codes.switchOn(id(role), OneTimeCodes.at(secret, clock.instant())).size());
    clock.forward(Duration.ofSeconds(30));
    return secret;
  }

  private UUID id(Role role) {
    return practice.account(role).id();
  }

  private Signed signed(SignInService.Answer answer) {
    assertNotNull(answer.token());
    return service.who(answer.token()).orElseThrow();
  }

  private Signed owner() {
    return signed(service.begin(practice.account(Role.OWNER)));
  }

  private SignInService.Answer byPin(Signed device, Role role) {
    return service.turns().unlock(device, id(role), Staffed.PIN);
  }

  private SignInService.Answer whole(Signed device, Role role, String secret) {
    clock.forward(Duration.ofSeconds(30));
    String code = OneTimeCodes.at(secret, clock.instant());
    return service.turns().arrive(device, id(role), Staffed.PASSWORD, code, ADDRESS);
  }

  private Turns.Seat seat(Signed device, Role role) {
    return service.turns().seats(device).stream()
        .filter(one -> one.account().id().equals(id(role)))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void atADeviceNewToThemDigitsAreNotEnough() {
    Signed owner = owner();
    assertTrue(seat(owner, Role.CLINICIAN).whole());
    assertNull(byPin(owner, Role.CLINICIAN).token());
    assertNull(service.turns().tap(owner, id(Role.CLINICIAN)).token());
    String code = OneTimeCodes.at(ofClinician, clock.instant());
    Turns turns = service.turns();
    assertNull(turns.arrive(owner, id(Role.CLINICIAN), "not this one", code, ADDRESS).token());
    assertNull(turns.arrive(owner, id(Role.CLINICIAN), Staffed.PASSWORD, "", ADDRESS).token());
    assertNotNull(whole(owner, Role.CLINICIAN, ofClinician).token());
    assertNull(byPin(owner(), Role.CLINICIAN).token(), "another device");
  }

  @Test
  void afterThatPeopleTakeTurnsByDigitsAndTapsAllDay() {
    Signed device = signed(whole(owner(), Role.CLINICIAN, ofClinician));
    device = signed(whole(device, Role.ASSISTANT, ofAssistant));
    device = signed(service.turns().tap(device, id(Role.CLINICIAN)));
    for (int hour = 0; hour < 11; hour++) {
      clock.forward(Duration.ofMinutes(60));
      service.turns().lock(device);
      device = signed(byPin(device, Role.ASSISTANT));
      device = signed(byPin(device, Role.CLINICIAN));
    }
  }

  @Test
  void afterTwelveHoursItIsAskedForAgain() {
    Signed device = signed(whole(owner(), Role.CLINICIAN, ofClinician));
    clock.forward(Duration.ofHours(6));
    device = signed(whole(device, Role.ASSISTANT, ofAssistant));
    assertNotNull(byPin(device, Role.CLINICIAN).token());
    device = signed(whole(owner(), Role.CLINICIAN, ofClinician));
    clock.forward(Duration.ofHours(6));
    device = signed(whole(device, Role.ASSISTANT, ofAssistant));
    clock.forward(Duration.ofHours(6));
    assertNull(byPin(device, Role.CLINICIAN).token(), "somebody else's password does not renew it");
    assertNotNull(byPin(device, Role.ASSISTANT).token());
  }

  @Test
  void thePasswordOnceMoreDoesNotLengthenWhatTheCodeBegan() {
    Signed device = signed(whole(owner(), Role.CLINICIAN, ofClinician));
    clock.forward(Duration.ofHours(11));
    Signed confirmed = signed(service.confirm(device, Staffed.PASSWORD, ADDRESS));
    assertEquals(device.session().begun(), confirmed.session().begun());
    clock.forward(Duration.ofHours(1).plusSeconds(1));
    assertNull(byPin(confirmed, Role.CLINICIAN).token());
  }

  @Test
  void aNewPasswordLeavesTheDeviceItWasChosenAtKnown() {
    Signed device = signed(whole(owner(), Role.CLINICIAN, ofClinician));
    assertTrue(service.choose(device, "nine quiet herons on a roof", Staffed.PIN));
    assertNotNull(byPin(device, Role.CLINICIAN).token());
  }

  @Test
  void aCodeThatComesAfterFiveMinutesIsTooLate() {
    for (int minutes : List.of(4, 5)) {
      String half = service.signIn("CL", Staffed.PASSWORD, ADDRESS).half();
      assertNotNull(half);
      clock.forward(Duration.ofMinutes(minutes));
      String code = OneTimeCodes.at(ofClinician, clock.instant());
      assertEquals(minutes < 5, service.code(half, code, ADDRESS).token() != null);
    }
  }
}
