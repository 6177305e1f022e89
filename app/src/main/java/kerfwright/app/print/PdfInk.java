package kerfwright.app.print;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jspecify.annotations.Nullable;

/** Ink that becomes PDF, exact to the hundredth of a millimetre. */
public final class PdfInk implements Ink, AutoCloseable {
  private static final float POINTS_PER_MM = 72f / 25.4f;

  private final PDDocument document = new PDDocument();
  private final PDFont plain = font("DejaVuSansCondensed.ttf");
  private final PDFont bold = font("DejaVuSansCondensed-Bold.ttf");
  private @Nullable PDPageContentStream content;
  private double heightMm;

  private PDFont font(String file) {
    try (InputStream in = Paper.font(file)) {
      return PDType0Font.load(document, in);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  @Override
  public void page(double widthMm, double pageHeightMm) {
    try {
      endPage();
      heightMm = pageHeightMm;
      PDPage page = new PDPage(new PDRectangle(points(widthMm), points(pageHeightMm)));
      document.addPage(page);
      content = new PDPageContentStream(document, page);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private PDPageContentStream open() {
    if (content == null) {
      throw new IllegalStateException("No page was begun");
    }
    return content;
  }

  @Override
  public void box(double xMm, double yMm, double widthMm, double boxHeightMm) {
    try {
      open()
          .addRect(
              points(xMm),
              points(heightMm - yMm - boxHeightMm),
              points(widthMm),
              points(boxHeightMm));
      open().fill();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  @Override
  public void text(double xMm, double yMm, double sizeMm, boolean strong, String text) {
    PDFont font = strong ? bold : plain;
    try {
      open().beginText();
      open().setFont(font, points(sizeMm));
      open().newLineAtOffset(points(xMm), points(heightMm - yMm));
      open().showText(drawable(font, text));
      open().endText();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  @Override
  public double width(String text, double sizeMm, boolean strong) {
    PDFont font = strong ? bold : plain;
    try {
      return font.getStringWidth(drawable(font, text)) / 1000 * sizeMm;
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** Signs the font does not have become question marks. */
  private static String drawable(PDFont font, String text) throws IOException {
    StringBuilder drawn = new StringBuilder();
    for (int sign : text.codePoints().toArray()) {
      String one = Character.toString(sign);
      try {
        font.encode(one);
        drawn.append(one);
      } catch (IllegalArgumentException unknown) {
        drawn.append('?');
      }
    }
    return drawn.toString();
  }

  private static float points(double mm) {
    return (float) (mm * POINTS_PER_MM);
  }

  private void endPage() throws IOException {
    if (content != null) {
      content.close();
      content = null;
    }
  }

  /** All pages as one document. */
  public byte[] pdf() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      endPage();
      document.save(out);
      return out.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  @Override
  public void close() {
    try {
      endPage();
      document.close();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
