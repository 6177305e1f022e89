package kerfwright.app.storage;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;

/** Files and folders that nobody but their owner reads, where the file system knows owners. */
public final class Private {
  private Private() {}

  /** The folder, made where it is not there. */
  public static Path folder(Path folder) throws IOException {
    Files.createDirectories(folder);
    allow(folder, "rwx------");
    return folder;
  }

  /** The file, made empty where it is not there; what SQLite puts beside it follows it. */
  public static Path file(Path file) throws IOException {
    if (!Files.exists(file)) {
      Files.createFile(file);
    }
    allow(file, "rw-------");
    return file;
  }

  private static void allow(Path path, String rights) throws IOException {
    if (path.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      try {
        Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(rights));
      } catch (java.nio.file.FileSystemException notOurs) {
        // a file of another owner, as on a shared disk: its rights are that owner's to set
        if (!Files.isWritable(path)) {
          throw notOurs;
        }
      }
    }
  }

  /** A file that was given its name keeps it, even if the machine stops now. */
  public static void sync(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null) {
      return;
    }
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException cannot) {
      // some systems open no folder; they keep renames by themselves
    }
  }
}
