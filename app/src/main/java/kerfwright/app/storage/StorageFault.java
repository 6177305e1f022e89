package kerfwright.app.storage;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.Locale;
import java.util.Optional;

/** What the disk, the folder or the database server is at fault for, and not the program. */
public enum StorageFault {
  DISK_FULL,
  FORBIDDEN,
  UNREADABLE,
  SERVER_AWAY,
  /** A newer program wrote what is to be read. */
  NEWER;

  /** Empty where the failure has another cause. */
  public static Optional<StorageFault> of(Throwable failure) {
    for (Throwable one = failure; one != null; one = one.getCause()) {
      if (one instanceof StoredDocument.Newer) {
        return Optional.of(NEWER);
      }
      String text = String.valueOf(one.getMessage()).toLowerCase(Locale.ROOT);
      if (text.contains("no space left")
          || text.contains("sqlite_full")
          || text.contains("quota")) {
        return Optional.of(DISK_FULL);
      }
      if (one instanceof AccessDeniedException
          || text.contains("sqlite_readonly")
          || text.contains("sqlite_cantopen")
          || one instanceof FileSystemException && text.contains("read-only file system")) {
        return Optional.of(FORBIDDEN);
      }
      if (text.contains("sqlite_ioerr") || text.contains("sqlite_corrupt")) {
        return Optional.of(UNREADABLE);
      }
      if (one instanceof SQLTransientConnectionException
          || one instanceof SQLException sql
              && String.valueOf(sql.getSQLState()).startsWith("08")) {
        return Optional.of(SERVER_AWAY);
      }
    }
    return Optional.empty();
  }

  /** Key of what pages say. */
  public String words() {
    return "page.problem-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The file or folder a failure names, empty where it names none. */
  public static String place(Throwable failure) {
    for (Throwable one = failure; one != null; one = one.getCause()) {
      if (one instanceof FileSystemException file && file.getFile() != null) {
        return file.getFile();
      }
    }
    return "";
  }
}
