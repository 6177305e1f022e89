package kerfwright.app.stocklist;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;

/** Reads the first sheet of an XLSX workbook. */
final class Workbook {
  /** What a workbook may grow to when unpacked: a real list of 50 000 rows stays well below. */
  static final long UNPACKED_LIMIT_BYTES = 96L * 1024 * 1024;

  private static final int MOST_PARTS = 1000;
  private static final int LONGEST_NUMBER = 60;

  private Workbook() {}

  static ListTable read(String name, byte[] bytes) throws UnreadableList {
    refuseBombs(name, bytes);
    TableBuilder builder = new TableBuilder(name);
    try (ReadableWorkbook workbook = new ReadableWorkbook(new ByteArrayInputStream(bytes));
        Stream<Row> rows = workbook.getFirstSheet().openStream()) {
      Iterator<Row> each = rows.iterator();
      while (each.hasNext()) {
        Row row = each.next();
        builder.row(cells(name, row), row.getRowNum());
      }
    } catch (IOException | ExcelReaderException broken) {
      throw new UnreadableList(name, 0, "listed.no-workbook");
    } catch (IllegalArgumentException | IllegalStateException | IndexOutOfBoundsException broken) {
      throw new UnreadableList(name, 0, "listed.damaged-workbook");
    } catch (java.util.NoSuchElementException | NullPointerException broken) {
      throw new UnreadableList(name, 0, "listed.damaged-workbook");
    }
    return builder.table();
  }

  /** Unpacks the whole file once without keeping anything, and counts. */
  private static void refuseBombs(String name, byte[] bytes) throws UnreadableList {
    byte[] buffer = new byte[64 * 1024];
    long unpacked = 0;
    int parts = 0;
    try (ZipFile zip =
        ZipFile.builder()
            .setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes))
            .setIgnoreLocalFileHeader(true)
            .get()) {
      for (ZipArchiveEntry part : Collections.list(zip.getEntries())) {
        if (++parts > MOST_PARTS) {
          throw new UnreadableList(name, 0, "listed.many-parts", MOST_PARTS);
        }
        try (InputStream content = zip.getInputStream(part)) {
          for (int read = content.read(buffer); read >= 0; read = content.read(buffer)) {
            unpacked += read;
            if (unpacked > UNPACKED_LIMIT_BYTES) {
              throw new UnreadableList(name, 0, "listed.bomb");
            }
          }
        }
      }
    } catch (IOException | IllegalArgumentException broken) {
      throw new UnreadableList(name, 0, "listed.no-workbook");
    }
  }

  private static List<String> cells(String name, Row row) throws UnreadableList {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < Math.min(row.getCellCount(), ListTable.MOST_COLUMNS + 1); i++) {
      Cell cell = row.getOptionalCell(i).orElse(null);
      if (cell == null || cell.getType() == CellType.EMPTY) {
        cells.add("");
        continue;
      }
      if (cell.getType() == CellType.FORMULA || cell.getFormula() != null) {
        throw new UnreadableList(name, 0, "listed.formula-cell", cell.getAddress().toString());
      }
      cells.add(text(cell));
    }
    return cells;
  }

  /** A whole number without a point, as people typed it. */
  private static String text(Cell cell) {
    if (cell.getType() == CellType.NUMBER) {
      BigDecimal number = cell.asNumber();
      if (number.signum() == 0) {
        return "0";
      }
      BigDecimal bare = number.stripTrailingZeros();
      // written out, a number such as 1E999999 would fill the memory
      return Math.abs(bare.scale()) > LONGEST_NUMBER ? bare.toString() : bare.toPlainString();
    }
    String raw = cell.getType() == CellType.STRING ? cell.asString() : cell.getRawValue();
    return raw == null ? "" : raw;
  }
}
