package org.hammerscale.working;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class WorkingTest {
  private static double hypotenuse(Notes n) {
    double a = n.given("a", "one leg", 3);
    double b = n.given("b", "other leg", 4);
    double s = n.area("S", "sum of squares", "a² + b²", a * a + b * b);
    double c = n.length("c", "hypotenuse", "√S", Math.sqrt(s));
    n.number("k", "legs to hypotenuse", "(a + b) / c", (a + b) / c);
    n.volume("V", "box on it", "2 a b (c − a)", 2 * a * b * (c - a));
    return c;
  }

  private static Working noted() {
    return Notes.taken("a triangle", ShopUnits.INCH, WorkingTest::hypotenuse);
  }

  @Test
  void printsFormulasWithTheirNumbersAndUnits() {
    assertEquals(
        """
        a triangle
          a = 3 in                                       one leg
          b = 4 in                                       other leg
          S = a² + b² = 3² + 4² = 25 in²                 sum of squares
          c = √S = √25 = 5 in                            hypotenuse
          k = (a + b) / c = (3 + 4) / 5 = 1.4            legs to hypotenuse
          V = 2 a b (c − a) = 2 × 3 × 4 × (5 − 3) = 48 in³   box on it
          Source: Euclid (computed)
          Caution: mind the corner"""
            .replaceAll(" +(?=(one|other|sum|hyp|legs|box))", " "),
        noted()
            .withSource(Source.computed("Euclid"))
            .withCautions(List.of(Caution.danger("mind the corner")))
            .toString()
            .replaceAll(" +(?=(one leg|other|sum of|hypotenuse\n|legs to|box on))", " "));
  }

  @Test
  void stepsTellGivenFromCalculated() {
    List<Step> steps = noted().steps();
    assertTrue(steps.get(0).isGiven());
    assertEquals("a = 3 in", steps.get(0).toString());
    assertFalse(steps.get(3).isGiven());
    assertEquals("c = √S = 5 in", steps.get(3).toString());
    assertEquals(1.4, steps.get(4).value().getValue());
  }

  @Test
  void withoutNotesTheAnswerIsTheSame() {
    assertEquals(5.0, hypotenuse(Notes.NONE));
    assertEquals("no notes", Notes.NONE.toString());
  }

  @Test
  void aCalculationThatNotesNothingIsRefused() {
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class, () -> Notes.taken("silence", ShopUnits.INCH, n -> 1.0));
    assertTrue(e.getMessage().contains("must note at least its result"), e.getMessage());
  }

  @Test
  void blankTitlesAndTextsAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> Notes.taken(" ", ShopUnits.INCH, WorkingTest::hypotenuse));
    assertThrows(IllegalArgumentException.class, () -> Source.read("", "p. 1"));
    assertThrows(IllegalArgumentException.class, () -> Caution.danger(" "));
  }

  @Test
  void sourcesSayHowTheLibraryKnows() {
    assertEquals(
        "Somebody, Iron, 1900, p. 3 (read)",
        Source.read("Somebody, Iron, 1900", "p. 3").toString());
    assertEquals("EN 1 (standard, from memory)", Source.fromMemory("EN 1", "").toString());
    assertEquals("a rule (common practice)", Source.commonPractice("a rule").toString());
    assertEquals(Source.computed("x"), Source.computed("x"));
    assertEquals(Source.computed("x").hashCode(), Source.computed("x").hashCode());
    assertFalse(Source.computed("x").equals(Source.commonPractice("x")));
    assertEquals(Source.Kind.READ, Source.read("a", "b").kind());
    assertEquals("b", Source.read("a", "b").locator());
    assertEquals("a", Source.read("a", "b").title());
  }

  @Test
  void cautionsTellDangerFromStretchedRule() {
    Caution danger = Caution.danger("hot");
    Caution limit = Caution.limit("too thin", Source.computed("x"));
    assertTrue(danger.isDanger());
    assertFalse(limit.isDanger());
    assertEquals(Source.computed("x"), limit.source());
    assertEquals(danger, Caution.danger("hot"));
    assertEquals(danger.hashCode(), Caution.danger("hot").hashCode());
    assertFalse(danger.equals(limit));
  }

  @Test
  void theEvaluatorOfTheTestsIsItselfRight() {
    Map<String, Double> values = Map.of("a", 2.0, "Aₘ", 3.0);
    assertEquals(14, Formula.evaluate("a (1 + 2 Aₘ)", values));
    assertEquals(-1, Formula.evaluate("a − Aₘ", values));
    assertEquals(12, Formula.evaluate("a² Aₘ", values));
    assertEquals(2.25, Formula.evaluate("up(2.2, 0.75)", values));
    assertEquals(Math.PI / 4, Formula.evaluate("π / 4", values));
    assertThrows(IllegalArgumentException.class, () -> Formula.evaluate("a + b", values));
    assertThrows(IllegalArgumentException.class, () -> Formula.evaluate("(a", values));
  }
}
