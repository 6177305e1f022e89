package kerfwright.app.label;

import java.util.List;

/**
 * What stands on one label.
 *
 * @param code text of the DataMatrix
 * @param title in large letters
 * @param lines below it, as many as there is room for
 */
public record Label(String code, String title, List<String> lines) {
  public Label {
    lines = lines.stream().filter(line -> !line.isBlank()).toList();
  }
}
