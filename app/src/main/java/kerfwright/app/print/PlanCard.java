package kerfwright.app.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import kerfwright.app.plan.PlanDrawings;
import kerfwright.app.template.Templates;
import kerfwright.planner.plan.CutPlan;

/** The card of a plan for the tray: A5, PDF. */
public final class PlanCard {
  private static final String FONTS = "/net/sf/jasperreports/fonts/dejavu/";
  private static final String FAMILY = "DejaVu Sans Condensed";

  private PlanCard() {}

  /** The card as a PDF document; it loads nothing from anywhere. */
  public static byte[] pdf(CutPlan plan, PlanDrawings drawings) {
    String page = new Templates().render("card.jte", Map.of("plan", plan, "drawings", drawings));
    XRLog.setLoggingEnabled(false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (BatikSVGDrawer svg = new BatikSVGDrawer()) {
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.useFastMode();
      builder.useSVGDrawer(svg);
      builder.useUriResolver((base, uri) -> null);
      font(builder, "DejaVuSansCondensed.ttf", 400, FontStyle.NORMAL);
      font(builder, "DejaVuSansCondensed-Bold.ttf", 700, FontStyle.NORMAL);
      font(builder, "DejaVuSansCondensed-Oblique.ttf", 400, FontStyle.ITALIC);
      builder.withHtmlContent(page, null);
      builder.withProducer("Kerfwright");
      builder.toStream(out);
      builder.run();
      return out.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static void font(PdfRendererBuilder builder, String file, int weight, FontStyle style) {
    builder.useFont(() -> open(file), FAMILY, weight, style, true);
  }

  private static InputStream open(String file) {
    InputStream in = PlanCard.class.getResourceAsStream(FONTS + file);
    if (in == null) {
      throw new IllegalStateException("Font is not on the class path: " + file);
    }
    return in;
  }
}
