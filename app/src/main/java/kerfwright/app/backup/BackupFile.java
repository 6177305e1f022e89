package kerfwright.app.backup;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A backup in its folder; the time stands in its name, as the clock on the wall showed it.
 *
 * @param file the archive
 * @param at when it was made
 */
public record BackupFile(Path file, LocalDateTime at) {
  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuuMMdd-HHmm");
  private static final Pattern NAME = Pattern.compile("kerfwright-(\\d{8}-\\d{4})\\.zip");

  static String name(LocalDateTime at) {
    return "kerfwright-" + MINUTE.format(at) + ".zip";
  }

  /** Empty where the file has not the name of a backup. */
  static Optional<BackupFile> of(Path file) {
    Matcher name = NAME.matcher(file.getFileName().toString());
    if (!name.matches()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new BackupFile(file, LocalDateTime.parse(name.group(1), MINUTE)));
    } catch (DateTimeParseException noTime) {
      return Optional.empty();
    }
  }
}
