package kerfwright.app.print;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Pages on paper: a document in XHTML becomes PDF; it loads nothing from anywhere. */
public final class Paper {
  private static final String FONTS = "/net/sf/jasperreports/fonts/dejavu/";
  private static final String FAMILY = "DejaVu Sans Condensed";

  private static final String SCHEME = "font";
  private static final Pattern SIZE = Pattern.compile("width=\"([0-9.]+)\" height=\"([0-9.]+)\"");

  private Paper() {}

  /** The document as PDF; its style sheet sets the page size. */
  public static byte[] pdf(String document) {
    XRLog.setLoggingEnabled(false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (BatikSVGDrawer svg = new BatikSVGDrawer()) {
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.useFastMode();
      builder.useSVGDrawer(svg);
      builder.useUriResolver((base, uri) -> uri.startsWith(SCHEME + ":") ? uri : null);
      builder.useProtocolsStreamImplementation(uri -> new Font(uri), SCHEME);
      builder.withHtmlContent(document, null);
      builder.withProducer("Kerfwright");
      builder.toStream(out);
      builder.run();
      return out.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** How many pages a document has. */
  static int pages(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getNumberOfPages();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /**
   * A drawing, smaller or larger. The renderer wants whole pixels for its size, and the font by its
   * name.
   */
  public static String drawing(String svg, double share) {
    Matcher size = SIZE.matcher(svg);
    String sized =
        size.find()
            ? size.replaceFirst(
                "width=\""
                    + up(size.group(1), share)
                    + "\" height=\""
                    + up(size.group(2), share)
                    + "\"")
            : svg;
    return sized.replace("font-family=\"sans-serif\"", "font-family=\"" + FAMILY + "\"");
  }

  private static int up(String pixels, double share) {
    return (int) Math.ceil(Double.parseDouble(pixels) * share);
  }

  /** A font file of the class path. */
  static InputStream font(String file) {
    InputStream in = Paper.class.getResourceAsStream(FONTS + file);
    if (in == null) {
      throw new IllegalStateException("Font is not on the class path: " + file);
    }
    return in;
  }

  /** A font file by its name after the scheme. */
  private record Font(String uri) implements FSStream {
    @Override
    public InputStream getStream() {
      return font(uri.substring(SCHEME.length() + 1));
    }

    @Override
    public Reader getReader() {
      return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
    }
  }
}
