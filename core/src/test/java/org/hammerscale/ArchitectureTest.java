package org.hammerscale;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The rooms of the house: imports only point up the list, and nobody reaches the world outside. */
class ArchitectureTest {
  private static final int MOST_FILES = 30;

  /** From the ground up; a package may use those before it. */
  private static final List<String> ROOMS =
      List.of(
          "internal",
          "internal.pen",
          "working",
          "stock",
          "heat",
          "scale",
          "forging",
          "bending",
          "punching",
          "spacing",
          "piece",
          "cutting",
          "hinge",
          "latch",
          "fastening",
          "holding",
          "strength",
          "drawing",
          "checking");

  /** Neighbours that know nothing of one another. */
  private static final List<List<String>> APART =
      List.of(
          List.of("heat", "forging", "bending", "punching", "spacing"),
          List.of("scale", "forging", "bending", "punching", "spacing"),
          List.of("piece", "forging", "bending", "punching", "spacing"),
          List.of("cutting", "heat"),
          List.of("cutting", "scale"),
          List.of("cutting", "forging", "bending", "punching", "spacing"),
          List.of("hinge", "latch", "fastening"),
          List.of("holding", "strength"),
          List.of("holding", "hinge", "latch"));

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
    for (List<String> rooms : APART) {
      for (String room : rooms) {
        rooms.stream().filter(other -> !other.equals(room)).forEach(o -> keepApart(room, o));
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
  void noRoomIsFull() throws IOException {
    for (String room : ROOMS) {
      try (Stream<Path> files =
          Files.list(Path.of("src/main/java/org/hammerscale", room.replace('.', '/')))) {
        long count = files.filter(Files::isRegularFile).count();
        assertTrue(count <= MOST_FILES, room + " holds " + count + " files: divide it");
      }
    }
  }

  @Test
  void thereAreNoCycles() {
    slices().matching("org.hammerscale.(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  /** But for the check values, which read what lies beside them in the jar. */
  @Test
  void nobodyReadsTheWorldOutside() {
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("org.hammerscale.checking.CsvTable")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.time..", "java.sql..")
        .orShould()
        .accessClassesThat()
        .haveFullyQualifiedName("java.util.Locale")
        .check(
            CLASSES
                .that(
                    com.tngtech.archunit.base.DescribedPredicate.describe(
                        "core", c -> !c.getPackageName().startsWith("org.hammerscale.units")))
                // An XML writer of the JDK wants a java.io.Writer: to memory, see below.
                .that(
                    com.tngtech.archunit.base.DescribedPredicate.describe(
                        "but the writer of drawings", c -> !c.getSimpleName().equals("Svg"))));
  }

  @Test
  void drawingsAreWrittenToMemoryAlone() {
    noClasses()
        .that()
        .haveSimpleName("Svg")
        .should()
        .dependOnClassesThat(
            com.tngtech.archunit.base.DescribedPredicate.describe(
                "reach outside",
                c ->
                    (c.getPackageName().startsWith("java.io")
                            && !c.getSimpleName().endsWith("Writer"))
                        || c.getSimpleName().startsWith("File")
                        || c.getPackageName().startsWith("java.nio")
                        || c.getPackageName().startsWith("java.net")))
        .check(CLASSES);
  }

  @Test
  void drawingsAloneHoldThePen() {
    noClasses()
        .that()
        .resideOutsideOfPackages("org.hammerscale.drawing", "org.hammerscale.internal.pen")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.hammerscale.internal.pen")
        .check(CLASSES);
  }

  /** Byte code does not show what only a comment links to; the import would still run backwards. */
  @Test
  void importsOfCommentsPointUpTheListToo() throws IOException {
    Pattern imported = Pattern.compile("^import (?:static )?org\\.hammerscale\\.(\\w+)\\.");
    for (int i = 0; i < ROOMS.size(); i++) {
      List<String> later = ROOMS.subList(i + 1, ROOMS.size());
      try (Stream<Path> files =
          Files.list(Path.of("src/main/java/org/hammerscale", ROOMS.get(i).replace('.', '/')))) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          for (String line : Files.readAllLines(file)) {
            Matcher match = imported.matcher(line);
            assertFalse(match.find() && later.contains(match.group(1)), file + ": " + line);
          }
        }
      }
    }
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
