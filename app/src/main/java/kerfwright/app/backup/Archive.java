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
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Snapshot;
import kerfwright.app.storage.TableShape;

/**
 * One file with every table as CSV and JSON, and a manifest with counts and SHA-256 sums. Tables
 * and columns are those the database has; none is named here.
 */
final class Archive {
  private static final String UNFINISHED = ".part";

  private Archive() {}

  /** Writes everything as it stands now; the file appears under its name only when it is whole. */
  static Manifest write(Database database, Path file, Instant now) throws IOException {
    Path part = file.resolveSibling(file.getFileName() + UNFINISHED);
    try {
      Manifest manifest;
      try (Snapshot snapshot = Snapshot.of(database);
          OutputStream out = Files.newOutputStream(part);
          ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(out))) {
        manifest = write(snapshot, zip, now);
      }
      try (FileChannel written = FileChannel.open(part, StandardOpenOption.WRITE)) {
        written.force(true);
      }
      check(part);
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
      return manifest;
    } finally {
      Files.deleteIfExists(part);
    }
  }

  private static Manifest write(Snapshot snapshot, ZipOutputStream zip, Instant now)
      throws IOException {
    List<Manifest.Entry> entries = new ArrayList<>();
    for (TableShape table : snapshot.tables()) {
      Manifest.Entry bare = new Manifest.Entry(table, 0, "", "");
      MessageDigest csv = sha256();
      zip.putNextEntry(new ZipEntry(bare.csvFile()));
      TableFiles.csv(snapshot, table, new DigestOutputStream(zip, csv));
      zip.closeEntry();
      MessageDigest json = sha256();
      zip.putNextEntry(new ZipEntry(bare.jsonFile()));
      long rows = TableFiles.json(snapshot, table, new DigestOutputStream(zip, json));
      zip.closeEntry();
      entries.add(new Manifest.Entry(table, rows, hex(csv), hex(json)));
    }
    Manifest manifest = new Manifest(snapshot.schema(), now, snapshot.seal(), entries);
    zip.putNextEntry(new ZipEntry(Manifest.FILE));
    zip.write(manifest.bytes());
    zip.closeEntry();
    return manifest;
  }

  /** Sums of the JSON of every table as it stands, in the order of the tables. */
  static List<String> sums(Snapshot snapshot) throws IOException {
    List<String> sums = new ArrayList<>();
    for (TableShape table : snapshot.tables()) {
      MessageDigest json = sha256();
      OutputStream nowhere = new DigestOutputStream(OutputStream.nullOutputStream(), json);
      TableFiles.json(snapshot, table, nowhere);
      sums.add(table.name() + " " + hex(json));
    }
    return sums;
  }

  /** Reads all of an archive against its sums. */
  static Manifest check(Path file) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      Manifest manifest = manifest(zip);
      for (Manifest.Entry table : manifest.tables()) {
        check(zip, table.csvFile(), table.csvSha256());
        check(zip, table.jsonFile(), table.jsonSha256());
      }
      return manifest;
    }
  }

  static Manifest manifest(ZipFile zip) throws IOException {
    try (InputStream in = open(zip, Manifest.FILE)) {
      return Manifest.read(in.readAllBytes());
    }
  }

  static InputStream open(ZipFile zip, String name) throws IOException {
    ZipEntry entry = zip.getEntry(name);
    if (entry == null) {
      throw new IOException("lacks " + name);
    }
    return new BufferedInputStream(zip.getInputStream(entry));
  }

  private static void check(ZipFile zip, String name, String expected) throws IOException {
    MessageDigest sum = sha256();
    try (InputStream in = open(zip, name)) {
      in.transferTo(new DigestOutputStream(OutputStream.nullOutputStream(), sum));
    }
    if (!hex(sum).equals(expected)) {
      throw new IOException("is damaged: " + name + " does not match its sum");
    }
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException everyJdkHasIt) {
      throw new IllegalStateException(everyJdkHasIt);
    }
  }

  private static String hex(MessageDigest digest) {
    return HexFormat.of().formatHex(digest.digest());
  }
}
