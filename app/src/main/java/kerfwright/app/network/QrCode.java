package kerfwright.app.network;

import java.util.Locale;
import uk.org.okapibarcode.graphics.Rectangle;

/** An address as a QR code (ISO/IEC 18004), drawn as SVG. */
final class QrCode {
  private static final int QUIET = 4;

  private QrCode() {}

  static String svg(String address) {
    uk.org.okapibarcode.backend.QrCode code = new uk.org.okapibarcode.backend.QrCode();
    code.setContent(address);
    StringBuilder path = new StringBuilder();
    double side = 0;
    for (Rectangle one : code.getRectangles()) {
      path.append(
          String.format(
              Locale.ROOT,
              "M%.0f %.0fh%.0fv%.0fh-%.0fz",
              one.x,
              one.y,
              one.width,
              one.height,
              one.width));
      side = Math.max(side, Math.max(one.x + one.width, one.y + one.height));
    }
    return String.format(
        Locale.ROOT,
        "<svg class=\"qr\" viewBox=\"%d %d %.0f %.0f\" role=\"img\" aria-label=\"%s\">"
            + "<rect x=\"%d\" y=\"%d\" width=\"100%%\" height=\"100%%\" fill=\"#fff\"/>"
            + "<path d=\"%s\" fill=\"#000\"/></svg>",
        -QUIET,
        -QUIET,
        side + 2 * QUIET,
        side + 2 * QUIET,
        address,
        -QUIET,
        -QUIET,
        path);
  }
}
