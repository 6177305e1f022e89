package kerfwright.physics;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Physics is pure: values in, values out; nothing of the outside world, nothing from elsewhere. */
@AnalyzeClasses(
    packages = "kerfwright.physics",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule STANDS_ON_JDK_AND_QUANTITY_ONLY =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideOutsideOfPackages(
              "kerfwright.physics..", "kerfwright.quantity..", "java..", "org.jspecify..");

  @ArchTest
  static final ArchRule TOUCHES_NO_FILE_NETWORK_CLOCK_OR_LOG =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.io..",
              "java.nio.file..",
              "java.net..",
              "java.time..",
              "java.sql..",
              "java.util.logging..",
              "java.util.concurrent..");

  @ArchTest
  static final ArchRule READS_NO_TIME_AND_NO_SETTINGS =
      noClasses()
          .should()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(System.class, "getProperty", String.class)
          .orShould()
          .callMethod(System.class, "getenv", String.class)
          .orShould()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");

  @ArchTest static final ArchRule DRAWS_NOTHING_WITHOUT_A_SEED = noUnseededDraws();

  @ArchTest
  static final ArchRule PACKAGES_HAVE_NO_CYCLE =
      slices().matching("kerfwright.physics.(*)..").should().beFreeOfCycles();

  private static ArchRule noUnseededDraws() {
    return noClasses()
        .should()
        .callConstructor(Random.class)
        .orShould()
        .callMethod(Math.class, "random")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.util.SplittableRandom")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.security.SecureRandom");
  }

  /** The rules can fail: this class breaks them on purpose. */
  static final class Impure {
    long time() {
      return System.currentTimeMillis() + new Random().nextInt();
    }

    java.io.File file() {
      return new java.io.File("");
    }
  }

  @Test
  void theRulesNoticeAClassThatBreaksThem() {
    JavaClasses impure = new ClassFileImporter().importClasses(Impure.class);
    for (ArchRule rule :
        new ArchRule[] {
          TOUCHES_NO_FILE_NETWORK_CLOCK_OR_LOG,
          READS_NO_TIME_AND_NO_SETTINGS,
          DRAWS_NOTHING_WITHOUT_A_SEED
        }) {
      assertThrows(AssertionError.class, () -> rule.check(impure));
    }
  }
}
