package org.hammerscale.units;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the package stands on, and what it keeps its hands off. */
class ArchitectureTest {
  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.hammerscale.units");

  /** The exception that Appendable may throw, and what it takes to be serialized. */
  private static final Set<String> OF_JAVA_IO =
      Set.of("IOException", "Serializable", "ObjectInputStream", "InvalidObjectException");

  @Test
  void looksAtTheClassesItIsAbout() {
    assertTrue(MAIN.contain(Measure.class) && MAIN.contain(LengthReader.class));
    assertTrue(!MAIN.contain(ArchitectureTest.class));
  }

  @Test
  void dependsOnTheUnitApiItsReferenceImplementationAndTheErrorFunctionOnly() {
    classes()
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(
            "org.hammerscale.units",
            "java..",
            "javax.measure..",
            "tech.units.indriya..",
            "org.apache.commons.math3.special",
            "org.jspecify..")
        .check(MAIN);
  }

  @Test
  void touchesNothingOutsideTheProgram() {
    noClasses()
        .should()
        .dependOnClassesThat(
            DescribedPredicate.describe(
                "reach files, the network, the clock, chance, logs or the desktop",
                other ->
                    other.getPackageName().matches("java\\.(nio|net|time|util\\.logging|awt).*")
                        || (other.getPackageName().equals("java.io")
                            && !OF_JAVA_IO.contains(other.getSimpleName()))
                        || other.isEquivalentTo(java.util.Random.class)
                        || other.isEquivalentTo(Thread.class)))
        .check(MAIN);
  }

  @Test
  void asksTheMachineNothing() {
    noClasses()
        .should()
        .callMethodWhere(
            DescribedPredicate.describe(
                "read a setting or the default locale", ArchitectureTest::asksTheMachine))
        .check(MAIN);
  }

  private static boolean asksTheMachine(JavaCall<?> call) {
    String owner = call.getTargetOwner().getName();
    String name = call.getTarget().getName();
    boolean setting =
        (owner.equals("java.lang.System") && !name.equals("identityHashCode"))
            || (owner.matches("java\\.lang\\.(Integer|Long|Boolean)") && name.startsWith("get"))
            || owner.equals("java.util.Locale");
    // Without a locale of their own these ask for the default one.
    boolean noArguments = call.getTarget().getRawParameterTypes().isEmpty();
    boolean locale =
        (owner.equals("java.lang.String") && name.startsWith("format"))
            || (name.matches("to(Upper|Lower)Case") && noArguments)
            || (owner.startsWith("java.text.") && name.matches("get.*Instance"));
    return setting || locale;
  }

  @Test
  void hasNoStateThatChanges() {
    fields()
        .that()
        .areStatic()
        .should()
        .beFinal()
        .because("everything is thread-safe because nothing changes")
        .check(MAIN);
    fields()
        .that()
        .areDeclaredInClassesThat()
        .arePublic()
        .and()
        .areNotStatic()
        .should()
        .beFinal()
        .andShould()
        .bePrivate()
        .check(MAIN);
  }

  @Test
  void localeRuleCanFail() {
    // The rule above is written by hand; here is a class that breaks it.
    JavaClasses breaking = new ClassFileImporter().importClasses(AskingForTheLocale.class);
    assertTrue(
        noClasses()
            .should()
            .callMethodWhere(DescribedPredicate.describe("ask", ArchitectureTest::asksTheMachine))
            .evaluate(breaking)
            .hasViolation());
  }

  /** Asks what the library must not ask. */
  private static final class AskingForTheLocale {
    @Override
    public String toString() {
      return Locale.getDefault().toString();
    }
  }
}
