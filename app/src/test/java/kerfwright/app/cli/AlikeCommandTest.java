package kerfwright.app.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import kerfwright.app.Golden;
import kerfwright.app.Run;
import org.junit.jupiter.api.Test;

class AlikeCommandTest {
  private static final String NUMBER = "806 314 197 534 014";
  private static final String DRAWER = "../examples/drawer-demo.csv";

  @Test
  void theNearestAreToldWithWhatDiffers() throws IOException {
    Run run = Run.of("alike", NUMBER, "--drawer", DRAWER);
    assertEquals(0, run.code(), run.err());
    Golden.check("alike.txt", run.out());
  }

  @Test
  void theSameAsJson() throws IOException {
    Run run = Run.of("alike", NUMBER, "--drawer", DRAWER, "--json");
    assertEquals(0, run.code(), run.err());
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertEquals("alike/1", json.get("contract").asText());
    assertEquals("D04", json.get("drawer").get(0).get("id").asText());
    double last = 100;
    for (JsonNode each : json.get("drawer")) {
      assertTrue(each.get("score").asDouble() <= last);
      last = each.get("score").asDouble();
    }
    assertEquals("", run.err());
  }

  @Test
  void aUsSizeAndPropertiesAreUnderstood() {
    Run us = Run.of("alike", "--us", "330", "--drawer", DRAWER);
    assertEquals(0, us.code(), us.err());
    assertTrue(us.out().contains("taken as usual: friction grip shank"));
    Run with =
        Run.of(
            "alike",
            "--drawer",
            DRAWER,
            "--with",
            "kind=carbide",
            "--with",
            "shape=pear",
            "--with",
            "blades=8",
            "--with",
            "head_mm=1.0",
            "--with",
            "head_length_mm=2");
    assertEquals(0, with.code(), with.err());
  }

  @Test
  void whatIsWrongIsToldByFieldWithTheNearestName() {
    Run wrong = Run.of("alike", "--with", "knd=carbide");
    assertEquals(2, wrong.code());
    assertTrue(wrong.err().contains("kind"), wrong.err());
    assertEquals(2, Run.of("alike").code());
    assertEquals(2, Run.of("alike", "806 314").code());
    Run unknown = Run.of("alike", "--with", "kind=carbide", "--with", "shape=pear");
    assertEquals(2, unknown.code());
    assertTrue(unknown.err().contains("head_mm"), unknown.err());
  }
}
