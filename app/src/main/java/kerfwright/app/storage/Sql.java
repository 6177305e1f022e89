package kerfwright.app.storage;

import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import kerfwright.catalogue.tooth.Tooth;
import kerfwright.practice.people.Role;
import kerfwright.quantity.Identified;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.mapper.ColumnMapper;
import org.jdbi.v3.core.mapper.ColumnMapperFactory;
import org.jdbi.v3.core.mapper.RowMapperFactory;
import org.jdbi.v3.core.mapper.reflect.ConstructorMapper;
import org.jdbi.v3.core.mapper.reflect.ReflectionMappers;
import org.jdbi.v3.core.mapper.reflect.SnakeCaseColumnNameMatcher;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/**
 * Statements to a database, with a value for each {@code ?} in order. Times are kept in
 * microseconds, yes and no as 1 and 0, constants by their id, ids and days as text. A record is
 * read from the columns called as its components; {@code used_micros} is {@code used}.
 */
public final class Sql {
  private static final int MANY = 500;
  private static final int ROWS_AT_A_TIME = 1000;

  private final Jdbi jdbi;

  Sql(Jdbi jdbi) {
    this.jdbi = jdbi;
    SnakeCaseColumnNameMatcher names = new SnakeCaseColumnNameMatcher();
    jdbi.getConfig(ReflectionMappers.class)
        .setColumnNameMatchers(
            List.of(
                (column, name) ->
                    names.columnNameMatches(column.replaceFirst("_micros$", ""), name)));
    jdbi.registerRowMapper(
        (RowMapperFactory)
            (type, config) ->
                type instanceof Class<?> one && one.isRecord()
                    ? Optional.of(ConstructorMapper.of(one))
                    : Optional.empty());
    jdbi.registerColumnMapper(
        (ColumnMapperFactory)
            (type, config) ->
                type instanceof Class<?> one && Identified.class.isAssignableFrom(one)
                    ? Optional.of(text(id -> constant(one, id)))
                    : Optional.empty());
    jdbi.registerColumnMapper(
        Role.class, text(id -> Identified.of(Role.class, id).orElse(Role.READ_ONLY)));
    jdbi.registerColumnMapper(UUID.class, text(UUID::fromString));
    jdbi.registerColumnMapper(LocalDate.class, text(LocalDate::parse));
    jdbi.registerColumnMapper(Instant.class, text(at -> Row.instant(Long.parseLong(at))));
    jdbi.registerColumnMapper(Tooth.class, text(fdi -> new Tooth(Integer.parseInt(fdi))));
  }

  /** A value as it is kept. */
  static @Nullable Object kept(@Nullable Object value) {
    if (value instanceof Instant at) {
      return Row.micros(at);
    }
    if (value instanceof Boolean yes) {
      return yes ? 1 : 0;
    }
    if (value instanceof Identified constant) {
      return constant.id();
    }
    return value instanceof UUID || value instanceof LocalDate ? value.toString() : value;
  }

  private static @Nullable Object[] kept(@Nullable Object[] values) {
    return Arrays.stream(values).map(Sql::kept).toArray();
  }

  private static <T> ColumnMapper<@Nullable T> text(Function<String, T> read) {
    return (row, place, context) -> {
      String text = row.getString(place);
      return text == null ? null : read.apply(text);
    };
  }

  private static Object constant(Class<?> all, String id) {
    return Arrays.stream(all.getEnumConstants())
        .filter(one -> ((Identified) one).id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("No " + all.getSimpleName() + " is " + id));
  }

  /** Reads one row. */
  @FunctionalInterface
  public interface Read<T> {
    T of(ResultSet row) throws SQLException;
  }

  /** What is done in one go, or not at all. */
  @FunctionalInterface
  public interface Work<T, X extends Exception> {
    T run() throws X;
  }

  /** The same where nothing comes of it. */
  @FunctionalInterface
  public interface Deed<X extends Exception> {
    void run() throws X;
  }

  /** Every row, or its one column, as a value of that type. */
  public <T> List<T> list(Class<T> each, String sql, @Nullable Object... values) {
    return jdbi.withHandle(handle -> handle.select(sql, kept(values)).mapTo(each).list());
  }

  public <T> List<T> list(Read<T> each, String sql, @Nullable Object... values) {
    return jdbi.withHandle(
        handle -> handle.select(sql, kept(values)).map((row, context) -> each.of(row)).list());
  }

  /** The one row there is, or none. */
  public <T> Optional<T> one(Class<T> each, String sql, @Nullable Object... values) {
    return jdbi.withHandle(handle -> handle.select(sql, kept(values)).mapTo(each).findOne());
  }

  public <T> Optional<T> one(Read<T> each, String sql, @Nullable Object... values) {
    return jdbi.withHandle(
        handle -> handle.select(sql, kept(values)).map((row, context) -> each.of(row)).findOne());
  }

  /** One value by another; the last where there are several. */
  public <K, V> Map<K, V> map(Read<K> key, Read<V> value, String sql, @Nullable Object... values) {
    Map<K, V> map = new LinkedHashMap<>();
    list(row -> Map.entry(key.of(row), value.of(row)), sql, values)
        .forEach(one -> map.put(one.getKey(), one.getValue()));
    return map;
  }

  /** A count, sum or version. */
  public long number(String sql, @Nullable Object... values) {
    return one(Long.class, sql, values).orElseThrow();
  }

  /** The rows whose column is one of many values, which stand for {@code <in>}. */
  public <T> List<T> amongst(Read<T> each, String sql, Collection<?> in) {
    List<@Nullable Object> all = new ArrayList<>();
    in.forEach(one -> all.add(kept(one)));
    List<T> found = new ArrayList<>();
    for (int from = 0; from < all.size(); from += MANY) {
      List<@Nullable Object> some = all.subList(from, Math.min(all.size(), from + MANY));
      found.addAll(
          jdbi.withHandle(
              handle ->
                  handle
                      .createQuery(sql)
                      .bindList("in", some)
                      .map((row, context) -> each.of(row))
                      .list()));
    }
    return found;
  }

  /** One row after the other, however many there are; within a transaction, as they come. */
  public <T> void each(Read<T> each, Consumer<T> to, String sql, @Nullable Object... values) {
    jdbi.useHandle(
        handle ->
            handle
                .select(sql, kept(values))
                .setFetchSize(ROWS_AT_A_TIME)
                .map((row, context) -> each.of(row))
                .forEach(to));
  }

  /** What a database tells of itself, in one schema where it has several. */
  @FunctionalInterface
  interface Telling {
    ResultSet of(DatabaseMetaData data, @Nullable String schema) throws SQLException;
  }

  <T> List<T> told(Telling telling, Read<T> each) {
    return jdbi.withHandle(
        handle ->
            handle
                .queryMetadata(data -> telling.of(data, data.getConnection().getSchema()))
                .map((row, context) -> each.of(row))
                .list());
  }

  /** Names of the tables; a name, or % for all. */
  List<String> tables(String name) {
    return told(
        (data, schema) -> data.getTables(null, schema, name, new String[] {"TABLE"}),
        row -> row.getString("TABLE_NAME"));
  }

  boolean has(String table) {
    return !tables(table).isEmpty();
  }

  /** How many rows it changed. */
  public int change(String sql, @Nullable Object... values) {
    return jdbi.withHandle(handle -> handle.execute(sql, kept(values)));
  }

  public void add(Row row) {
    insert(row, "");
  }

  /** Adds it unless its key is taken; true where it was added. */
  public boolean addOnce(Row row) {
    return insert(row, " ON CONFLICT DO NOTHING");
  }

  /** Adds it, or sets one column of the row that has its key. */
  public void addOrSet(Row row, String key, String column) {
    insert(row, " ON CONFLICT (" + key + ") DO UPDATE SET " + column + " = excluded." + column);
  }

  private boolean insert(Row row, String conflict) {
    return jdbi.withHandle(
            handle -> handle.createUpdate(row.insert() + conflict).bindMap(row.cells()).execute())
        == 1;
  }

  /** Puts a version in place of the one before; false where another is there. */
  public boolean next(Row row) {
    return jdbi.withHandle(
            handle -> handle.createUpdate(row.update()).bindMap(row.cells()).execute())
        == 1;
  }

  public void addAll(List<Row> rows) {
    batch(rows, Row::insert);
  }

  /** The same of many rows of one kind; how many each one changed. */
  public List<Integer> nextAll(List<Row> rows) {
    return batch(rows, Row::update);
  }

  private List<Integer> batch(List<Row> rows, Function<Row, String> sql) {
    if (rows.isEmpty()) {
      return List.of();
    }
    return jdbi.withHandle(
        handle -> {
          PreparedBatch batch = handle.prepareBatch(sql.apply(rows.get(0)));
          rows.forEach(row -> batch.add(row.cells()));
          return Arrays.stream(batch.execute()).boxed().collect(Collectors.toList());
        });
  }

  /** What is read and written within, by whichever storage of this database, joins in. */
  public <T, X extends Exception> T inTransaction(Work<T, X> all) throws X {
    return jdbi.inTransaction(handle -> all.run());
  }

  /** The same where nothing comes of it. */
  public <X extends Exception> void useTransaction(Deed<X> all) throws X {
    jdbi.useTransaction(handle -> all.run());
  }
}
