package kerfwright.app.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The lines between modules and between features, as the design draws them. */
class ArchitectureTest {
  private static final JavaClasses ALL =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("kerfwright");

  @Test
  void modulesStandInOneStraightLine() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .withOptionalLayers(true)
        .layer("app")
        .definedBy("kerfwright.app..")
        .layer("practice")
        .definedBy("kerfwright.practice..")
        .layer("schedule")
        .definedBy("kerfwright.schedule..")
        .layer("planner")
        .definedBy("kerfwright.planner..")
        .layer("catalogue")
        .definedBy("kerfwright.catalogue..")
        .layer("physics")
        .definedBy("kerfwright.physics..")
        .layer("quantity")
        .definedBy("kerfwright.quantity..")
        .whereLayer("app")
        .mayNotBeAccessedByAnyLayer()
        .whereLayer("practice")
        .mayOnlyBeAccessedByLayers("app")
        .whereLayer("schedule")
        .mayOnlyBeAccessedByLayers("app", "practice")
        .whereLayer("planner")
        .mayOnlyBeAccessedByLayers("app", "practice")
        .whereLayer("catalogue")
        .mayOnlyBeAccessedByLayers("app", "practice", "planner")
        .whereLayer("physics")
        .mayOnlyBeAccessedByLayers("app", "practice", "planner", "catalogue")
        .check(ALL);
  }

  @Test
  void physicsKnowsTheJdkAlone() {
    classes()
        .that()
        .resideInAnyPackage("kerfwright.physics..", "kerfwright.quantity..")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            "kerfwright.physics..",
            "kerfwright.quantity..",
            "java..",
            "org.jspecify..",
            "org.hipparchus..")
        .check(ALL);
  }

  @Test
  void scheduleStandsBesideTheLineAndHoldsTheSolverAlone() {
    classes()
        .that()
        .resideInAPackage("kerfwright.schedule..")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            "kerfwright.schedule..", "java..", "org.jspecify..", "com.google.ortools..")
        .check(ALL);
    noClasses()
        .that()
        .resideOutsideOfPackage("kerfwright.schedule.search..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("com.google.ortools..")
        .check(ALL);
  }

  @Test
  void plannerKnowsNoFramework() {
    classes()
        .that()
        .resideInAPackage("kerfwright.planner..")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            "kerfwright.planner..",
            "kerfwright.catalogue..",
            "kerfwright.physics..",
            "kerfwright.quantity..",
            "java..",
            "org.jspecify..",
            "org.hipparchus..")
        .check(ALL);
  }

  @Test
  void modelsReadNoFilesNoClockAndPrintNothing() {
    noClasses()
        .that()
        .resideInAnyPackage("kerfwright.physics..", "kerfwright.planner..", "kerfwright.quantity..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "java.io..",
            "java.nio.file..",
            "java.net..",
            "java.sql..",
            "java.time..",
            "java.util.logging..")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(System.class, "getenv", String.class)
        .orShould()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .check(ALL);
  }

  @Test
  void samplesAloneAreSharedBetweenCores() {
    noClasses()
        .that()
        .resideInAnyPackage("kerfwright.physics..", "kerfwright.planner..", "kerfwright.quantity..")
        .and()
        .doNotHaveSimpleName("Parts")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("java.util.concurrent..")
        .check(ALL);
  }

  @Test
  void modelsDrawNoLotsWithoutASeed() {
    noClasses()
        .that()
        .resideInAnyPackage("kerfwright.physics..", "kerfwright.planner..", "kerfwright.quantity..")
        .should()
        .callMethod(Math.class, "random")
        .orShould()
        .callConstructor(java.util.Random.class)
        .orShould()
        .callConstructor(java.util.SplittableRandom.class)
        .orShould()
        .dependOnClassesThat()
        .areAssignableTo(java.security.SecureRandom.class)
        .check(ALL);
  }

  @Test
  void onlyPagesAndGateKnowTheWebServer() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            "kerfwright.app.web..",
            "kerfwright.app.template..",
            "kerfwright.app.form..",
            "kerfwright.app.feature..",
            "kerfwright.app.security..",
            "kerfwright.app.setting..",
            "kerfwright.app.today..",
            "kerfwright.app.chairside..",
            "kerfwright.app.drawer..",
            "kerfwright.app.reprocessing..",
            "kerfwright.app.record..",
            "kerfwright.app.label..",
            "kerfwright.app.restock..",
            "kerfwright.app.learning..",
            "kerfwright.app.learner..",
            "kerfwright.app.backup..",
            "kerfwright.app.daypage..",
            "kerfwright.app.kept..",
            "kerfwright.app.teaching..",
            "kerfwright.app.signin..",
            "kerfwright.app.network..",
            "kerfwright.app.horizon..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..")
        .check(ALL);
  }

  @Test
  void onlyOnePlaceKnowsTheTemplateEngine() {
    noClasses()
        .that()
        .resideOutsideOfPackages("kerfwright.app.template..", "gg.jte..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("gg.jte..")
        .check(ALL);
  }

  @Test
  void onlyStorageKnowsTheDatabase() {
    noClasses()
        .that()
        .resideOutsideOfPackage("kerfwright.app.storage..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "java.sql..",
            "javax.sql..",
            "org.jdbi..",
            "com.zaxxer..",
            "org.flywaydb..",
            "org.sqlite..",
            "org.postgresql..")
        .check(ALL);
  }

  @Test
  void onlyTheCardKnowsThePdfLibrary() {
    noClasses()
        .that()
        .resideOutsideOfPackage("kerfwright.app.print..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("com.openhtmltopdf..", "org.apache.pdfbox..")
        .check(ALL);
  }

  @Test
  void readersKnowNeitherPagesNorCommands() {
    noClasses()
        .that()
        .resideInAnyPackage(
            "kerfwright.app.input..",
            "kerfwright.app.casefile..",
            "kerfwright.app.drawerfile..",
            "kerfwright.app.json..",
            "kerfwright.app.plan..",
            "kerfwright.app.heatfile..",
            "kerfwright.app.drawing..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "kerfwright.app.web..",
            "kerfwright.app.cli..",
            "kerfwright.app.print..",
            "kerfwright.app.security..",
            "kerfwright.app.demo..")
        .check(ALL);
  }

  @Test
  void caseAndDrawerDoNotKnowEachOther() {
    noClasses()
        .that()
        .resideInAPackage("kerfwright.app.casefile..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("kerfwright.app.drawerfile..")
        .check(ALL);
    noClasses()
        .that()
        .resideInAPackage("kerfwright.app.drawerfile..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("kerfwright.app.casefile..")
        .check(ALL);
  }

  @Test
  void packagesOfTheModelsFormNoCircles() {
    slices().matching("kerfwright.physics.(*)..").should().beFreeOfCycles().check(ALL);
    slices().matching("kerfwright.app.(*)..").should().beFreeOfCycles().check(ALL);
  }
}
