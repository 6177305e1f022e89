package kerfwright.app.backup;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import kerfwright.app.input.BadFile;
import kerfwright.app.input.BadInput;
import kerfwright.app.storage.Database;
import kerfwright.app.storage.Refill;
import kerfwright.app.storage.Seal;
import kerfwright.app.storage.Snapshot;
import kerfwright.app.storage.TableShape;
import kerfwright.quantity.Message;
import net.lingala.zip4j.ZipFile;
import org.jspecify.annotations.Nullable;

/** Puts what an archive holds into an empty practice; nothing that is there is ever overwritten. */
final class Restoration {
  private static final JsonFactory JSON = new JsonFactory();

  private final Path archive;

  private final @Nullable String key;

  private Restoration(Path archive, @Nullable String key) {
    this.archive = archive;
    this.key = key;
  }

  /** Opens a database at a version of the schema. */
  @FunctionalInterface
  interface Opener {
    Database open(String schema) throws BadInput;
  }

  /**
   * Restores, all or nothing; what stands there afterwards is compared with the archive before it
   * is kept.
   */
  static Manifest of(Path archive, @Nullable String key, Opener opener) throws BadInput {
    return new Restoration(archive, key).run(opener);
  }

  /** Restores into a folder that is thrown away: whether it could be, and how long it takes. */
  static Manifest drill(Path archive, @Nullable String key) throws BadInput, IOException {
    Path folder = Files.createTempDirectory("kerfwright-drill");
    try {
      return of(archive, key, schema -> Database.file(folder.resolve(Database.FILE), schema));
    } finally {
      clear(folder);
    }
  }

  private static void clear(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      files.forEach(file -> file.toFile().delete());
    }
    Files.delete(folder);
  }

  private Manifest run(Opener opener) throws BadInput {
    if (!Files.isRegularFile(archive)) {
      throw new BadInput(archive.toString(), Message.of("fault.no-file"));
    }
    try {
      Manifest manifest = Archive.check(archive, key);
      try (Database database = opener.open(manifest.schema())) {
        if (!isEmpty(database, manifest)) {
          throw new BadInput("restore", Message.of("backup.not-empty"));
        }
        refill(database, manifest);
      }
      return manifest;
    } catch (IOException broken) {
      throw new BadInput(archive.getFileName().toString(), BadFile.why(broken));
    }
  }

  /** Empty is what is as a database was when it was made. */
  private static boolean isEmpty(Database database, Manifest manifest)
      throws BadInput, IOException {
    Path folder = Files.createTempDirectory("kerfwright-empty");
    try (Database made = Database.file(folder.resolve(Database.FILE), manifest.schema());
        Snapshot empty = Snapshot.of(made);
        Snapshot there = Snapshot.of(database)) {
      if (!there.schema().equals(manifest.schema())) {
        throw new BadInput(
            "restore", Message.of("backup.other-schema", there.schema(), manifest.schema()));
      }
      return sorted(Archive.sums(empty)).equals(sorted(Archive.sums(there)));
    } finally {
      clear(folder);
    }
  }

  private static List<String> sorted(List<String> sums) {
    return sums.stream().sorted().toList();
  }

  private void refill(Database database, Manifest manifest) throws BadInput, IOException {
    Map<String, Manifest.Entry> kept =
        manifest.tables().stream()
            .collect(Collectors.toMap(Manifest.Entry::name, Function.identity()));
    try (ZipFile zip = Archive.opened(archive, key);
        Refill refill = Refill.of(database)) {
      for (TableShape table : refill.tables()) {
        Manifest.Entry entry = kept.get(table.name());
        if (entry == null || !entry.columns().equals(table.columns())) {
          throw new BadInput(
              archive.getFileName().toString(), Message.of("backup.other-table", table.name()));
        }
        try (InputStream in = Archive.open(zip, entry.json().file());
            JsonParser json = JSON.createParser(in)) {
          json.nextToken();
          refill.fill(table, () -> row(json, table));
        }
      }
      List<String> expected = new ArrayList<>();
      kept.values().forEach(one -> expected.add(one.name() + " " + one.json().sha256()));
      if (!sorted(Archive.sums(refill.filled())).equals(sorted(expected))) {
        throw new IllegalStateException("what was restored differs from the archive");
      }
      Seal seal = manifest.seal();
      if (!refill.filled().chains().hold()
          || seal != null && !seal.agrees(refill.filled().seal())) {
        throw new BadInput(archive.getFileName().toString(), Message.of("backup.chain-broken"));
      }
      refill.keep();
    }
  }

  private static @Nullable Object @Nullable [] row(JsonParser json, TableShape table)
      throws IOException {
    if (json.nextToken() != JsonToken.START_OBJECT) {
      return null;
    }
    @Nullable Object[] values = new Object[table.columns().size()];
    for (int i = 0; i < values.length; i++) {
      TableShape.Column column = table.columns().get(i);
      if (!column.name().equals(json.nextFieldName())) {
        throw new BadFile("backup.row-without", table.name() + "." + column.name());
      }
      json.nextToken();
      values[i] = value(json, column.kind());
    }
    if (json.nextToken() != JsonToken.END_OBJECT) {
      throw new BadFile("backup.row-with-more", table.name());
    }
    return values;
  }

  private static @Nullable Object value(JsonParser json, TableShape.Kind kind) throws IOException {
    if (json.currentToken() == JsonToken.VALUE_NULL) {
      return null;
    }
    return switch (kind) {
      case TEXT -> json.getText();
      case WHOLE -> json.getLongValue();
      case REAL -> json.getDoubleValue();
      case BYTES -> Base64.getDecoder().decode(json.getText());
    };
  }
}
