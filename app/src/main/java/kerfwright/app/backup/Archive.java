package kerfwright.app.backup;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import kerfwright.app.input.BadFile;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Private;
import kerfwright.app.storage.Snapshot;
import kerfwright.app.storage.TableShape;
import kerfwright.practice.record.Sha256;
import net.lingala.zip4j.ZipFile;
import net.lingala.zip4j.exception.ZipException;
import net.lingala.zip4j.io.outputstream.ZipOutputStream;
import net.lingala.zip4j.model.FileHeader;
import net.lingala.zip4j.model.ZipParameters;
import net.lingala.zip4j.model.enums.AesKeyStrength;
import net.lingala.zip4j.model.enums.EncryptionMethod;
import org.jspecify.annotations.Nullable;

/**
 * One file with every table as CSV and JSON, and a manifest with counts and SHA-256 sums. Tables
 * and columns are those the database has; none is named here.
 */
final class Archive {
  private static final String UNFINISHED = ".part";

  private Archive() {}

  /** Writes everything as it stands now; the file appears under its name only when it is whole. */
  static Manifest write(Database database, Path file, Instant now) throws IOException {
    return write(database, file, now, null);
  }

  /**
   * The same, locked.
   *
   * @param key what opens it again, null for an open one
   */
  static Manifest write(Database database, Path file, Instant now, @Nullable String key)
      throws IOException {
    Path part = file.resolveSibling(file.getFileName() + UNFINISHED);
    try {
      Manifest manifest;
      try (Snapshot snapshot = Snapshot.of(database);
          OutputStream out = Files.newOutputStream(Private.file(part));
          ZipOutputStream zip =
              new ZipOutputStream(
                  new BufferedOutputStream(out), key == null ? null : key.toCharArray())) {
        manifest = write(snapshot, new Packing(zip, key != null), now);
      }
      try (FileChannel written = FileChannel.open(part, StandardOpenOption.WRITE)) {
        written.force(true);
      }
      check(part, key);
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
      Private.sync(file);
      return manifest;
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** Where entries go, each locked or none. */
  private record Packing(ZipOutputStream zip, boolean locked) {
    void begin(String name) throws IOException {
      ZipParameters how = new ZipParameters();
      how.setFileNameInZip(name);
      if (locked) {
        how.setEncryptFiles(true);
        how.setEncryptionMethod(EncryptionMethod.AES);
        how.setAesKeyStrength(AesKeyStrength.KEY_STRENGTH_256);
      }
      zip.putNextEntry(how);
    }
  }

  private static Manifest write(Snapshot snapshot, Packing pack, Instant now) throws IOException {
    ZipOutputStream zip = pack.zip();
    List<Manifest.Entry> entries = new ArrayList<>();
    for (TableShape table : snapshot.tables()) {
      MessageDigest csv = Sha256.digest();
      pack.begin(Manifest.csvFile(table));
      TableFiles.csv(snapshot, table, new DigestOutputStream(zip, csv));
      zip.closeEntry();
      MessageDigest json = Sha256.digest();
      pack.begin(Manifest.jsonFile(table));
      long rows = TableFiles.json(snapshot, table, new DigestOutputStream(zip, json));
      zip.closeEntry();
      entries.add(Manifest.Entry.of(table, rows, hex(csv), hex(json)));
    }
    Manifest manifest = new Manifest(snapshot.schema(), now, snapshot.seal(), entries);
    pack.begin(Manifest.FILE);
    zip.write(manifest.bytes());
    zip.closeEntry();
    return manifest;
  }

  /** Sums of the JSON of every table as it stands, in the order of the tables. */
  static List<String> sums(Snapshot snapshot) throws IOException {
    List<String> sums = new ArrayList<>();
    for (TableShape table : snapshot.tables()) {
      MessageDigest json = Sha256.digest();
      OutputStream nowhere = new DigestOutputStream(OutputStream.nullOutputStream(), json);
      TableFiles.json(snapshot, table, nowhere);
      sums.add(table.name() + " " + hex(json));
    }
    return sums;
  }

  /** Reads all of an archive against its sums. */
  static Manifest check(Path file, @Nullable String key) throws IOException {
    try (ZipFile zip = opened(file, key)) {
      Manifest manifest = manifest(zip);
      for (Manifest.Entry table : manifest.tables()) {
        check(zip, table.csv());
        check(zip, table.json());
      }
      return manifest;
    }
  }

  /** Opened for reading, with its key where it is locked. */
  static ZipFile opened(Path file, @Nullable String key) throws IOException {
    ZipFile zip = new ZipFile(file.toFile());
    if (zip.isEncrypted()) {
      if (key == null) {
        zip.close();
        throw new BadFile("backup.locked");
      }
      zip.setPassword(key.toCharArray());
    }
    return zip;
  }

  static Manifest manifest(ZipFile zip) throws IOException {
    try (InputStream in = open(zip, Manifest.FILE)) {
      return Manifest.read(in.readAllBytes());
    }
  }

  static InputStream open(ZipFile zip, String name) throws IOException {
    FileHeader entry = zip.getFileHeader(name);
    if (entry == null) {
      throw new BadFile("backup.lacks", name);
    }
    try {
      return new BufferedInputStream(zip.getInputStream(entry));
    } catch (ZipException wrong) {
      throw wrong.getType() == ZipException.Type.WRONG_PASSWORD
          ? new BadFile("backup.other-key")
          : wrong;
    }
  }

  private static void check(ZipFile zip, Manifest.Part part) throws IOException {
    MessageDigest sum = Sha256.digest();
    try (InputStream in = open(zip, part.file())) {
      in.transferTo(new DigestOutputStream(OutputStream.nullOutputStream(), sum));
    }
    if (!hex(sum).equals(part.sha256())) {
      throw new BadFile("backup.damaged", part.file());
    }
  }

  private static String hex(MessageDigest digest) {
    return HexFormat.of().formatHex(digest.digest());
  }
}
