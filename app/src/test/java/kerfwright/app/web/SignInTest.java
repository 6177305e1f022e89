package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.app.input.BadInput;
import kerfwright.app.security.Doors;
import kerfwright.practice.people.Role;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** In, out, locked and switched; and what programs show. */
class SignInTest {
  private Staffed practice;

  @BeforeEach
  void start() throws BadInput {
    practice = new Staffed();
  }

  @AfterEach
  void stop() {
    practice.close();
  }

  private HttpResponse<String> signIn(String initials, String password) throws Exception {
    return practice.post(
        "theme=auto", "/sign-in", "initials", initials, "password", password, "to", "/drawer");
  }

  @Test
  void aPasswordLetsInAndLeadsToWhereOneWanted() throws Exception {
    HttpResponse<String> turned = practice.get("theme=auto", "/records?case=K-1");
    assertEquals("/sign-in?to=%2Frecords%3Fcase%3DK-1", Staffed.to(turned));
    HttpResponse<String> answer = signIn("cl", Staffed.PASSWORD);
    assertEquals("/drawer", Staffed.to(answer));
    String cookie = Staffed.cookie(answer);
    HttpResponse<String> page = practice.get(cookie, "/drawer");
    assertEquals(200, page.statusCode());
    assertTrue(page.body().contains("Account of CL"), page.body());
    String set = answer.headers().firstValue("Set-Cookie").orElse("");
    assertTrue(set.contains("HttpOnly") && set.contains("SameSite=Strict"), set);
  }

  @Test
  void wrongNamesAndWrongPasswordsAreToldAlike() throws Exception {
    HttpResponse<String> wrong = signIn("CL", "not this one at all");
    HttpResponse<String> nobody = signIn("ZZ", "not this one at all");
    assertEquals(401, wrong.statusCode());
    assertEquals(wrong.statusCode(), nobody.statusCode());
    assertEquals(wrong.body().replace("CL", "ZZ"), nobody.body());
  }

  @Test
  void manyTriesSlowThatPersonThereAndNobodyElse() throws Exception {
    int slowed = 0;
    for (int i = 0; i < 8; i++) {
      slowed += signIn("CL", "guess number " + i).statusCode() == 429 ? 1 : 0;
    }
    assertTrue(slowed >= 4, "slowed " + slowed);
    assertEquals(429, signIn("CL", Staffed.PASSWORD).statusCode());
    assertEquals(303, signIn("AS", Staffed.PASSWORD).statusCode());
    // the same person elsewhere
    assertNotEquals(null, practice.service.signIn("CL", Staffed.PASSWORD, "192.0.2.7").token());
  }

  @Test
  void aSessionThatEndedOpensNothing() throws Exception {
    String device = practice.device(Role.CLINICIAN);
    assertEquals(200, practice.get(device, "/drawer").statusCode());
    HttpResponse<String> out = practice.post(device, "/sign-out");
    assertEquals(303, out.statusCode());
    assertTrue(
        out.headers().firstValue("Clear-Site-Data").orElse("").contains("\"storage\""),
        out.headers().toString());
    assertEquals("/sign-in?to=%2Fdrawer", Staffed.to(practice.get(device, "/drawer")));
    HttpResponse<String> keeps =
        practice.post(practice.device(Role.CLINICIAN), "/sign-out", "waiting", "1");
    assertEquals("\"cache\"", keeps.headers().firstValue("Clear-Site-Data").orElse(""));
  }

  @Test
  void aLockedDeviceIsOpenedByDigitsForWhoeverTheyAreOf() throws Exception {
    String device = practice.device(Role.CLINICIAN);
    assertEquals(
        "/locked?to=%2Fdrawer", Staffed.to(practice.post(device, "/lock", "to", "/drawer")));
    assertEquals("/locked?to=%2Fday", Staffed.to(practice.get(device, "/day")));
    assertTrue(practice.get(device, "/locked").body().contains("CL"));
    HttpResponse<String> answer =
        practice.post(
            device,
            "/locked",
            "person",
            practice.account(Role.ASSISTANT).id().toString(),
            "pin",
            Staffed.PIN);
    String other = Staffed.cookie(answer);
    assertTrue(practice.get(other, "/drawer").body().contains("Account of AS"));
    assertEquals(303, practice.get(device, "/drawer").statusCode(), "the old token opens nothing");
  }

  @Test
  void fiveWrongPinsEndTheSession() throws Exception {
    String device = practice.device(Role.CLINICIAN);
    practice.post(device, "/lock");
    String person = practice.account(Role.CLINICIAN).id().toString();
    for (int i = 0; i < 5; i++) {
      practice.post(device, "/locked", "person", person, "pin", "9999");
    }
    HttpResponse<String> right =
        practice.post(device, "/locked", "person", person, "pin", Staffed.PIN);
    assertEquals("", Staffed.cookie(right));
    assertEquals("/sign-in?to=%2Fdrawer", Staffed.to(practice.get(device, "/drawer")));
  }

  @Test
  void digitsDoNotOpenWhatAsksForThePassword() throws Exception {
    String device = practice.device(Role.OWNER);
    assertEquals(200, practice.get(device, "/people").statusCode());
    practice.post(device, "/lock");
    String person = practice.account(Role.OWNER).id().toString();
    String again =
        Staffed.cookie(practice.post(device, "/locked", "person", person, "pin", Staffed.PIN));
    assertEquals("/confirm?to=%2Fpeople", Staffed.to(practice.get(again, "/people")));
    assertEquals("/confirm", Staffed.to(practice.post(again, "/backup/export")));
    HttpResponse<String> confirmed =
        practice.post(again, "/confirm", "password", Staffed.PASSWORD, "to", "/people");
    assertEquals("/people", Staffed.to(confirmed));
    assertEquals(200, practice.get(Staffed.cookie(confirmed), "/people").statusCode());
  }

  @Test
  void whoeverIsLetInByACodeChoosesAPasswordFirst() throws Exception {
    String owner = practice.device(Role.OWNER);
    HttpResponse<String> added =
        practice.post(owner, "/people/add", "initials", "nw", "role", "assistant");
    Matcher code = Pattern.compile("class=\"secret\">([A-Z0-9-]+)<").matcher(added.body());
    assertTrue(code.find(), added.body());
    String device = Staffed.cookie(signIn("NW", code.group(1).toLowerCase(java.util.Locale.ROOT)));
    assertTrue(Staffed.to(practice.get(device, "/drawer")).startsWith("/account"));
    HttpResponse<String> weak =
        practice.post(device, "/account", "password", "password1234", "pin", "1234");
    assertEquals(422, weak.statusCode());
    HttpResponse<String> chosen =
        practice.post(device, "/account", "password", "nine quiet herons on a roof", "pin", "8052");
    assertEquals("/", Staffed.to(chosen));
    assertEquals(200, practice.get(device, "/drawer").statusCode());
    assertEquals(401, signIn("NW", code.group(1)).statusCode(), "the code is used up");
    assertEquals(303, signIn("NW", "nine quiet herons on a roof").statusCode());
  }

  @Test
  void passwordAndPinAreChangedEachAlone() throws Exception {
    String device = practice.device(Role.CLINICIAN);
    assertEquals(
        422, practice.post(device, "/account/pin", "now", "no", "pin", "8052").statusCode());
    String[] pin = {"now", Staffed.PASSWORD, "pin", "8052"};
    assertEquals("/account?done=1", Staffed.to(practice.post(device, "/account/pin", pin)));
    assertEquals(303, signIn("CL", Staffed.PASSWORD).statusCode(), "the password stays");
    String password = "nine quiet herons on a roof";
    String[] both = {"now", Staffed.PASSWORD, "password", password};
    assertEquals("/account?done=1", Staffed.to(practice.post(device, "/account", both)));
    practice.post(device, "/lock");
    String person = practice.account(Role.CLINICIAN).id().toString();
    HttpResponse<String> open =
        practice.post(device, "/locked", "person", person, "pin", "8052", "to", "/drawer");
    assertEquals("/drawer", Staffed.to(open), "the PIN stays");
    assertEquals(303, signIn("CL", password).statusCode());
    String[] none = {"now", password, "pin", ""};
    practice.post(Staffed.cookie(open), "/account/pin", none);
    assertFalse(practice.get(practice.device(Role.OWNER), "/switch").body().contains("<b>CL</b>"));
  }

  @Test
  void theLastOwnerStaysAndWhoeverLeavesIsOutAtOnce() throws Exception {
    String owner = practice.device(Role.OWNER);
    String own = practice.account(Role.OWNER).id().toString();
    HttpResponse<String> refused =
        practice.post(owner, "/people/" + own + "/role", "version", "1", "role", "student");
    assertEquals(422, refused.statusCode());
    String device = practice.device(Role.ASSISTANT);
    String person = practice.account(Role.ASSISTANT).id().toString();
    practice.post(owner, "/people/" + person + "/role", "version", "1", "role", "gone");
    assertEquals(303, practice.get(device, "/drawer").statusCode());
    assertEquals(401, signIn("AS", Staffed.PASSWORD).statusCode());
  }

  @Test
  void theFirstOwnerIsMadeByThePrintedCodeAlone() throws Exception {
    try (Served app = new Served(false, Doors.here(Staffed.START), "ABCD-EFGH-JKLM")) {
      String[] wrong = {
        "code", "ABCD-EFGH-JKLN", "initials", "AB", "password", Staffed.PASSWORD, "pin", ""
      };
      assertEquals(422, app.post("/first", wrong).statusCode());
      String[] right = wrong.clone();
      right[1] = "abcd-efgh-jklm";
      HttpResponse<String> made = app.post("/first", right);
      assertEquals("/people", Staffed.to(made));
      // from now on people sign in, and the printed address opens nothing
      HttpResponse<String> entered = app.get("/enter/" + Staffed.START);
      String cookie = entered.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
      HttpResponse<String> page =
          app.send(
              HttpRequest.newBuilder(URI.create(app.address("/drawer")))
                  .header("Cookie", cookie)
                  .build());
      assertEquals(303, page.statusCode());
      right[3] = "CD";
      assertFalse(Staffed.to(app.post("/first", right)).equals("/people"), "only once");
    }
  }

  @Test
  void aTokenOpensWhatItIsForUntilItIsEnded() throws Exception {
    String owner = practice.device(Role.OWNER);
    HttpResponse<String> made =
        practice.post(owner, "/people/token", "name", "stock list", "scope", "order", "days", "30");
    Matcher token = Pattern.compile("class=\"secret\">([^<]+)<").matcher(made.body());
    assertTrue(token.find(), made.body());
    assertEquals(200, bearer("/restock.csv", token.group(1)));
    assertEquals(403, bearer("/restock", token.group(1)), "the page is not the list");
    assertEquals(403, bearer("/records", token.group(1)));
    assertEquals(401, bearer("/restock.csv", token.group(1) + "x"));
    Matcher id = Pattern.compile("/people/token/([0-9a-f-]+)/end").matcher(made.body());
    assertTrue(id.find());
    practice.post(owner, "/people/token/" + id.group(1) + "/end");
    assertEquals(401, bearer("/restock.csv", token.group(1)));
  }

  private int bearer(String path, String token) throws Exception {
    return practice
        .app
        .send(
            HttpRequest.newBuilder(URI.create(practice.app.address(path)))
                .header("Authorization", "Bearer " + token)
                .build())
        .statusCode();
  }

  @Test
  void scriptsAreToldAndNotLedAway() throws Exception {
    HttpResponse<String> answer =
        practice.app.send(
            HttpRequest.newBuilder(URI.create(practice.app.address("/chairside/log")))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString("[]"))
                .build());
    assertEquals(401, answer.statusCode());
  }

  @Test
  void goingOnNeverLeadsElsewhere() throws Exception {
    for (String to :
        new String[] {"https://elsewhere.example/", "//elsewhere.example", "/\\elsewhere"}) {
      HttpResponse<String> answer =
          practice.post(
              "theme=auto", "/sign-in", "initials", "RO", "password", Staffed.PASSWORD, "to", to);
      assertEquals("/", Staffed.to(answer), to);
    }
  }
}
