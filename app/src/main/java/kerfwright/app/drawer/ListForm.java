package kerfwright.app.drawer;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import kerfwright.catalogue.instrument.InstrumentKind;
import kerfwright.catalogue.instrument.ShankType;
import kerfwright.catalogue.instrument.ShapeFamily;
import kerfwright.catalogue.piece.PieceKinds;
import kerfwright.practice.drawer.DrawerQuery;
import kerfwright.practice.drawer.InstrumentState;
import kerfwright.quantity.Identified;
import org.jspecify.annotations.Nullable;

/**
 * What the list shows, as it stands in its address.
 *
 * @param values fields that are not blank, in the order of the form
 */
public record ListForm(Map<String, String> values) {
  static final int PAGE_SIZE = 50;
  private static final String[] FIELDS = {"q", "kind", "shape", "shank", "state", "page"};

  static ListForm of(Function<String, @Nullable String> field) {
    Map<String, String> values = new LinkedHashMap<>();
    for (String name : FIELDS) {
      String value = field.apply(name);
      if (value != null && !value.isBlank() && value.length() <= 200) {
        values.put(name, value.strip());
      }
    }
    return new ListForm(values);
  }

  public String at(String name) {
    return values.getOrDefault(name, "");
  }

  public int page() {
    return at("page").matches("\\d{1,5}") ? Integer.parseInt(at("page")) : 0;
  }

  public boolean narrowed() {
    return values.keySet().stream().anyMatch(name -> !name.equals("page"));
  }

  /** The address of another page of the same list. */
  public String turnedTo(int page) {
    Map<String, String> turned = new LinkedHashMap<>(values);
    turned.put("page", Integer.toString(page));
    return "/drawer?" + new ListForm(turned).query();
  }

  public String query() {
    StringBuilder query = new StringBuilder();
    values.forEach(
        (name, value) -> {
          query.append(query.isEmpty() ? "" : "&").append(name).append('=');
          query.append(URLEncoder.encode(value, StandardCharsets.UTF_8));
        });
    return query.toString();
  }

  private static @Nullable String kind(String id) {
    boolean known = InstrumentKind.byId(id).isPresent() || PieceKinds.byId(id).isPresent();
    return known ? id : null;
  }

  DrawerQuery toQuery() {
    return new DrawerQuery(
        at("q"),
        kind(at("kind")),
        Identified.of(ShapeFamily.class, at("shape")).orElse(null),
        Arrays.stream(ShankType.values())
            .filter(one -> one.name().equals(at("shank")))
            .findFirst()
            .orElse(null),
        Identified.of(InstrumentState.class, at("state")).orElse(null),
        page(),
        PAGE_SIZE);
  }
}
