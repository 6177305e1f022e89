package kerfwright.app.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerfwright.app.input.BadInput;
import kerfwright.app.input.Fault;
import kerfwright.app.input.SourceText;
import kerfwright.app.words.Language;
import kerfwright.app.words.Say;
import kerfwright.planner.casework.CutCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What cannot be meant together is asked, with the line to change; the changed case is read. */
class ContradictionTest {
  private static final String NATURAL =
      "[{material: enamel, thickness_mm: 0.8}, {material: dentine, thickness_mm: 2.5}]";
  private static final String DECAY =
      "[{material: carious-dentine, thickness_mm: 1.5}, {material: dentine, thickness_mm: 2.0}]";
  private static final String GOLD =
      "[{material: gold-alloy, thickness_mm: 1.0}, {material: dentine, thickness_mm: 3.0}]";

  private final CaseFile file = new CaseFile(new CaseCatalogue());

  private CutCase read(String fields) throws BadInput {
    String text =
        fields
            .replace("; ", "\n")
            .replace("NATURAL", NATURAL)
            .replace("DECAY", DECAY)
            .replace("GOLD", GOLD);
    return file.yaml(new SourceText("case.yaml", text + "\n"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // the case | the line as it should be | code | fix: what is written, or a minus
        "procedure: inlay-cavity; tooth: 11 | procedure: inlay-cavity; tooth: 16 | procedure-for-other-teeth | procedure: cavity-preparation",
        "procedure: post-removal; tooth: 11; pulp: vital | procedure: post-removal; tooth: 11; pulp: non-vital | pulp-and-procedure | pulp: non-vital",
        "procedure: crown-preparation; tooth: 16; pulp: vital; layers: [{material: composite, thickness_mm: 2.0}, {material: gutta-percha, thickness_mm: 2.0}] | procedure: crown-preparation; tooth: 16; pulp: non-vital; layers: [{material: composite, thickness_mm: 2.0}, {material: gutta-percha, thickness_mm: 2.0}] | pulp-and-layers | pulp: non-vital",
        "procedure: access-cavity; tooth: 16; layers: [{material: dentine, thickness_mm: 2.0}, {material: enamel, thickness_mm: 1.0}] | procedure: access-cavity; tooth: 16; layers: NATURAL | layers-not-inward | -layers",
        "procedure: access-cavity; tooth: 16; layers: [{material: dentine, thickness_mm: 2.0}, {material: gold-alloy, thickness_mm: 1.0}] | procedure: access-cavity; tooth: 16; layers: GOLD | layers-not-inward | -layers",
        "procedure: access-cavity; tooth: 16; restoration: zirconia-3y; layers: NATURAL | procedure: access-cavity; tooth: 16; restoration: full-gold; layers: GOLD | restoration-not-in-layers | -layers",
        "procedure: access-cavity; tooth: 16; restoration: none; layers: GOLD | procedure: access-cavity; tooth: 16; restoration: none; layers: NATURAL | natural-tooth-with-restoration | -restoration",
        "procedure: access-cavity; tooth: 16; restoration: unknown-crown; layers: GOLD | procedure: access-cavity; tooth: 16; restoration: unknown-crown | layers-of-unknown-crown | -restoration",
        "procedure: occlusal-adjustment; tooth: 16; restoration: unknown-crown | procedure: occlusal-adjustment; tooth: 16; restoration: metal-ceramic | unknown-crown-not-here | restoration: metal-ceramic",
        "procedure: amalgam-removal; tooth: 16; layers: NATURAL | procedure: amalgam-removal; tooth: 16; layers: [{material: amalgam, thickness_mm: 2.0}, {material: dentine, thickness_mm: 2.0}] | procedure-not-on-these-layers | -layers",
        "procedure: crown-sectioning; tooth: 16; restoration: none | procedure: crown-sectioning; tooth: 16; restoration: full-gold | procedure-not-on-these-layers | restoration: metal-ceramic",
        "procedure: crown-preparation; tooth: 16; restoration: zirconia-3y | procedure: crown-preparation; tooth: 16; restoration: none | procedure-not-on-these-layers,crown-still-on | procedure: crown-sectioning",
        "procedure: crown-preparation; tooth: 11; layers: [{material: enamel, thickness_mm: 1.4}, {material: dentine, thickness_mm: 4.8}] | procedure: crown-preparation; tooth: 16; layers: [{material: enamel, thickness_mm: 1.4}, {material: dentine, thickness_mm: 4.8}] | layers-too-thick | -layers",
        "procedure: access-cavity; tooth: 11; layers: [{material: enamel, thickness_mm: 1.4}, {material: dentine, thickness_mm: 4.8}] | procedure: access-cavity; tooth: 11; layers: NATURAL | layers-too-thick | -layers",
        "procedure: access-cavity; tooth: 16; layers: NATURAL; chamber: {depth_mm: 8.5} | procedure: access-cavity; tooth: 16; layers: NATURAL; chamber: {depth_mm: 5.5} | chamber-not-under-layers | -chamber",
        "procedure: access-cavity; tooth: 16; layers: [{material: enamel, thickness_mm: 1.0, known: bitewing}, {material: dentine, thickness_mm: 3.0}] | procedure: access-cavity; tooth: 16; known: bitewing; layers: NATURAL | bitewing-without-decay | layers[0].known: film",
        "procedure: access-cavity; tooth: 16; lesion: {depth: deep} | procedure: cavity-preparation; tooth: 16; lesion: {depth: deep} | lesion-not-asked | -lesion",
        "procedure: cavity-preparation; tooth: 16; lesion: {depth: deep}; layers: NATURAL | procedure: cavity-preparation; tooth: 16; lesion: {depth: deep}; layers: DECAY | lesion-not-in-layers | -layers",
        "procedure: cavity-preparation; tooth: 16; lesion: {depth: deep}; restoration: none | procedure: cavity-preparation; tooth: 16; lesion: {depth: shallow}; restoration: none | lesion-not-in-layers | restoration: carious",
        "procedure: veneer-preparation; tooth: 11; intended: gold | procedure: veneer-preparation; tooth: 11; intended: leucite | intended-not-for-procedure | intended: lithium-disilicate",
        "procedure: access-cavity; tooth: 16; intended: gold | procedure: onlay-cavity; tooth: 16; intended: gold | intended-not-for-procedure | -intended",
        "procedure: access-cavity; tooth: 41; outline: {shape: ellipse, length_mm: 9, width_mm: 7} | procedure: access-cavity; tooth: 41; outline: {shape: ellipse, length_mm: 3, width_mm: 2} | outline-larger-than-tooth | -outline",
        "procedure: crown-sectioning; tooth: 16; outline: {shape: slot, length_mm: 30, width_mm: 1.4} | procedure: crown-sectioning; tooth: 16; outline: {shape: slot, length_mm: 15, width_mm: 1.4} | outline-larger-than-tooth | -outline",
        "procedure: enamel-bevel; tooth: 11; outline: {shape: band, length_mm: 50, width_mm: 1} | procedure: enamel-bevel; tooth: 11; outline: {shape: band, length_mm: 12, width_mm: 1} | outline-larger-than-tooth | -outline",
        "procedure: crown-preparation; tooth: 16; outline: {shape: patch, length_mm: 40, width_mm: 12} | procedure: crown-preparation; tooth: 16; outline: {shape: patch, length_mm: 20, width_mm: 10} | outline-larger-than-tooth | -outline",
      })
  void isAskedWithTheLineToChange(String bad, String good, String codes, String fix)
      throws BadInput {
    BadInput refused = assertThrows(BadInput.class, () -> read(bad));
    assertEquals(1, refused.faults().size(), refused.faults().toString());
    Fault fault = refused.faults().get(0);
    String code = codes.substring(codes.indexOf(',') + 1);
    assertEquals(code, fault.code());
    assertNotNull(fault.fix());
    assertEquals(fix, fault.fix().line());
    assertTrue(fault.line() > 0, fault.in(Say.in(Language.ENGLISH)));
    assertTrue(
        fault
            .in(Say.in(Language.ENGLISH))
            .contains(fix.startsWith("-") ? "leave" : "write " + fix));
    assertNotNull(read(good));
  }

  @Test
  void theFixOfAPulpIsAcceptedByTheReader() throws BadInput {
    String bad = "procedure: post-removal; tooth: 11; pulp: vital";
    BadInput refused = assertThrows(BadInput.class, () -> read(bad));
    assertNotNull(read(bad.replace("pulp: vital", refused.faults().get(0).fix().line())));
  }
}
