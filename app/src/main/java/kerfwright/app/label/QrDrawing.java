package kerfwright.app.label;

import uk.org.okapibarcode.backend.QrCode;
import uk.org.okapibarcode.graphics.Rectangle;

/**
 * A QR code (ISO/IEC 18004) that the camera of a phone reads, black on white whatever the page is.
 */
public final class QrDrawing {
  private static final int QUIET = 4;

  private QrDrawing() {}

  /**
   * @param content what the camera reads
   * @param label what it is, for those who do not see it
   */
  public static String of(String content, String label) {
    QrCode code = new QrCode();
    code.setContent(content);
    int side = code.getWidth() + 2 * QUIET;
    StringBuilder dark = new StringBuilder();
    for (Rectangle one : code.getRectangles()) {
      dark.append("M").append(one.x + QUIET).append(' ').append(one.y + QUIET);
      dark.append("h").append(one.width).append("v").append(one.height);
      dark.append("h-").append(one.width).append("z");
    }
    return String.format(
        "<svg class=\"qr\" role=\"img\" aria-label=\"%1$s\" viewBox=\"0 0 %2$d %2$d\""
            + " shape-rendering=\"crispEdges\"><rect width=\"%2$d\" height=\"%2$d\" fill=\"#fff\"/>"
            + "<path fill=\"#000\" d=\"%3$s\"/></svg>",
        label, side, dark);
  }
}
