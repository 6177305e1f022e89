package kerfwright.app.backup;

import java.io.FilterInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file in a folder of its own that is gone with it once it has been read. */
final class SelfDeletingFile extends FilterInputStream {
  private final Path file;

  SelfDeletingFile(Path file) throws IOException {
    super(Files.newInputStream(file));
    this.file = file;
  }

  @Override
  public void close() throws IOException {
    super.close();
    Files.deleteIfExists(file);
    Path folder = file.getParent();
    if (folder != null) {
      Files.deleteIfExists(folder);
    }
  }
}
