package kerfwright.app.label;

import java.util.List;
import kerfwright.practice.drawer.StockItem;
import kerfwright.practice.label.MakersCode;
import kerfwright.practice.label.OwnCode;
import kerfwright.practice.label.ScanFault;
import org.jspecify.annotations.Nullable;

/**
 * What a scan that leads nowhere by itself is answered with.
 *
 * @param code as scanned
 * @param gone kind of the thing an own code named that is not there, or null
 * @param fault why a maker's code cannot be read, or null
 * @param ways what was read: nothing, one, or several ways
 * @param same items of the drawer this package may be
 * @param article items of the same article
 * @param refusal key of the text why a package could not be given to an item, empty where it was
 *     not tried
 * @param label what was typed as the label of that item
 */
public record ScanAnswer(
    String code,
    OwnCode.@Nullable Kind gone,
    @Nullable ScanFault fault,
    List<MakersCode> ways,
    List<StockItem> same,
    List<StockItem> article,
    String refusal,
    String label) {
  public ScanAnswer {
    ways = List.copyOf(ways);
    same = List.copyOf(same);
    article = List.copyOf(article);
  }

  private static ScanAnswer of(
      String code, OwnCode.@Nullable Kind gone, @Nullable ScanFault fault, List<MakersCode> ways) {
    return new ScanAnswer(code, gone, fault, ways, List.of(), List.of(), "", "");
  }

  static ScanAnswer nothing() {
    return of("", null, null, List.of());
  }

  static ScanAnswer gone(String code, OwnCode.Kind kind) {
    return of(code, kind, null, List.of());
  }

  static ScanAnswer faulty(String code, ScanFault fault) {
    return of(code, null, fault, List.of());
  }

  static ScanAnswer several(String code, List<MakersCode> ways) {
    return of(code, null, null, ways);
  }

  static ScanAnswer read(
      String code, MakersCode read, List<StockItem> same, List<StockItem> article) {
    return new ScanAnswer(code, null, null, List.of(read), same, article, "", "");
  }

  ScanAnswer refused(String fault, String typed) {
    return new ScanAnswer(code, gone, this.fault, ways, same, article, fault, typed);
  }

  /** Key of the text that says what is wrong with the code. */
  public String faultKey() {
    return fault == null ? "" : "scan.fault-" + fault.kind().id();
  }
}
