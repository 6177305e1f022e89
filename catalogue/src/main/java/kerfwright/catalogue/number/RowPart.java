package kerfwright.catalogue.number;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kerfwright.catalogue.Remark;
import kerfwright.quantity.Basis;
import org.jspecify.annotations.Nullable;

/** A row being resolved: its columns, what its number and US size say, and what was noted. */
class RowPart {
  final DrawerFields row;
  final FieldReader read;
  final List<Remark> assumed;
  final @Nullable NumberExplanation number;
  final @Nullable UsSize us;

  RowPart(DrawerFields row) {
    this.row = row;
    this.read = new FieldReader();
    this.assumed = new ArrayList<>();
    this.number = read.number(row.at("iso"));
    this.us = read.usSize(row.at("us"));
  }

  RowPart(RowPart other) {
    this.row = other.row;
    this.read = other.read;
    this.assumed = other.assumed;
    this.number = other.number;
    this.us = other.us;
  }

  void noteMemory(Basis basis, String code, Object... values) {
    if (basis == Basis.FROM_MEMORY) {
      assumed.add(Remark.of(code, values));
    }
  }

  NumberExplanation number() {
    return requireNonNull(number);
  }

  UsSize us() {
    return requireNonNull(us);
  }

  static String plain(double millimetres) {
    String text = String.format(Locale.ROOT, "%.2f", millimetres);
    return text.endsWith("0") ? text.substring(0, text.length() - 1) : text;
  }
}
