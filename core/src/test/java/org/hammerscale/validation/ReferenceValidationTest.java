package org.hammerscale.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Our answers against printed ones, each within the tolerance that its file states and explains.
 */
class ReferenceValidationTest {
  private static final Set<String> KINDS =
      Set.of("read", "standard, from memory", "computed", "common practice");

  @TestFactory
  Stream<DynamicTest> answersAgreeWithTheSource() {
    return Stream.of(ValidationTopic.values())
        .flatMap(
            topic ->
                topic.cases().stream()
                    .map(
                        c ->
                            DynamicTest.dynamicTest(
                                topic.title + ": " + c,
                                () ->
                                    assertEquals(
                                        c.expected(),
                                        topic.answer.applyAsDouble(c),
                                        c.tolerance() + Math.ulp(c.expected()),
                                        c::toString))));
  }

  @ParameterizedTest
  @EnumSource(ValidationTopic.class)
  void everyCaseNamesItsSourceAndKind(ValidationTopic topic) {
    assertTrue(topic.cases().size() >= 5, topic.title);
    for (ValidationCase c : topic.cases()) {
      assertTrue(!c.text("source").isBlank(), c::toString);
      assertTrue(KINDS.contains(c.text("kind")), c::toString);
    }
  }
}
