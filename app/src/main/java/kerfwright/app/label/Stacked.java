package kerfwright.app.label;

import java.util.List;
import java.util.Locale;

/** Several drawings of one size as one, below each other. */
final class Stacked {
  private Stacked() {}

  static String of(List<String> sheets, SheetForm form) {
    if (sheets.size() == 1) {
      return sheets.get(0);
    }
    double width = form.sheet().widthMm();
    double height = form.sheet().heightMm();
    StringBuilder all = new StringBuilder();
    all.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.2fmm\" height=\"%2$.2fmm\""
                + " viewBox=\"0 0 %1$.2f %2$.2f\">\n",
            width,
            height * sheets.size()));
    for (int i = 0; i < sheets.size(); i++) {
      all.append(String.format(Locale.ROOT, "<g transform=\"translate(0 %.2f)\">", i * height));
      all.append(sheets.get(i).replaceFirst("width=\"[0-9.]+mm\" height=\"[0-9.]+mm\" ", ""));
      all.append("</g>\n");
    }
    return all + "</svg>\n";
  }
}
