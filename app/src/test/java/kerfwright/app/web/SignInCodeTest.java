package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.app.security.OneTimeCodes;
import kerfwright.app.storage.people.Trail;
import kerfwright.practice.people.Role;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A code of an app after the password. */
class SignInCodeTest {
  private static final int STEP_S = 30;
  private Staffed practice;
  private UUID clinician;
  private String secret;
  private String firstCode;
  private List<String> standIns;

  @BeforeEach
  void theClinicianIsAskedForCodes() throws Exception {
    practice = new Staffed();
    clinician = practice.account(Role.CLINICIAN).id();
    practice.codes.begin(clinician);
    secret = practice.codes.begun(clinician).orElseThrow();
    firstCode = code(0);
    standIns = practice.codes.switchOn(clinician, firstCode);
  }

  @AfterEach
  void stop() {
    practice.close();
  }

  /** What the app shows so many steps from now. */
  private String code(int steps) {
    return OneTimeCodes.at(secret, Instant.now().plusSeconds((long) steps * STEP_S));
  }

  private String wrongCode() {
    List<String> right = List.of(code(-2), code(-1), code(0), code(1), code(2));
    return List.of("000000", "111111", "222222", "333333", "444444", "555555").stream()
        .filter(one -> !right.contains(one))
        .findFirst()
        .orElseThrow();
  }

  private HttpResponse<String> password(String initials) throws Exception {
    return practice.post(
        "theme=auto",
        "/sign-in",
        "initials",
        initials,
        "password",
        Staffed.PASSWORD,
        "to",
        "/drawer");
  }

  /** What stands for the password while the code is still to come. */
  private static String half(HttpResponse<String> answer) {
    Matcher half = Pattern.compile("name=\"half\" value=\"([^\"]+)\"").matcher(answer.body());
    assertTrue(half.find(), answer.statusCode() + " " + answer.body());
    return half.group(1);
  }

  private HttpResponse<String> then(String half, String code) throws Exception {
    return practice.post("theme=auto", "/sign-in", "half", half, "code", code, "to", "/drawer");
  }

  private List<String> trail(String who) {
    List<String> lines = new ArrayList<>();
    new Trail(practice.app.practice().database())
        .walk(
            one -> {
              if (one.entry().who().equals(who)) {
                lines.add(one.entry().act().id() + " " + one.entry().what());
              }
            });
    return lines;
  }

  @Test
  void aCodeIsAskedForAfterThePasswordAndTakenOnce() throws Exception {
    HttpResponse<String> first = password("cl");
    assertEquals(200, first.statusCode());
    assertEquals("", Staffed.cookie(first), "the password alone opens nothing");
    String half = half(first);
    HttpResponse<String> wrong = then(half, firstCode);
    assertEquals(401, wrong.statusCode(), "used up by the switching on");
    assertEquals("", Staffed.cookie(wrong));
    half = half(wrong);
    String code = code(1);
    HttpResponse<String> let = then(half, code);
    assertEquals("/drawer", Staffed.to(let));
    assertTrue(practice.get(Staffed.cookie(let), "/drawer").body().contains("Account of CL"));
    assertEquals(401, then(half, code).statusCode(), "what stood for the password is used up");
    HttpResponse<String> replay = then(half(password("CL")), code);
    assertEquals(401, replay.statusCode(), "and so is the code");
    assertEquals("", Staffed.cookie(replay));
    assertEquals(
        List.of(
            "sign-in-refused 127.0.0.1 code",
            "signed-in 127.0.0.1",
            "sign-in-refused 127.0.0.1 code"),
        trail("CL"));
    assertEquals(303, password("AS").statusCode(), "nobody else is asked");
  }

  @Test
  void wrongCodesSlowThatPersonThereAndNobodyElse() throws Exception {
    int slowed = 0;
    for (int i = 0; i < 4; i++) {
      HttpResponse<String> answer = password("CL");
      if (answer.statusCode() == 200) {
        answer = then(half(answer), wrongCode());
      }
      slowed += answer.statusCode() == 429 ? 1 : 0;
    }
    assertTrue(slowed > 0, "the right password does not begin the count anew");
    assertEquals(303, password("AS").statusCode());
    assertNotEquals(null, practice.service.signIn("CL", Staffed.PASSWORD, "192.0.2.7").half());
  }

  @Test
  void whatStandsForThePasswordOpensNothingByItself() throws Exception {
    String half = half(password("CL"));
    assertEquals(
        "/sign-in?to=%2Fdrawer", Staffed.to(practice.get("kerfwright=" + half, "/drawer")));
    assertEquals(401, then(half, "").statusCode());
    practice.service.endAll(practice.account(Role.CLINICIAN));
    assertEquals(401, then(half, code(1)).statusCode(), "a new password ends it");
  }

  @Test
  void aRecoveryCodeStandsInOnce() throws Exception {
    HttpResponse<String> let = then(half(password("CL")), standIns.get(3));
    assertEquals("/drawer", Staffed.to(let));
    assertEquals(401, then(half(password("CL")), standIns.get(3)).statusCode());
  }

  @Test
  void digitsSentFromAnOldPageAreAnsweredByWhatIsAskedFor() throws Exception {
    String device = practice.device(Role.ASSISTANT);
    HttpResponse<String> answer =
        practice.post(device, "/switch", "person", clinician.toString(), "pin", Staffed.PIN);
    assertEquals(200, answer.statusCode());
    assertTrue(answer.body().contains("Password and code of CL"), answer.body());
    assertFalse(answer.body().contains("role=\"alert\""), "nothing was wrong");
    HttpResponse<String> whole =
        practice.post(
            device,
            "/switch",
            "person",
            clinician.toString(),
            "password",
            Staffed.PASSWORD,
            "code",
            code(1),
            "to",
            "/drawer");
    assertEquals("/drawer", Staffed.to(whole));
    assertTrue(practice.get(Staffed.cookie(whole), "/drawer").body().contains("Account of CL"));
  }

  @Test
  void theOwnerSwitchesItOffForSomebodyAndTheTrailHasIt() throws Exception {
    String device = practice.device(Role.CLINICIAN);
    String path = "/people/" + clinician + "/no-code";
    assertEquals(403, practice.post(device, path).statusCode());
    String owner = practice.device(Role.OWNER);
    assertTrue(practice.get(owner, "/people").body().contains(path));
    assertEquals("/people?done=1", Staffed.to(practice.post(owner, path)));
    assertFalse(practice.get(owner, "/people").body().contains(path));
    assertEquals(303, practice.get(device, "/drawer").statusCode(), "their devices are signed out");
    assertEquals(303, password("CL").statusCode());
    assertTrue(trail("OW").contains("changed POST " + path), trail("OW").toString());
  }

  @Test
  void aNewPasswordFromTheOwnerDoesNotLeadPastTheCode() throws Exception {
    HttpResponse<String> shown =
        practice.post(
            practice.device(Role.OWNER), "/people/" + clinician + "/code", "version", "1");
    Matcher handed = Pattern.compile("class=\"secret\">([A-Z0-9-]+)<").matcher(shown.body());
    assertTrue(handed.find(), shown.body());
    HttpResponse<String> answer =
        practice.post("theme=auto", "/sign-in", "initials", "CL", "password", handed.group(1));
    assertEquals("", Staffed.cookie(answer));
    String device = Staffed.cookie(then(half(answer), code(1)));
    assertTrue(Staffed.to(practice.get(device, "/drawer")).startsWith("/account"));
  }

  @Test
  void eachSwitchesItOnAndOffForThemselvesAfterThePassword() throws Exception {
    String elsewhere = practice.device(Role.ASSISTANT);
    String device = practice.device(Role.ASSISTANT);
    practice.post(device, "/account/code/begin");
    String page = practice.get(device, "/account/code").body();
    Matcher key = Pattern.compile("class=\"secret\">([A-Z2-7 ]+)<").matcher(page);
    assertTrue(key.find(), page);
    secret = key.group(1).replace(" ", "");
    assertEquals(422, practice.post(device, "/account/code/on", "code", wrongCode()).statusCode());
    String shown = practice.post(device, "/account/code/on", "code", code(0)).body();
    assertEquals(10, Pattern.compile("<li class=\"secret\">").matcher(shown).results().count());
    page = practice.get(device, "/account/code").body();
    assertFalse(page.contains("class=\"secret\""), "neither the key nor the codes once more");
    assertEquals(303, practice.get(elsewhere, "/drawer").statusCode(), "others are signed out");
    half(password("AS"));
    // the screen was locked meanwhile: digits do not lead to it
    practice.post(device, "/lock");
    String person = practice.account(Role.ASSISTANT).id().toString();
    String again =
        Staffed.cookie(practice.post(device, "/locked", "person", person, "pin", Staffed.PIN));
    assertEquals("/confirm?to=%2Faccount%2Fcode", Staffed.to(practice.get(again, "/account/code")));
    assertEquals("/confirm", Staffed.to(practice.post(again, "/account/code/off")));
    String confirmed =
        Staffed.cookie(practice.post(again, "/confirm", "password", Staffed.PASSWORD));
    assertEquals(
        422, practice.post(confirmed, "/account/code/off", "code", wrongCode()).statusCode());
    half(password("AS"));
    String other = practice.device(Role.ASSISTANT);
    practice.post(confirmed, "/account/code/off", "code", code(1));
    assertEquals(303, practice.get(other, "/drawer").statusCode(), "others are signed out");
    assertEquals(303, password("AS").statusCode());
  }
}
