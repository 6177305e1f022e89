package kerfwright.app.label;

import java.util.ArrayList;
import java.util.List;
import kerfwright.app.print.Ink;
import uk.org.okapibarcode.backend.DataMatrix;
import uk.org.okapibarcode.graphics.Rectangle;

/** Paints labels on sheets: the code on the left, the words beside it. */
final class LabelPainter {
  private static final double LARGEST_CODE_MM = 16;

  /** Edges of the code fall on dots of a printer with 300 or 600 dots an inch, and stay sharp. */
  private static final double DOT_MM = 25.4 / 300;

  private static final double PAD_MM = 3;
  private static final double TITLE_MM = 4.6;
  private static final double LINE_MM = 2.7;
  private static final double SPACING = 1.3;
  private static final String CUT_OFF = "\u2026";

  private final LabelSheet sheet;
  private final Ink ink;

  LabelPainter(LabelSheet sheet, Ink ink) {
    this.sheet = sheet;
    this.ink = ink;
  }

  /** Paints all labels, the first at a place counted from 0; places before it stay blank. */
  void paint(List<Label> labels, int first) {
    for (int i = 0; i < labels.size(); i++) {
      int place = (first + i) % sheet.perSheet();
      if (i == 0 || place == 0) {
        ink.page(sheet.widthMm(), sheet.heightMm());
      }
      paint(labels.get(i), sheet.xMm(place), sheet.yMm(place));
    }
  }

  private void paint(Label label, double xMm, double yMm) {
    double height = sheet.labelHeightMm();
    double width = sheet.labelWidthMm();
    double pad = Math.min(PAD_MM, height / 10);
    double side = Math.min(LARGEST_CODE_MM, Math.min(height - 2 * pad, width / 2.2));
    code(label.code(), xMm + pad, yMm + (height - side) / 2, side);
    double left = xMm + 2 * pad + side;
    double room = xMm + width - pad - left;
    double title = Math.min(TITLE_MM, height / 3);
    List<String> words = wrapped(label.lines(), room);
    int lines = (int) Math.min(words.size(), (height - 2 * pad - title) / (LINE_MM * SPACING));
    double block = title + lines * LINE_MM * SPACING;
    double base = yMm + (height - block) / 2 + title * 0.85;
    ink.text(left, base, title, true, cut(label.title(), title, true, room));
    for (int i = 0; i < lines; i++) {
      base += LINE_MM * SPACING;
      ink.text(left, base, LINE_MM, false, cut(words.get(i), LINE_MM, false, room));
    }
  }

  private void code(String text, double xMm, double yMm, double sideMm) {
    DataMatrix matrix = new DataMatrix();
    matrix.setForceMode(DataMatrix.ForceMode.SQUARE);
    matrix.setContent(text);
    double module = Math.floor(sideMm / matrix.getWidth() / DOT_MM) * DOT_MM;
    double spare = (sideMm - module * matrix.getWidth()) / 2;
    double left = Math.round((xMm + spare) / DOT_MM) * DOT_MM;
    double top = Math.round((yMm + spare) / DOT_MM) * DOT_MM;
    for (Rectangle one : matrix.getRectangles()) {
      ink.box(left + one.x * module, top + one.y * module, one.width * module, one.height * module);
    }
  }

  /** Long lines go on in the next one, at a space. */
  private List<String> wrapped(List<String> lines, double roomMm) {
    List<String> all = new ArrayList<>();
    for (String line : lines) {
      String begun = "";
      for (String word : line.split(" ")) {
        String longer = begun.isEmpty() ? word : begun + " " + word;
        if (begun.isEmpty() || ink.width(longer, LINE_MM, false) <= roomMm) {
          begun = longer;
        } else {
          all.add(begun);
          begun = word;
        }
      }
      all.add(begun);
    }
    return all;
  }

  private String cut(String text, double sizeMm, boolean bold, double roomMm) {
    if (ink.width(text, sizeMm, bold) <= roomMm) {
      return text;
    }
    int end = text.length();
    while (end > 0 && ink.width(text.substring(0, end) + CUT_OFF, sizeMm, bold) > roomMm) {
      end--;
    }
    return text.substring(0, end).stripTrailing() + CUT_OFF;
  }
}
