package kerfwright.app.label;

import kerfwright.app.words.Say;
import uk.org.okapibarcode.backend.QrCode;
import uk.org.okapibarcode.graphics.Rectangle;

/** An address as a code that the camera of a phone reads, black on white whatever the page is. */
public final class QrDrawing {
  private static final int QUIET = 4;

  private QrDrawing() {}

  public static String of(String address, Say say) {
    QrCode code = new QrCode();
    code.setContent(address);
    int side = code.getWidth() + 2 * QUIET;
    StringBuilder dark = new StringBuilder();
    for (Rectangle one : code.getRectangles()) {
      dark.append("M").append(one.x + QUIET).append(' ').append(one.y + QUIET);
      dark.append("h").append(one.width).append("v").append(one.height);
      dark.append("h-").append(one.width).append("z");
    }
    return "<svg class=\"qr\" role=\"img\" aria-label=\""
        + say.at("learner.qr", address)
        + "\" viewBox=\"0 0 "
        + side
        + " "
        + side
        + "\" shape-rendering=\"crispEdges\"><rect width=\""
        + side
        + "\" height=\""
        + side
        + "\" fill=\"#fff\"/><path fill=\"#000\" d=\""
        + dark
        + "\"/></svg>";
  }
}
