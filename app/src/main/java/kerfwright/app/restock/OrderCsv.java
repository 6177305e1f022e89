package kerfwright.app.restock;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.stream.Collectors;
import kerfwright.app.form.CellText;
import kerfwright.app.words.Say;
import kerfwright.practice.restock.ArticleNeed;
import kerfwright.practice.restock.PieceNeed;
import kerfwright.practice.restock.RestockReport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** The order as CSV; figures with a decimal point, whatever the language. */
final class OrderCsv {
  private OrderCsv() {}

  static String of(Say say, RestockReport report) {
    StringBuilder text = new StringBuilder();
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setHeader("pieces", "number", "article", "price", "cost", "here", "reason")
            .get();
    try (CSVPrinter csv = new CSVPrinter(text, format)) {
      for (ArticleNeed need : report.orders()) {
        csv.printRecord(
            need.order(),
            CellText.of(RestockWords.number(need.article())),
            CellText.of(RestockWords.article(say, need.article())),
            plain(need.price()),
            plain(need.cost()),
            need.pieces(),
            need.reasons().stream()
                .map(one -> RestockWords.reason(say, need, one, report.options().aheadWeeks()))
                .collect(Collectors.joining(" ")));
      }
      for (PieceNeed need : report.pieces()) {
        csv.printRecord(
            need.order(),
            "",
            CellText.of(RestockWords.type(say, need.type())),
            plain(need.price()),
            plain(need.cost()),
            need.here(),
            CellText.of(
                String.join(
                    " ", RestockWords.reasons(say, need, report.options().historyWeeks()))));
      }
      return text.toString();
    } catch (IOException impossible) {
      throw new java.io.UncheckedIOException(impossible);
    }
  }

  private static String plain(@org.jspecify.annotations.Nullable BigDecimal amount) {
    return amount == null ? "" : amount.toPlainString();
  }
}
