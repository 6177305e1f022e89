package kerfwright.app.teaching;

import java.util.List;

/**
 * A topic as it is shown, step by step.
 *
 * @param topic what it is about
 * @param scene what it is shown with
 * @param frames the steps in order
 * @param rows figures that belong to all steps, with the words of their heads first; may be empty
 * @param said what is shown, in one sentence with its figures
 */
public record Lecture(
    Topic topic, Scene scene, List<Frame> frames, List<List<String>> rows, String said) {
  public Lecture {
    frames = List.copyOf(frames);
    rows = List.copyOf(rows);
  }

  /**
   * One step.
   *
   * @param svg the drawing
   * @param title what happens
   * @param says what the figures say
   */
  public record Frame(String svg, String title, String says) {}
}
