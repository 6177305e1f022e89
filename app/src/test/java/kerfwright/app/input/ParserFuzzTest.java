package kerfwright.app.input;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import kerfwright.app.Wiring;
import kerfwright.app.casefile.CaseFile;
import kerfwright.app.day.DayFile;
import kerfwright.app.drawerfile.DrawerFile;
import kerfwright.app.heatfile.HeatFile;
import kerfwright.app.stocklist.ColumnMapping;
import kerfwright.app.stocklist.ListFile;
import kerfwright.app.stocklist.ListTable;
import kerfwright.app.stocklist.RowMeaning;
import kerfwright.app.stocklist.UnreadableList;
import kerfwright.catalogue.tooth.ToothNotation;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.practice.label.ElementString;
import kerfwright.practice.record.CanonicalText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Changes sound and unsound inputs at random and hands them to every parser: each ends in a value
 * or in its own kind of fault, in time. An input that brings an answer nobody has seen joins the
 * corpus. Twelve seconds in every build; {@code -Pfuzz} goes on for ten minutes. What failed is
 * kept in {@code target/fuzz}; put it under {@code src/test/fuzz/<parser>} and it is tried first.
 */
@Timeout(value = 30, unit = TimeUnit.MINUTES)
class ParserFuzzTest {
  private static final Path KEPT = Path.of("src/test/fuzz");
  private static final Path FAILED = Path.of("target/fuzz");
  private static final long LONGEST_NS = TimeUnit.SECONDS.toNanos(10);
  private static final int MOST_KEPT = 400;
  private static final int LARGEST = 60_000;
  private static final List<String> PIECES =
      List.of(
          "\u0000",
          "\uFEFF",
          "\u202E",
          "\uD83D",
          "-",
          "1e999",
          "1E-400",
          "NaN",
          "9".repeat(40),
          ": ",
          "- ",
          "[",
          "]",
          "{",
          "}",
          "&a ",
          "*a",
          "!!java.lang.Object ",
          "\"",
          "'",
          "\n",
          "\t",
          ",",
          ";",
          "=1+1",
          "%",
          "#",
          "|",
          ">",
          "null",
          "~",
          "true",
          "0x1F",
          "16",
          "#3",
          "UR6",
          "2026-13-45",
          "25:99",
          "\u001d",
          "]d2",
          "0101234567890128",
          "[".repeat(60));

  /** Reads a text and tells what came of it, in a few words; throws only what is a fault. */
  private interface Parser {
    String outcome(String text);
  }

  private interface Reading {
    Object read() throws BadInput, UnreadableList;
  }

  private static String ends(Reading reading) {
    try {
      reading.read();
      return "read";
    } catch (BadInput bad) {
      Set<String> codes = new HashSet<>();
      bad.faults().forEach(one -> codes.add(one.code() + one.field().replaceAll("\\d+", "")));
      return codes.toString();
    } catch (UnreadableList unreadable) {
      return String.valueOf(unreadable.getMessage()).replaceAll("\\d+", "");
    }
  }

  private static final Wiring WIRING = Wiring.production();

  private static SourceText source(String text) throws BadInput {
    try {
      return SourceText.of(
          "fuzz", new java.io.ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    } catch (java.io.IOException never) {
      throw new java.io.UncheckedIOException(never);
    }
  }

  private static Object list(String text) throws UnreadableList {
    ListTable table = ListFile.read("fuzz.csv", text.getBytes(StandardCharsets.UTF_8));
    return new RowMeaning(InstrumentState.QUARANTINE, UUID::randomUUID, Set.of())
        .read(table, ColumnMapping.guess(table.header()));
  }

  /** For parsers whose own fault is this exception, as they document. */
  private static String argument(Runnable reading) {
    try {
      reading.run();
      return "read";
    } catch (IllegalArgumentException | java.time.DateTimeException documented) {
      return documented.getClass().getSimpleName();
    }
  }

  private static final Map<String, Parser> PARSERS =
      new TreeMap<>(
          Map.of(
              "case", text -> ends(() -> new CaseFile(WIRING.cases()).yaml(source(text))),
              "case-json", text -> ends(() -> new CaseFile(WIRING.cases()).json(source(text))),
              "day", text -> ends(() -> new DayFile(one -> List.of()).read(source(text))),
              "heat", text -> ends(() -> HeatFile.read(source(text))),
              "drawer", text -> ends(() -> new DrawerFile(WIRING.instruments()).read(source(text))),
              "list", text -> ends(() -> list(text)),
              "tooth", text -> argument(() -> ToothNotation.parse(text)),
              "label", text -> argument(() -> ElementString.read(text, LocalDate.now().getYear())),
              "record", text -> argument(() -> CanonicalText.entry(text, ""))));

  private static List<String> seeds(String parser) throws Exception {
    List<String> seeds = new ArrayList<>();
    List<Path> folders =
        List.of(KEPT.resolve(parser), Path.of("../examples"), Path.of("../examples/bad"));
    for (Path folder : folders) {
      if (Files.isDirectory(folder)) {
        try (var files = Files.list(folder).sorted()) {
          for (Path file : files.filter(Files::isRegularFile).toList()) {
            String text = Files.readString(file, StandardCharsets.ISO_8859_1);
            if (folder.equals(folders.get(0)) || belongs(parser, file.getFileName().toString())) {
              seeds.add(text);
            }
          }
        }
      }
    }
    seeds.addAll(List.of("", "16", "{\"case\": \"K-1\"}", "01012345678901281726123110A1"));
    return seeds;
  }

  private static boolean belongs(String parser, String file) {
    return switch (parser) {
      case "day" -> file.startsWith("day");
      case "heat" -> file.startsWith("heat");
      case "drawer", "list" -> file.endsWith(".csv");
      case "case" -> file.endsWith(".yaml") && !file.startsWith("day");
      default -> false;
    };
  }

  private static String changed(String text, List<String> corpus, SplittableRandom chance) {
    StringBuilder all = new StringBuilder(text);
    for (int i = 0; i <= chance.nextInt(4); i++) {
      int at = chance.nextInt(all.length() + 1);
      int end = Math.min(all.length(), at + chance.nextInt(1 << chance.nextInt(1, 9)));
      switch (chance.nextInt(6)) {
        case 0 -> all.delete(at, end);
        case 1 -> all.insert(at, all.substring(at, end).repeat(1 + chance.nextInt(30)));
        case 2 -> all.replace(at, end, PIECES.get(chance.nextInt(PIECES.size())));
        case 3 -> all.insert(at, PIECES.get(chance.nextInt(PIECES.size())));
        case 4 -> {
          String other = corpus.get(chance.nextInt(corpus.size()));
          int from = chance.nextInt(other.length() + 1);
          all.replace(at, all.length(), other.substring(from));
        }
        default -> {
          if (at < all.length()) {
            all.setCharAt(at, (char) chance.nextInt(chance.nextBoolean() ? 128 : 0x3000));
          }
        }
      }
      if (all.length() > LARGEST) {
        all.setLength(LARGEST);
      }
    }
    return all.toString();
  }

  @Test
  void everyParserEndsWellWhateverItIsGiven() throws Exception {
    long seconds = Long.getLong("fuzz.seconds", 12);
    long seed = Long.getLong("fuzz.seed", 20261130);
    List<String> failures = new ArrayList<>();
    for (Map.Entry<String, Parser> one : PARSERS.entrySet()) {
      SplittableRandom chance = new SplittableRandom(seed);
      List<String> corpus = seeds(one.getKey());
      Set<String> seen = new HashSet<>();
      long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(seconds * 1000 / PARSERS.size());
      for (int i = 0; i < corpus.size() || System.nanoTime() < end; i++) {
        boolean first = i < corpus.size();
        String text =
            first
                ? corpus.get(i)
                : changed(corpus.get(chance.nextInt(corpus.size())), corpus, chance);
        long begun = System.nanoTime();
        String wrong = null;
        try {
          String outcome = one.getValue().outcome(text);
          if (seen.add(outcome) && !first && corpus.size() < MOST_KEPT) {
            corpus.add(text);
            i++;
          }
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
          wrong = fault.toString();
        }
        if (wrong == null && System.nanoTime() - begun > LONGEST_NS) {
          wrong = "took too long";
        }
        if (wrong != null && failures.size() < 20) {
          Path folder = Files.createDirectories(FAILED.resolve(one.getKey()));
          Path file = folder.resolve(Integer.toHexString(text.hashCode()));
          Files.writeString(file, text);
          failures.add(one.getKey() + " " + file + ": " + wrong);
        }
      }
    }
    assertEquals(List.of(), failures);
  }
}
