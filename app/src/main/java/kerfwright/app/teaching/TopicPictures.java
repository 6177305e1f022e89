package kerfwright.app.teaching;

import kerfwright.app.words.Say;

/** The step of a topic that shows best what it is about. */
public final class TopicPictures {
  private TopicPictures() {}

  public static String of(Say say, Topic topic) {
    int step =
        switch (topic) {
          case PRESSED -> 4;
          case PLOUGHED -> 3;
          case CHIP, FLUTES, GRITS -> 2;
          case THRESHOLD -> 1;
        };
    Scene usual = Scene.of(topic, name -> "");
    String svg = Lectures.of(say, topic, usual).frames().get(step - 1).svg();
    String id = topic.id() + "-" + step;
    return svg.replace("\"" + id, "\"card-" + id).replace(" " + id, " card-" + id);
  }
}
