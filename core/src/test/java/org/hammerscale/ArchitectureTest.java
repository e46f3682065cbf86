package org.hammerscale;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rooms of the house: imports only point up the list, and nobody reaches the world outside. */
class ArchitectureTest {
  /** From the ground up; a package may use those before it. */
  private static final List<String> ROOMS =
      List.of(
          "internal",
          "working",
          "stock",
          "heat",
          "forging",
          "bending",
          "punching",
          "piece",
          "hinge",
          "fastening");

  /** The operations: they know neither one another nor the pieces made of them. */
  private static final List<String> APART = List.of("heat", "forging", "bending", "punching");

  /** The operation that pieces may know: what the fire takes belongs to the whole piece. */
  private static final String FIRE = "heat";

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.hammerscale");

  @Test
  void importsPointUpTheList() {
    for (int i = 0; i < ROOMS.size(); i++) {
      for (String later : ROOMS.subList(i + 1, ROOMS.size())) {
        keepApart(ROOMS.get(i), later);
      }
    }
    keepApart("fastening", "hinge");
    for (String room : APART) {
      APART.stream().filter(other -> !other.equals(room)).forEach(other -> keepApart(room, other));
      if (!room.equals(FIRE)) {
        keepApart("piece", room);
      }
    }
  }

  @Test
  void everyPackageHasItsRoom() {
    classes()
        .that()
        .resideOutsideOfPackage("org.hammerscale.units..")
        .should()
        .resideInAnyPackage(
            ROOMS.stream().map(room -> "org.hammerscale." + room).toArray(String[]::new))
        .check(CLASSES);
  }

  @Test
  void thereAreNoCycles() {
    slices().matching("org.hammerscale.(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void nobodyReadsTheWorldOutside() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.time..", "java.sql..")
        .orShould()
        .accessClassesThat()
        .haveFullyQualifiedName("java.util.Locale")
        .check(
            CLASSES.that(
                com.tngtech.archunit.base.DescribedPredicate.describe(
                    "core", c -> !c.getPackageName().startsWith("org.hammerscale.units"))));
  }

  private static void keepApart(String room, String other) {
    noClasses()
        .that()
        .resideInAPackage("org.hammerscale." + room)
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.hammerscale." + other)
        .allowEmptyShould(true)
        .check(CLASSES);
  }
}
