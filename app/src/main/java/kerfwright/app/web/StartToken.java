package kerfwright.app.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kerfwright.app.input.BadFile;
import kerfwright.app.input.BadInput;
import kerfwright.app.security.Secrets;
import kerfwright.app.storage.Private;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/**
 * What the printed address carries, so that other accounts of this machine do not get in. It stays
 * with the practice's folder, which its owner alone can read, and so does a bookmark of the
 * address.
 */
final class StartToken {
  private static final String FILE = "start-token";

  private StartToken() {}

  /**
   * The token of a practice.
   *
   * @param folder where the practice is kept, null where it is kept elsewhere: a new one each time
   */
  static String of(@Nullable Path folder) throws BadInput {
    if (folder == null) {
      return Secrets.token();
    }
    Path file = folder.resolve(FILE);
    try {
      String kept = Files.exists(file) ? Files.readString(file).strip() : "";
      if (kept.length() >= 40) {
        return kept;
      }
      String made = Secrets.token();
      Files.writeString(Private.file(file), made);
      return made;
    } catch (IOException unusable) {
      throw new BadInput(
          file.toString(), Message.of("fault.cannot-be-used", BadFile.why(unusable)));
    }
  }
}
