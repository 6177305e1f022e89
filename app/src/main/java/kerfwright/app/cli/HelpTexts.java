package kerfwright.app.cli;

import java.util.Collections;
import java.util.Enumeration;
import java.util.ResourceBundle;
import kerfwright.app.words.Say;
import org.jspecify.annotations.Nullable;

/** What commands and options are for: the texts of {@code words/help}, by the library's keys. */
final class HelpTexts extends ResourceBundle {
  private static final String ROOM = "help.";

  private final Say say;

  HelpTexts(Say say) {
    this.say = say;
  }

  @Override
  protected @Nullable Object handleGetObject(String key) {
    return say.has(ROOM + key) ? say.at(ROOM + key) : null;
  }

  @Override
  public Enumeration<String> getKeys() {
    return Collections.enumeration(
        say.keys("help").stream().map(key -> key.substring(ROOM.length())).toList());
  }
}
