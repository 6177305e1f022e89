package kerfwright.app.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Private;
import kerfwright.quantity.Message;
import org.jspecify.annotations.Nullable;

/** Where a command finds the practice: the folder it names, or the server the environment names. */
final class Place {
  private Place() {}

  /** A practice that is there. */
  static Database there(@Nullable Path folder) throws BadInput {
    String url = server(folder);
    return url == null ? Database.file(file(folder)) : Database.server(url);
  }

  /** A practice that is there, to be looked at alone. */
  static Database reading(@Nullable Path folder) throws BadInput {
    String url = server(folder);
    return url == null ? Database.reading(file(folder)) : Database.readingServer(url);
  }

  private static Path file(@Nullable Path folder) throws BadInput {
    Path file = given(folder).resolve(Database.FILE);
    if (!Files.isRegularFile(file)) {
      throw new BadInput("--data", Message.of("backup.no-practice", String.valueOf(folder)));
    }
    return file;
  }

  /** A practice that is made where there is none, at a version of the schema. */
  static Database empty(@Nullable Path folder, String schema) throws BadInput {
    String url = server(folder);
    if (url != null) {
      return Database.server(url, schema);
    }
    Path into = given(folder);
    try {
      Private.folder(into);
      Private.file(into.resolve(Database.FILE));
    } catch (IOException refused) {
      throw new BadInput("--data", Message.of("fault.folder-not-made", into.toString()));
    }
    return Database.file(into.resolve(Database.FILE), schema);
  }

  private static Path given(@Nullable Path folder) throws BadInput {
    if (folder == null) {
      throw new BadInput("--data", Message.of("backup.no-folder-given", Database.VARIABLE));
    }
    return folder;
  }

  private static @Nullable String server(@Nullable Path folder) throws BadInput {
    String url = System.getenv(Database.VARIABLE);
    if (url == null || url.isBlank()) {
      return null;
    }
    if (folder != null) {
      throw new BadInput("--data", Message.of("command.both-given", Database.VARIABLE));
    }
    return url.strip();
  }
}
