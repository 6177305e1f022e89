package kerfwright.app.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kerfwright.app.input.BadInput;
import kerfwright.app.reference.Place;
import kerfwright.app.reference.SourceUses;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.material.PropertyValue;
import kerfwright.catalogue.source.Source;
import kerfwright.catalogue.source.Sources;
import kerfwright.quantity.Basis;
import kerfwright.quantity.SourceKey;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class ReferencePagesTest {
  static final List<String> PAGES =
      List.of(
          "/reference",
          "/reference/numbers",
          "/reference/numbers?iso=806+314+197+534+014",
          "/reference/numbers?us=330",
          "/reference/numbers?iso=12&us=abc",
          "/reference/alike",
          "/reference/alike?iso=806+314+197+534+014",
          "/reference/alike?kind=carbide",
          "/reference/teeth?tooth=11",
          "/reference/layers?tooth=16&restoration=metal-ceramic&age=50",
          "/reference/layers?tooth=55",
          "/reference/grit",
          "/reference/handpieces",
          "/reference/materials",
          "/reference/material?id=enamel",
          "/reference/plot",
          "/reference/evidence",
          "/reference/limits",
          "/reference/sources",
          "/reference/source?key=park-2008",
          "/reference/source?key=common-practice");

  private static Served app;

  @BeforeAll
  static void start() throws BadInput {
    app = new Served();
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  private static String body(String path) throws Exception {
    HttpResponse<String> page = app.get(path);
    assertTrue(page.statusCode() == 200 || page.statusCode() == 422, path + page.statusCode());
    return page.body();
  }

  @Test
  void everyPlaceIsServedAndListedOnTheStartPage() throws Exception {
    String start = body("/reference");
    for (Place place : Place.values()) {
      assertEquals(200, app.get(place.path()).statusCode(), place.path());
      assertTrue(start.contains("href=\"" + place.path() + "\""), place.path());
    }
  }

  @Test
  void noPageCarriesInlineCodeOrLoadsFromElsewhere() throws Exception {
    for (String path : PAGES) {
      String body = body(path);
      assertFalse(body.matches("(?s).*\\s(style|on[a-z]+)=\".*"), path);
      assertFalse(body.matches("(?s).*(src|href)=\"(https?:)?//.*"), path);
      assertFalse(body.contains(">null<") || body.contains("null "), path + " shows null");
    }
  }

  @Test
  void everyIdStandsOnceOnItsPage() throws Exception {
    for (String path : PAGES) {
      Matcher ids = Pattern.compile("\\sid=\"([^\"]*)\"").matcher(body(path));
      TreeSet<String> seen = new TreeSet<>();
      while (ids.find()) {
        assertTrue(seen.add(ids.group(1)), path + " has " + ids.group(1) + " twice");
      }
    }
  }

  @Test
  void everyLinkToASourceLeadsToARegisteredOne() throws Exception {
    int links = 0;
    for (String path : PAGES) {
      Matcher keys = Pattern.compile("/reference/source\\?key=([^\"#]*)\"").matcher(body(path));
      while (keys.find()) {
        SourceKey key = new SourceKey(keys.group(1));
        boolean known =
            key.equals(SourceKey.COMMON_PRACTICE) || Sources.packaged().find(key).isPresent();
        assertTrue(known, path + " names " + key);
        links++;
      }
    }
    assertTrue(links > 500, "found " + links);
  }

  @Test
  void aSourceShowsWhatRestsOnItAndEachLinkExists() throws Exception {
    String page = body("/reference/source?key=park-2008");
    assertTrue(page.contains("Hardness of enamel"));
    Matcher links = Pattern.compile("href=\"(/reference/[^\"#]*)#([^\"]+)\"").matcher(page);
    int followed = 0;
    while (links.find() && followed < 12) {
      String target = body(links.group(1).replace("&amp;", "&"));
      assertTrue(target.contains("id=\"" + links.group(2) + "\""), links.group());
      followed++;
    }
    assertTrue(followed > 5);
  }

  @Test
  void everySourceOfTheRegisterHasItsPage() throws Exception {
    String register = body("/reference/sources");
    for (Source each : Sources.packaged().all()) {
      assertTrue(register.contains("key=" + each.key().key() + "\""), each.key().key());
    }
    for (SourceKey used : SourceUses.packaged().used()) {
      assertTrue(SourceUses.packaged().count(used) > 0);
    }
  }

  @Test
  void everyMaterialShowsEveryValueWithItsStanding() throws Exception {
    for (Material material : Materials.packaged().all()) {
      String page = body("/reference/material?id=" + material.id());
      boolean memory = false;
      for (PropertyValue value : material.values()) {
        assertTrue(page.contains("id=\"" + value.id() + "\""), value.id());
        memory |= value.basis() == Basis.FROM_MEMORY;
      }
      assertTrue(!memory || page.contains("basis-from-memory"), material.id());
    }
    assertEquals(404, app.get("/reference/material?id=cheese").statusCode());
  }

  @Test
  void aBadNumberIsToldBesideItsFieldAndKept() throws Exception {
    HttpResponse<String> page = app.get("/reference/numbers?iso=12%3Cb%3E&us=33O");
    assertEquals(422, page.statusCode());
    assertTrue(page.body().contains("aria-invalid=\"true\""));
    assertTrue(page.body().contains("there is no US size"));
    assertFalse(page.body().contains("<b>\""), "typed markup stays text");
  }

  @Test
  void anUnknownGroupIsCalledUnknownAndKept() throws Exception {
    String page = body("/reference/numbers?iso=806+314+999+524+016");
    assertTrue(page.contains("unknown shape"));
    assertTrue(page.contains(">999<"));
  }

  @Test
  void aToothThatMeansTwoTeethShowsBoth() throws Exception {
    String page = body("/reference/teeth?tooth=11");
    assertTrue(page.contains("Read as FDI"));
    assertTrue(page.contains("Read as Universal"));
    assertTrue(body("/reference/teeth?tooth=zz").contains("names no tooth"));
  }

  @Test
  void aLayerWithoutAFigureAsksForIt() throws Exception {
    assertTrue(body("/reference/layers?tooth=55").contains("not known: measure"));
  }

  @Test
  void whatIsMissingForAComparisonIsSaid() throws Exception {
    String page =
        body("/reference/alike?kind=carbide&shape=pear&head_mm=1&head_length_mm=2&shank=FG");
    assertTrue(page.contains("number of blades is not known"), page);
  }
}
