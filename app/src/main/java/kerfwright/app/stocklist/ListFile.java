package kerfwright.app.stocklist;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a list handed in as CSV (UTF-8; comma, semicolon or tab) or as an XLSX workbook. */
public final class ListFile {
  /** Largest file read, in bytes. */
  public static final int LIMIT_BYTES = 8 * 1024 * 1024;

  private ListFile() {}

  /** Reads the table; what it is, its first bytes tell, never its name. */
  public static ListTable read(String name, byte[] bytes) throws UnreadableList {
    if (bytes.length > LIMIT_BYTES) {
      throw new UnreadableList(name, 0, "listed.too-large");
    }
    if (startsWith(bytes, 'P', 'K', 3, 4)) {
      return Workbook.read(name, bytes);
    }
    if (startsWith(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
      throw new UnreadableList(name, 0, "listed.old-workbook");
    }
    return csv(name, text(name, bytes));
  }

  private static boolean startsWith(byte[] bytes, int... start) {
    for (int i = 0; i < start.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != start[i]) {
        return false;
      }
    }
    return true;
  }

  private static String text(String name, byte[] bytes) throws UnreadableList {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException notText) {
      throw new UnreadableList(name, 0, "listed.not-utf8");
    }
  }

  private static ListTable csv(String name, String text) throws UnreadableList {
    CSVFormat format = CSVFormat.DEFAULT.builder().setDelimiter(delimiter(text)).get();
    TableBuilder builder = new TableBuilder(name);
    long line = 0;
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      for (CSVRecord cells : parser) {
        line = parser.getCurrentLineNumber();
        List<String> row = new ArrayList<>();
        cells.forEach(row::add);
        builder.row(row, (int) line);
      }
    } catch (CSVException | UncheckedIOException broken) {
      throw broken(name, line);
    } catch (IOException broken) {
      throw broken(name, line);
    }
    return builder.table();
  }

  private static UnreadableList broken(String name, long line) {
    return new UnreadableList(name, 0, "listed.broken", (int) line);
  }

  /** The sign that stands most often in the first line. */
  private static char delimiter(String text) {
    String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    char best = ',';
    for (char sign : new char[] {';', '\t'}) {
      if (count(first, sign) > count(first, best)) {
        best = sign;
      }
    }
    return best;
  }

  private static long count(String text, char sign) {
    return text.chars().filter(c -> c == sign).count();
  }
}
