package kerfwright.app.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Ink that becomes one SVG drawing a page, in millimetres. Lengths of lines are those of the PDF.
 */
public final class SvgInk implements Ink {
  private final Ink measure;
  private final List<StringBuilder> pages = new ArrayList<>();

  /**
   * @param measure knows how long lines get
   */
  public SvgInk(Ink measure) {
    this.measure = measure;
  }

  @Override
  public void page(double widthMm, double heightMm) {
    StringBuilder page = new StringBuilder();
    page.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$smm\" height=\"%2$smm\""
                + " viewBox=\"0 0 %1$s %2$s\"><rect width=\"%1$s\" height=\"%2$s\" fill=\"#fff\"/>\n",
            mm(widthMm),
            mm(heightMm)));
    pages.add(page);
  }

  private StringBuilder page() {
    return pages.get(pages.size() - 1);
  }

  @Override
  public void box(double xMm, double yMm, double widthMm, double heightMm) {
    page()
        .append("<rect x=\"")
        .append(mm(xMm))
        .append("\" y=\"")
        .append(mm(yMm))
        .append("\" width=\"")
        .append(mm(widthMm))
        .append("\" height=\"")
        .append(mm(heightMm))
        .append("\" shape-rendering=\"crispEdges\"/>\n");
  }

  @Override
  public void text(double xMm, double yMm, double sizeMm, boolean bold, String text) {
    page()
        .append(
            String.format(
                Locale.ROOT,
                "<text x=\"%s\" y=\"%s\" font-size=\"%s\" font-weight=\"%s\" font-family=\"DejaVu"
                    + " Sans Condensed, sans-serif\">%s</text>\n",
                mm(xMm),
                mm(yMm),
                mm(sizeMm),
                bold ? "bold" : "normal",
                text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")));
  }

  @Override
  public double width(String text, double sizeMm, boolean bold) {
    return measure.width(text, sizeMm, bold);
  }

  private static String mm(double value) {
    String text = String.format(Locale.ROOT, "%.3f", value);
    return text.replaceFirst("\\.?0+$", "");
  }

  /** The drawings, one a page. */
  public List<String> drawings() {
    return pages.stream().map(page -> page + "</svg>\n").toList();
  }
}
