package kerfwright.catalogue.operation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerfwright.catalogue.data.DataRow;
import kerfwright.catalogue.data.Topic;
import kerfwright.catalogue.table.BadDataException;
import kerfwright.catalogue.table.Faults;
import kerfwright.quantity.Message;

/**
 * The operations of every procedure and the variant a case gets. A folder outside the program of
 * the same layout adds procedures: a variant it names stands wholly in place of the packaged one,
 * so that taking a row out of the folder takes the operation out of the plan.
 */
public final class OperationTable {
  private static final String VALUES = "operation/values.csv";
  private static final String VARIANTS = "operation/variants.csv";
  private static final OperationTable PACKAGED =
      Topic.sound(
          faults ->
              new OperationTable(
                  Topic.read(VARIANTS, faults, OperationTable::variant),
                  byVariant(Topic.read(VALUES, faults, OperationRows::operation)),
                  Map.of()));

  private static volatile OperationTable inUse = PACKAGED;

  private final List<Variant> variants;
  private final Map<String, List<Operation>> operations;
  private final Map<String, Map<String, String>> texts;

  private OperationTable(
      List<Variant> variants,
      Map<String, List<Operation>> operations,
      Map<String, Map<String, String>> texts) {
    this.variants = variants;
    this.operations = operations;
    this.texts = texts;
  }

  public static OperationTable packaged() {
    return PACKAGED;
  }

  /** The operations this process plans with: the packaged ones where nothing else is told. */
  public static OperationTable inUse() {
    return inUse;
  }

  /** Sets what this process plans with; called once, before anything is planned. */
  public static void use(OperationTable table) {
    inUse = table;
  }

  /**
   * The packaged operations with those of a folder: {@code values.csv}, {@code variants.csv}, and,
   * where there are any, {@code texts_<language>.properties}.
   *
   * @param known whether the formulas of a row may use a name beside its own terms
   * @throws BadDataException names every fault with file, line, column and what was expected
   */
  public static OperationTable from(Path folder, Predicate<String> known) {
    Faults faults = new Faults();
    List<Operation> rows =
        Topic.read(
            folder.resolve("values.csv"),
            VALUES,
            faults,
            row -> OperationRows.operation(row, known));
    List<Variant> added =
        Topic.read(folder.resolve("variants.csv"), VARIANTS, faults, OperationTable::variant);
    Map<String, Map<String, String>> texts = texts(folder, faults);
    faults.throwIfAny();
    Map<String, List<Operation>> operations = new LinkedHashMap<>(PACKAGED.operations);
    operations.putAll(byVariant(rows));
    Set<String> own = added.stream().map(Variant::id).collect(Collectors.toSet());
    List<Variant> variants =
        new ArrayList<>(PACKAGED.variants.stream().filter(v -> !own.contains(v.id())).toList());
    variants.addAll(added);
    return new OperationTable(List.copyOf(variants), operations, texts);
  }

  /** Ids of the procedures a case may ask for, in the order of the files. */
  public List<String> procedures() {
    return variants.stream().map(Variant::procedure).distinct().toList();
  }

  /** Ids of the variants that have operations. */
  public List<String> variants() {
    return List.copyOf(operations.keySet());
  }

  /** The procedure a variant is a way of; the first where it serves several. */
  public String procedureOf(String variant) {
    return variants.stream()
        .filter(one -> one.id().equals(variant))
        .findFirst()
        .orElseThrow()
        .procedure();
  }

  /** The variant a case gets: the most specific of those that fit; of equals, the first. */
  public Optional<Variant> variant(Asked asked) {
    return variants.stream()
        .filter(variant -> variant.fits(asked))
        .max(Comparator.comparingInt(Variant::specificity));
  }

  /** The operations of a variant in their order; empty where there is none of that id. */
  public List<Operation> operations(String variant) {
    return operations.getOrDefault(variant, List.of());
  }

  /** The operations a case gets; empty where no variant fits. */
  public List<Operation> operations(Asked asked) {
    return variant(asked).map(v -> operations(v.id())).orElse(List.of());
  }

  /** Texts of the folder by key, in the language of that id; the packaged ones stand elsewhere. */
  public Map<String, String> texts(String language) {
    return texts.getOrDefault(language, Map.of());
  }

  private static Variant variant(DataRow row) {
    return new Variant(
        row.required("variant"),
        row.required("procedure"),
        row.list("teeth"),
        row.list("restorations"),
        row.list("outer"),
        row.list("holds"),
        row.list("intended"),
        row.list("lesion"),
        row.list("pulp"));
  }

  private static Map<String, List<Operation>> byVariant(List<Operation> rows) {
    Map<String, List<Operation>> byVariant =
        rows.stream()
            .sorted(Comparator.comparingInt(Operation::order))
            .collect(
                Collectors.groupingBy(
                    Operation::variant, LinkedHashMap::new, Collectors.toUnmodifiableList()));
    Map<String, List<Operation>> inOrder = new LinkedHashMap<>();
    rows.forEach(
        row -> inOrder.put(row.variant(), Objects.requireNonNull(byVariant.get(row.variant()))));
    return inOrder;
  }

  private static Map<String, Map<String, String>> texts(Path folder, Faults faults) {
    Map<String, Map<String, String>> all = new LinkedHashMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        String name = String.valueOf(file.getFileName());
        if (name.matches("texts_[a-z]+\\.properties")) {
          all.put(name.substring(6, name.indexOf('.')), oneLanguage(file, faults));
        }
      }
    } catch (IOException unreadable) {
      faults.add(folder.toString(), 0, "-", Message.of("fault.table-folder"));
    }
    return all;
  }

  private static Map<String, String> oneLanguage(Path file, Faults faults) {
    Properties read = new Properties();
    try (var in = Files.newBufferedReader(file)) {
      read.load(in);
    } catch (IOException | IllegalArgumentException unreadable) {
      faults.add(file.toString(), 0, "-", Message.of("fault.table-texts"));
    }
    Map<String, String> texts = new LinkedHashMap<>();
    read.stringPropertyNames().forEach(key -> texts.put(key, read.getProperty(key)));
    return Map.copyOf(texts);
  }
}
