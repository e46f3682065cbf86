package org.hammerscale.validation;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Our answers against printed ones, each within the tolerance that its file states and explains.
 */
class ReferenceValidationTest {
  @TestFactory
  Stream<DynamicTest> answersAgreeWithTheSource() {
    return ValidationTopic.all().stream()
        .flatMap(
            topic ->
                topic.cases().stream()
                    .map(
                        c ->
                            DynamicTest.dynamicTest(
                                topic.title() + ": " + c,
                                () ->
                                    assertEquals(
                                        c.expected(),
                                        topic.answer().applyAsDouble(c),
                                        c.tolerance() + Math.ulp(c.expected()),
                                        c::toString))));
  }

  @ParameterizedTest
  @MethodSource("org.hammerscale.validation.ValidationTopic#all")
  void everyCaseNamesItsSourceAndKind(ValidationTopic topic) {
    assertTrue(topic.cases().size() >= 5, topic.title());
    for (ValidationCase c : topic.cases()) {
      assertTrue(!c.value().source().isBlank(), c::toString);
      assertDoesNotThrow(c.value()::kind, c::toString);
    }
  }
}
