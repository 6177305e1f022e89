package kerfwright.app.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.datamatrix.DataMatrixReader;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import kerfwright.app.print.PdfInk;
import kerfwright.app.print.SvgInk;
import kerfwright.practice.label.OwnCode;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every code on a printed sheet is read back, by a barcode library that did not draw it. */
class LabelReadBackTest {
  private static final float DPI = 300;

  static Stream<LabelSheet> sheets() {
    return Stream.of(
        LabelSheet.USUAL,
        new LabelSheet(210, 297, 5, 13, 4.75, 10.7, 2.5, 0),
        new LabelSheet(62, 29, 1, 1, 1, 1, 0, 0));
  }

  static Stream<LabelSheet> smallSheets() {
    return Stream.of(
        new LabelSheet(105, 74, 2, 3, 2, 1.5, 1, 0.5), new LabelSheet(62, 29, 1, 1, 1, 1, 0, 0));
  }

  private static List<Label> labels(int count) {
    SplittableRandom chance = new SplittableRandom(8);
    List<Label> labels = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      OwnCode.Kind kind = OwnCode.Kind.values()[i % OwnCode.Kind.values().length];
      UUID id = new UUID(chance.nextLong(), chance.nextLong());
      labels.add(
          new Label(
              new OwnCode(kind, id).text(),
              "D" + i,
              List.of("806 314 197 534 014", "diamond instrument, round-ended cone", "", "left")));
    }
    return labels;
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void everyCodeOfThePdfIsReadBack(LabelSheet sheet) throws Exception {
    int first = sheet.perSheet() / 2;
    List<Label> labels = labels(Math.min(40, 2 * sheet.perSheet() + 1));
    byte[] pdf;
    try (PdfInk ink = new PdfInk()) {
      new LabelPainter(sheet, ink).paint(labels, first);
      pdf = ink.pdf();
    }
    try (PDDocument document = Loader.loadPDF(pdf)) {
      int pages = (first + labels.size() - 1) / sheet.perSheet() + 1;
      assertEquals(pages, document.getNumberOfPages());
      String text = new PDFTextStripper().getText(document);
      assertTrue(labels.stream().allMatch(label -> text.contains(label.title())), text);
      List<BufferedImage> images = new ArrayList<>();
      for (int page = 0; page < pages; page++) {
        images.add(new PDFRenderer(document).renderImageWithDPI(page, DPI));
      }
      assertAllRead(sheet, labels, first, images);
    }
  }

  @ParameterizedTest
  @MethodSource("smallSheets")
  void everyCodeOfTheDrawingIsReadBack(LabelSheet sheet) throws Exception {
    List<Label> labels = labels(Math.min(12, sheet.perSheet()));
    List<String> drawings;
    try (PdfInk measure = new PdfInk()) {
      SvgInk ink = new SvgInk(measure);
      new LabelPainter(sheet, ink).paint(labels, 0);
      drawings = ink.drawings();
    }
    assertEquals(1, drawings.size());
    assertAllRead(sheet, labels, 0, List.of(rendered(drawings.get(0))));
  }

  private static BufferedImage rendered(String svg) throws Exception {
    PNGTranscoder transcoder = new PNGTranscoder();
    transcoder.addTranscodingHint(
        ImageTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, (float) (25.4 / DPI));
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    transcoder.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput(png));
    return ImageIO.read(new ByteArrayInputStream(png.toByteArray()));
  }

  private static void assertAllRead(
      LabelSheet sheet, List<Label> labels, int first, List<BufferedImage> pages) throws Exception {
    for (int i = 0; i < labels.size(); i++) {
      int place = (first + i) % sheet.perSheet();
      BufferedImage page = pages.get((first + i) / sheet.perSheet());
      // the left half holds the code alone, wherever it stands in it
      int left = pixels(sheet.xMm(place));
      int top = pixels(sheet.yMm(place));
      int height = Math.min(pixels(sheet.labelHeightMm()), page.getHeight() - top);
      double side = Math.min(16, Math.min(sheet.labelHeightMm() * 0.8, sheet.labelWidthMm() / 2.2));
      int width = pixels(side + 2 * Math.min(3, sheet.labelHeightMm() / 10));
      assertEquals(labels.get(i).code(), read(page.getSubimage(left, top, width, height)));
    }
  }

  private static int pixels(double mm) {
    return (int) Math.floor(mm / 25.4 * DPI);
  }

  private static String read(BufferedImage image) throws Exception {
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    BinaryBitmap bitmap =
        new BinaryBitmap(
            new HybridBinarizer(
                new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels)));
    Result result =
        new DataMatrixReader().decode(bitmap, Map.of(DecodeHintType.PURE_BARCODE, true));
    return result.getText();
  }
}
