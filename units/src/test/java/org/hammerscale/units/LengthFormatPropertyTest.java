package org.hammerscale.units;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import javax.measure.format.MeasurementParseException;
import javax.measure.quantity.Length;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;

/** Laws of reading and printing lengths. */
class LengthFormatPropertyTest {
  @Provide
  Arbitrary<Graduation<Length>> inchRules() {
    return Arbitraries.of(
        Graduation.HALF,
        Graduation.QUARTER,
        Graduation.EIGHTH,
        Graduation.SIXTEENTH,
        Graduation.THIRTY_SECOND,
        Graduation.SIXTY_FOURTH);
  }

  /** Steps of a millimetre rule, as so many to the millimetre. */
  @Provide
  Arbitrary<Integer> stepsPerMillimetre() {
    return Arbitraries.of(1, 2, 4, 5, 10, 20, 50, 100);
  }

  @Property
  void inchesOnAMarkComeBackExactly(
      @ForAll @IntRange(min = -1_000_000, max = 1_000_000) int marks,
      @ForAll("inchRules") Graduation<Length> rule,
      @ForAll boolean withFeet) {
    LengthFormat format = withFeet ? LengthFormat.to(rule).withFeet() : LengthFormat.to(rule);
    Measure<Length> length = inches(marks * rule.step().getValue());

    String text = format.format(length);
    assertEquals(length, format.parse(text), text);
  }

  @Property
  void anyInchesComeBackAsTheNearestMark(
      @ForAll @DoubleRange(min = -1000, max = 1000) @Scale(9) double value,
      @ForAll("inchRules") Graduation<Length> rule,
      @ForAll boolean withFeet) {
    LengthFormat format = withFeet ? LengthFormat.to(rule).withFeet() : LengthFormat.to(rule);

    String text = format.format(inches(value));
    assertEquals(rule.nearest(inches(value)), format.parse(text), text);
    assertTrue(format.parse(text).isWithin(inches(value), rule.step().divide(2)), text);
  }

  @Property
  void millimetresOnAStepComeBackExactly(
      @ForAll @IntRange(min = -1_000_000, max = 1_000_000) int steps,
      @ForAll("stepsPerMillimetre") int perMillimetre) {
    double value = steps / (double) perMillimetre;
    LengthFormat format = LengthFormat.to(Graduation.of(millimetres(1 / (double) perMillimetre)));

    String text = format.format(millimetres(value));
    assertEquals(millimetres(value), format.parse(text), text);
  }

  @Property
  void theRemainderGivesTheLengthBack(
      @ForAll @DoubleRange(min = -1000, max = 1000) @Scale(9) double value,
      @ForAll("inchRules") Graduation<Length> rule,
      @ForAll boolean withFeet) {
    LengthFormat format = LengthFormat.to(rule).withRemainder();
    String text = (withFeet ? format.withFeet() : format).format(inches(value));
    assertTrue(
        format.parse(text).isWithin(inches(value), inches(0.0005)),
        () -> value + " in printed as " + text);

    LengthFormat metric = LengthFormat.to(Graduation.HALF_MILLIMETRE).withRemainder();
    String millimetres = metric.format(millimetres(value));
    assertTrue(
        metric.parse(millimetres).isWithin(millimetres(value), millimetres(0.005)),
        () -> value + " mm printed as " + millimetres);
  }

  @Property
  void twelveInchesAreAlwaysCarried(
      @ForAll @DoubleRange(min = 12, max = 5000) @Scale(6) double value,
      @ForAll("inchRules") Graduation<Length> rule) {
    String text = LengthFormat.to(rule).withFeet().format(inches(value));
    assertTrue(text.matches("[1-9]\\d*' (\\d|1[01])?( ?\\d+/\\d+)?\""), text);
  }

  @Property
  void fractionsAreReduced(
      @ForAll @IntRange(min = -10_000, max = 10_000) int sixtyFourths, @ForAll boolean withFeet) {
    LengthFormat format = LengthFormat.to(Graduation.SIXTY_FOURTH);
    String text = (withFeet ? format.withFeet() : format).format(inches(sixtyFourths / 64.0));
    assertFalse(text.matches(".*[02468]/.*"), text);
    assertFalse(text.matches(".*\\b0/.*|.*/1\\b.*"), text);
  }

  @Property
  void whatAMeasurePrintsIsReadBack(
      @ForAll @DoubleRange(min = -1e9, max = 1e9) @Scale(9) double value) {
    for (Measure<Length> length :
        List.of(inches(value), millimetres(value), Measures.metres(value))) {
      Measure<Length> back = LengthFormat.standard().parse(length.toString());
      assertEquals(length.getUnit(), back.getUnit());
      // Four significant digits at least: off by half a unit of the fourth, and no more.
      assertTrue(
          back.isWithin(length, length.withValue(Math.abs(value) * 5e-4)),
          () -> length.getValue() + " printed as " + length);
    }
  }

  /** Texts built like lengths, with every part at times left out, doubled or broken. */
  @Provide
  Arbitrary<String> nearlyLengths() {
    Arbitrary<String> sign = mostly(List.of("", "", "-", "−", "+"), List.of("--", " - ", "±"));
    Arbitrary<String> number =
        mostly(List.of("3", "12", "0", "1.5", ".5", "007"), List.of("", "2.", "1,5", "٣"));
    Arbitrary<String> gap =
        mostly(List.of("", " ", "-", "  ", "\u00a0"), List.of(" -", "- ", "\n", "\0"));
    Arbitrary<String> fraction =
        mostly(
            List.of("", "", "1/2", "3⁄4", "½", "⅔", "⅞"),
            List.of("4/3", "5/0", "1/2/3", "/2", "1/2.5", "x"));
    Arbitrary<String> foot =
        mostly(List.of("'", "′", "’", "ft", "foot", "feet"), List.of("in", "", "''"));
    Arbitrary<String> inch =
        mostly(
            List.of("in", "inch", "inches", "\"", "″", "”"), List.of("ft", "'", "mm", "", "inn"));
    Arbitrary<String> other =
        mostly(
            List.of("mm", "millimeters", "cm", "centimetre", "m", "metres", "thou"),
            List.of("kg", "IN", "in²", "\ud83d\udd28", " ", "mm in"));
    Arbitrary<String> over =
        mostly(
            List.of("", "", "", " − 0.017", " + .5", " -  0.25"),
            List.of(" -0.5", "- 0.5", " − 1/64", " ± 0.1", " + 0,5", " − 0.5 mm"));
    return Arbitraries.oneOf(
        joined(
            List.of(sign, number, gap, fraction, gap, Arbitraries.oneOf(foot, inch, other), over)),
        joined(
            List.of(
                sign, number, gap, fraction, gap, foot, gap, number, gap, fraction, gap, inch,
                over)));
  }

  private static Arbitrary<String> mostly(List<String> good, List<String> bad) {
    return Arbitraries.frequencyOf(
        Tuple.of(9, Arbitraries.of(good)), Tuple.of(1, Arbitraries.of(bad)));
  }

  private static Arbitrary<String> joined(List<Arbitrary<String>> pieces) {
    return Combinators.combine(pieces).as(texts -> String.join("", texts));
  }

  @Property(tries = 20_000)
  @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
  void readsWhatTheGrammarAllowsAndNothingElse(@ForAll("nearlyLengths") String text) {
    Optional<Measure<Length>> expected = LengthOracle.read(text);
    Statistics.label("lengths").collect(expected.isPresent());
    Statistics.label("lengths")
        .coverage(of -> of.check(true).percentage(share -> share > 5 && share < 95));
    try {
      Measure<Length> read = LengthFormat.standard().parse(text);
      assertTrue(expected.isPresent(), () -> "no length, but read as " + read);
      assertEquals(expected.get().getUnit(), read.getUnit());
      // The quotient, the sum, the feet in inches and the remainder: a rounding each, of numbers
      // that the remainder may have made smaller.
      double rounding = Math.ulp(Math.abs(expected.get().getValue()) + 1);
      assertEquals(expected.get().getValue(), read.getValue(), 4 * rounding);
    } catch (MeasurementParseException e) {
      assertTrue(expected.isEmpty(), () -> "refused: " + e.getMessage());
      assertTrue(e.getPosition() >= 0 && e.getPosition() <= text.length(), e.getMessage());
    }
  }

  @Property
  void anyTextIsReadOrRefusedInItsPlace(@ForAll String text) {
    try {
      LengthFormat.standard().parse(text);
      assertTrue(LengthOracle.read(text).isPresent(), text);
    } catch (MeasurementParseException e) {
      assertTrue(e.getPosition() >= 0 && e.getPosition() <= text.length(), e.getMessage());
    }
  }
}
