package kerfwright.app.web;

import java.util.Map;
import java.util.function.Function;
import kerfwright.app.security.Doors;
import kerfwright.app.template.Templates;
import kerfwright.app.words.Say;

/** Says at the top of every page that nobody signs in, before anything else there is to say. */
record OpenWarning(Doors doors, Function<Say, String> others) implements Function<Say, String> {
  @Override
  public String apply(Say say) {
    boolean open = doors.kind() == Doors.Kind.OPEN;
    return (open ? Templates.render(say, "signin/open.jte", Map.of()) : "") + others.apply(say);
  }
}
