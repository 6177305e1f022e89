package kerfwright.practice.label;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Which items of the drawer a package is about.
 *
 * @param same same article with the same serial number, or the same lot where none is given
 * @param article the other items of the same article
 */
public record PackageMatch(List<UUID> same, List<UUID> article) {
  public PackageMatch {
    same = List.copyOf(same);
    article = List.copyOf(article);
  }

  /** Compares a scanned code with those kept for its article. */
  public static PackageMatch of(MakersCode scanned, List<PackageMark> kept) {
    List<UUID> same =
        kept.stream().filter(mark -> agrees(scanned, mark.code())).map(PackageMark::item).toList();
    List<UUID> article =
        kept.stream().map(PackageMark::item).filter(item -> !same.contains(item)).toList();
    return new PackageMatch(same, article);
  }

  private static boolean agrees(MakersCode scanned, MakersCode kept) {
    return Objects.equals(scanned.gtin(), kept.gtin())
        && saidAlike(scanned.serial(), kept.serial())
        && saidAlike(scanned.lot(), kept.lot());
  }

  /** A package that tells less than what is kept still is that package. */
  private static boolean saidAlike(@Nullable String scanned, @Nullable String kept) {
    return scanned == null || scanned.equals(kept);
  }
}
