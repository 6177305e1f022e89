package kerfwright.app.backup;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Where backups may go, so that no page of the program writes or deletes anywhere else: the
 * practice's own folder, the user's home, disks that were plugged in, and what whoever set the
 * machine up allows besides.
 */
final class BackupRoots {
  /** Environment variable with more of them, parted as paths are on this system. */
  static final String VARIABLE = "KERFWRIGHT_BACKUP_ROOTS";

  private static final List<String> PLUGGED_IN =
      List.of("/mnt", "/media", "/run/media", "/Volumes");

  private final List<Path> roots;

  BackupRoots(List<Path> roots) {
    this.roots = List.copyOf(roots);
  }

  static BackupRoots ofThisMachine(@Nullable Path own) {
    List<Path> roots = new ArrayList<>();
    if (own != null) {
      roots.add(own.toAbsolutePath().normalize());
    }
    String home = System.getProperty("user.home", "");
    if (!home.isEmpty()) {
      roots.add(Path.of(home));
    }
    if (File.separatorChar == '/') {
      PLUGGED_IN.forEach(one -> roots.add(Path.of(one)));
    } else {
      String system = String.valueOf(System.getenv("SystemDrive"));
      for (File drive : File.listRoots()) {
        if (!drive.getPath().startsWith(system)) {
          roots.add(drive.toPath());
        }
      }
    }
    String more = System.getenv(VARIABLE);
    if (more != null) {
      for (String one : more.split(File.pathSeparator)) {
        if (!one.isBlank()) {
          roots.add(Path.of(one.strip()));
        }
      }
    }
    return new BackupRoots(roots);
  }

  /** True below one of them, also after links are followed as far as the folder exists. */
  boolean allow(Path folder) {
    Path plain = folder.toAbsolutePath().normalize();
    Path there = plain;
    while (there != null && !there.toFile().exists()) {
      there = there.getParent();
    }
    if (there == null) {
      return false;
    }
    try {
      Path real = there.toRealPath().resolve(there.relativize(plain)).normalize();
      for (Path root : roots) {
        Path realRoot = root.toFile().exists() ? root.toRealPath() : root;
        if (real.startsWith(realRoot)) {
          return true;
        }
      }
      return false;
    } catch (IOException unreadable) {
      return false;
    }
  }

  /** For a message. */
  String shown() {
    return roots.stream().map(Path::toString).collect(Collectors.joining(", "));
  }
}
