package kerfwright.app.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerfwright.app.drawing.chart.MaterialPlot;
import kerfwright.app.drawing.chart.SpeedChart;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.catalogue.handpiece.HandpieceEntry;
import kerfwright.catalogue.handpiece.Handpieces;
import kerfwright.catalogue.material.Material;
import kerfwright.catalogue.material.Materials;
import kerfwright.catalogue.material.ToolMaterial;
import kerfwright.catalogue.material.ToolMaterials;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class MaterialPlotTest {
  private static final Say SAY = Say.in(Language.ENGLISH);

  private static final List<Material> MATERIALS =
      Materials.packaged().ids().stream().map(Materials.packaged()::get).toList();

  private static SvgReader plot() {
    List<ToolMaterial> tools =
        List.of(ToolMaterials.packaged().diamond(), ToolMaterials.packaged().polymer());
    return new SvgReader(MaterialPlot.draw(SAY, "p", MATERIALS, tools));
  }

  private static void staysInside(SvgReader svg) {
    String[] box = svg.root().getAttribute("viewBox").split(" ");
    double width = Double.parseDouble(box[2]);
    double height = Double.parseDouble(box[3]);
    for (Element e : svg.all("*")) {
      for (Svg.Point p : SvgReader.points(e)) {
        boolean inside = p.x() >= -0.01 && p.x() <= width + 0.01 && p.y() <= height + 0.01;
        assertTrue(inside && p.y() >= -0.01, e.getTagName() + " " + e.getTextContent() + " " + p);
      }
    }
  }

  @Test
  void everythingStaysInsideItsViewBoxAndIsDescribed() {
    SvgReader svg = plot();
    staysInside(svg);
    assertTrue(svg.all("desc").get(0).getTextContent().contains("logarithmic"));
    assertTrue(svg.all("title").get(0).getTextContent().contains("27 materials"));
  }

  @Test
  void everyMaterialHasAMarkInThePictureAndOneInTheLegendAndAName() {
    SvgReader svg = plot();
    assertEquals(2 * MATERIALS.size(), svg.withClass("point").size());
    assertEquals(2 * MATERIALS.size(), svg.withClass("range").size());
    String words = svg.root().getTextContent();
    for (Material each : MATERIALS) {
      assertTrue(words.contains(each.label().split(" ")[0]), each.label());
    }
  }

  @Test
  void harderStandsHigherAndTougherFartherRight() {
    for (Material a : MATERIALS) {
      for (Material b : MATERIALS) {
        if (MaterialPlot.hardness(a) > MaterialPlot.hardness(b)) {
          assertTrue(
              MaterialPlot.y(MaterialPlot.hardness(a)) < MaterialPlot.y(MaterialPlot.hardness(b)));
        }
        if (MaterialPlot.toughness(a) > MaterialPlot.toughness(b)) {
          assertTrue(
              MaterialPlot.x(MaterialPlot.toughness(a))
                  > MaterialPlot.x(MaterialPlot.toughness(b)));
        }
      }
    }
  }

  @Test
  void aFactorOfTenIsTheSameWayEverywhere() {
    double way = MaterialPlot.y(0.1) - MaterialPlot.y(1);
    assertEquals(way, MaterialPlot.y(1) - MaterialPlot.y(10), 1e-9);
    double across = MaterialPlot.x(1) - MaterialPlot.x(0.1);
    assertEquals(across, MaterialPlot.x(100) - MaterialPlot.x(10), 1e-9);
  }

  @Test
  void aLineOfEqualBrittlenessJoinsEqualRatios() {
    Element line = plot().withClass("brittleness").get(2);
    List<Svg.Point> ends = SvgReader.points(line);
    // H / K = 1: where K is 1 MPa m^0.5, H is 1 GPa
    double share = (MaterialPlot.x(1) - ends.get(0).x()) / (ends.get(1).x() - ends.get(0).x());
    double y = ends.get(0).y() + share * (ends.get(1).y() - ends.get(0).y());
    assertEquals(MaterialPlot.y(1), y, 0.05);
  }

  @Test
  void aSpeedChartFallsFromTheFreeSpeedToTheStallTorque() {
    for (HandpieceEntry entry : Handpieces.entries()) {
      String id = entry.handpiece().id();
      SvgReader svg = new SvgReader(SpeedChart.of(SAY, id, entry.handpiece().drive()).svg(SAY, id));
      staysInside(svg);
      List<Svg.Point> line = SvgReader.points(svg.withClass("line").get(0));
      for (int i = 1; i < line.size(); i++) {
        assertTrue(line.get(i).y() >= line.get(i - 1).y() - 0.01, id);
        assertTrue(line.get(i).x() >= line.get(i - 1).x() - 0.01, id);
      }
    }
  }
}
