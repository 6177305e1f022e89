package kerfwright.app.heatfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import kerfwright.app.Run;
import kerfwright.app.input.BadInput;
import kerfwright.app.input.SourceText;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatFileTest {
  private static final String GOOD =
      """
      radius_mm: 5
      layers:
        - {thickness_mm: 1.2, conductivity_w_per_mk: 1.0, density_kg_per_m3: 2400, specific_heat_j_per_kgk: 850}
        - {thickness_mm: 0.4, conductivity_w_per_mk: 13, density_kg_per_m3: 8300, specific_heat_j_per_kgk: 450}
        - {thickness_mm: 0.1, conductivity_w_per_mk: 0.9, density_kg_per_m3: 2000, specific_heat_j_per_kgk: 1000}
        - {thickness_mm: 4.3, conductivity_w_per_mk: 0.58, density_kg_per_m3: 2140, specific_heat_j_per_kgk: 1260}
      initial_c: 36
      bottom: {temperature_c: 36}
      top: {spot_radius_mm: 0.8, flux_w_per_m2: 4.0e5, on_s: 2, off_s: 1, coolant: {h_w_per_m2k: 2000, temperature_c: 25}, feed_mm_per_s: 0}
      duration_s: 20
      output_every_s: 0.1
      probes_mm: [{r: 0, z: 1.7}, {r: 0, z: 4.5}]
      error_k: 0.05
      """;

  /**
   * The problem above was computed by an independent program (finite elements in SciPy, Richardson
   * extrapolation of two meshes): 39.886 and 35.693 degC at 20 s, 42.044 and 36.001 at 2 s.
   */
  @Test
  void aProblemWithAReferenceComesOutWithinTheErrorAskedFor(@TempDir Path folder)
      throws IOException {
    Path file = folder.resolve("problem.yaml");
    Files.writeString(file, GOOD);
    Run run = Run.of("heat", file.toString(), "--json");
    assertEquals(0, run.code(), run.err());
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertEquals("heat/1", json.get("contract").asText());
    assertEquals(200, json.get("timesS").size());
    assertEquals(39.886, at(json, 0, 199), 0.05);
    assertEquals(35.693, at(json, 1, 199), 0.05);
    assertEquals(42.044, at(json, 0, 19), 0.05);
    assertTrue(json.get("errorEstimateK").asDouble() <= 0.05);
    for (String field : new String[] {"cellsR", "cellsZ", "stepS"}) {
      assertTrue(json.get("mesh").has(field), field);
    }
    assertTrue(Run.of("heat", file.toString()).out().contains("Estimated error"));
  }

  private static double at(JsonNode json, int probe, int index) {
    return json.get("probes").get(probe).get("temperatureC").get(index).asDouble();
  }

  @Test
  void layersMayBeNamedByMaterialAndTheMeshGiven() throws BadInput {
    String text =
        GOOD.replaceAll(
                "(?s)layers:.*initial", "layers: [{material: dentine, thickness_mm: 4}]\ninitial")
            .replace("z: 4.5", "z: 3.5")
            .replace("{temperature_c: 36}", "insulated")
            .replace("error_k: 0.05", "mesh: {cells_r: 20, cells_z: 30, step_s: 0.05}");
    var solution = HeatFile.read(new SourceText("problem.yaml", text)).solve();
    assertEquals(20, solution.cellsR());
    assertTrue(Double.isNaN(solution.errorEstimateK()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "radius_mm: 5 | radius_mm: -5 | 1: radius_mm: must be a number above 0",
        "radius_mm: 5 | radius: 5 | 1: radius: there is no such field",
        "initial_c: 36 | initial_c: warm | 7: initial_c: must be a number",
        "{temperature_c: 36} | cold | 8: bottom: must be insulated",
        "on_s: 2, off_s: 1 | on_s: 0, off_s: 0 | 9: top.on_s: and off_s must not both be 0",
        "spot_radius_mm: 0.8 | spot_radius_mm: 8 | 9: top: must have a spot smaller",
        "feed_mm_per_s: 0 | feed_mm_per_s: 9 | 9: top: cuts through the whole body",
        "output_every_s: 0.1 | output_every_s: 0 | 11: output_every_s: must be a number from",
        "z: 4.5 | z: 14.5 | 12: probes_mm[1]: lies outside the body",
        "error_k: 0.05 | error_k: 0 | 13: error_k: must be a number from",
        "thickness_mm: 0.4 | thickness_mm: 0 | 4: layers[1].thickness_mm: must be a number above 0",
        "density_kg_per_m3: 8300, | '' | 4: layers[1].density_kg_per_m3: is missing",
        "'conductivity_w_per_mk: 13, density' | 'material: stone, density' | 4: layers[1].material: there is no",
      })
  void namesLineFieldAndExpectation(String good, String bad, String start) {
    assertTrue(GOOD.contains(good), good);
    String text = GOOD.replace(good, bad);
    BadInput found =
        assertThrows(BadInput.class, () -> HeatFile.read(new SourceText("problem.yaml", text)));
    String faults =
        found.faults().stream()
            .map(fault -> fault.in(Say.in(Language.ENGLISH)))
            .collect(Collectors.joining("\n"));
    assertTrue(faults.contains("problem.yaml:" + start), faults);
  }
}
