package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.javalin.router.Endpoint;
import io.javalin.security.Roles;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import kerfwright.app.input.BadInput;
import kerfwright.app.security.Access;
import kerfwright.app.security.Doors;
import kerfwright.practice.people.Role;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every route as every role and as nobody. */
class RoutesOfRolesTest {
  /** Who may, said once more, apart from the program. */
  private static final Map<Access, Set<Role>> MAY =
      Map.ofEntries(
          Map.entry(Access.OPEN, EnumSet.allOf(Role.class)),
          Map.entry(Access.SELF, EnumSet.allOf(Role.class)),
          Map.entry(Access.SELF_AGAIN, EnumSet.allOf(Role.class)),
          Map.entry(Access.SEE, EnumSet.allOf(Role.class)),
          Map.entry(
              Access.CASES, EnumSet.of(Role.OWNER, Role.CLINICIAN, Role.ASSISTANT, Role.READ_ONLY)),
          Map.entry(Access.WORK, EnumSet.of(Role.OWNER, Role.CLINICIAN, Role.ASSISTANT)),
          Map.entry(Access.LEARN, EnumSet.allOf(Role.class)),
          Map.entry(Access.CORRECT, EnumSet.of(Role.OWNER, Role.CLINICIAN)),
          Map.entry(Access.SET, EnumSet.of(Role.OWNER, Role.CLINICIAN)),
          Map.entry(Access.OWN, EnumSet.of(Role.OWNER)),
          Map.entry(Access.PLAN_API, EnumSet.allOf(Role.class)),
          Map.entry(
              Access.ORDER_API,
              EnumSet.of(Role.OWNER, Role.CLINICIAN, Role.ASSISTANT, Role.READ_ONLY)));

  private static Staffed practice;

  @BeforeAll
  static void start() throws BadInput {
    practice = new Staffed();
  }

  @AfterAll
  static void stop() {
    practice.close();
  }

  private record Route(String method, String path, Access access) {
    /** An address of it that leads to nothing there is. */
    String address() {
      return path.replaceAll("\\{[a-z]+}", "none");
    }

    @Override
    public String toString() {
      return method + " " + path;
    }
  }

  private static List<Route> routes(Served app) {
    List<Route> routes = new ArrayList<>();
    app.server()
        .unsafe
        .internalRouter
        .allHttpHandlers()
        .forEach(
            parsed -> {
              Endpoint one = parsed.endpoint;
              if (!one.method.name().startsWith("BEFORE")
                  && !one.method.name().startsWith("AFTER")) {
                Roles roles = one.metadata(Roles.class);
                assertTrue(roles != null && roles.getRoles().size() == 1, one.path);
                routes.add(
                    new Route(
                        one.method.name(), one.path, (Access) roles.getRoles().iterator().next()));
              }
            });
    assertTrue(routes.size() > 100, "routes not found");
    return routes;
  }

  @Test
  void everyRoleMayWhatItMayAndNothingElse() throws Exception {
    List<String> wrong = new ArrayList<>();
    for (Route route : routes(practice.app)) {
      for (Role role : Role.values()) {
        HttpResponse<String> answer =
            practice.send(practice.device(role), route.method(), route.address(), "");
        boolean may = MAY.get(route.access()).contains(role);
        // 403 comes from roles alone, save the address of the start, which carries no token here
        boolean refused = answer.statusCode() == 403 && !route.path().startsWith("/enter/");
        boolean led = Staffed.to(answer).matches("/(sign-in|locked|account|confirm|switch)\\?.*");
        if (may == refused
            || answer.statusCode() == 401
                && !route.path().equals("/locked")
                && !route.path().equals("/sign-in")
                && !route.path().equals("/confirm")
            || led && !route.path().equals("/lock")
            || answer.statusCode() >= 500) {
          wrong.add(route + " as " + role + ": " + answer.statusCode() + " " + Staffed.to(answer));
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void nobodyGetsBeyondTheDoor() throws Exception {
    List<String> wrong = new ArrayList<>();
    for (Route route : routes(practice.app)) {
      HttpResponse<String> answer =
          practice.send("kerfwright=made-up", route.method(), route.address(), "");
      boolean turnedAway = answer.statusCode() == 303 && Staffed.to(answer).startsWith("/sign-in");
      if (route.access() != Access.OPEN && !turnedAway) {
        wrong.add(route + ": " + answer.statusCode());
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void withoutPeopleNobodyGetsInWithoutThePrintedAddress() throws Exception {
    try (Served app = new Served(false, Doors.here(Staffed.START), "CODE")) {
      for (Route route : routes(app)) {
        if (route.access() == Access.OPEN) {
          continue;
        }
        HttpResponse<String> answer =
            route.method().equals("GET") ? app.get(route.address()) : app.post(route.address());
        assertEquals(403, answer.statusCode(), route.toString());
      }
      HttpResponse<String> wrong = app.get("/enter/something-else");
      assertEquals(403, wrong.statusCode());
      assertTrue(wrong.headers().firstValue("Set-Cookie").isEmpty());
      HttpResponse<String> entered = app.get("/enter/" + Staffed.START);
      String cookie = entered.headers().firstValue("Set-Cookie").orElseThrow();
      assertTrue(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"), cookie);
      HttpResponse<String> page =
          app.send(
              java.net.http.HttpRequest.newBuilder(java.net.URI.create(app.address("/drawer")))
                  .header("Cookie", cookie.split(";")[0])
                  .build());
      assertEquals(200, page.statusCode());
    }
  }

  /** What is open to whoever reaches the server is named here, so that nothing slips in. */
  @Test
  void onlyTheDoorItselfIsOpen() {
    Set<String> open = new TreeSet<>();
    routes(practice.app).stream()
        .filter(one -> one.access() == Access.OPEN)
        .forEach(one -> open.add(one.path()));
    assertEquals(
        new TreeSet<>(
            Set.of(
                "/chairside/worker.js",
                "/enter/{token}",
                "/first",
                "/locked",
                "/pair",
                "/pair/authority.crt",
                "/sign-in",
                "/static/arch.css",
                "/static/{name}",
                "/theme.css")),
        open);
  }

  /** Whoever only sees changes nothing but themselves. */
  @Test
  void nothingIsChangedBySeeing() {
    Set<String> changing = new TreeSet<>();
    routes(practice.app).stream()
        .filter(one -> one.method().equals("POST"))
        .filter(one -> one.access() == Access.SEE || one.access() == Access.CASES)
        .forEach(one -> changing.add(one.path()));
    assertEquals(Set.of("/records/verify"), changing);
  }

  @Test
  void theOwnersPagesAreTheOwnersAlone() {
    for (Route route : routes(practice.app)) {
      if (route.path().matches("/(people|backup|trail).*")) {
        assertEquals(Access.OWN, route.access(), route.toString());
      }
    }
  }
}
