package org.hammerscale.validation;

import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.fastening.IronHole;
import org.hammerscale.fastening.IronHoleRule;
import org.hammerscale.strength.Bearing;
import org.hammerscale.strength.NetSection;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** What is asked of holes in a strap. */
final class IronHoleAnswers {
  private static final Measure<Pressure> STRENGTH = Measures.megapascals(360);
  private static final Measure<Length> FASTENER = Measures.millimetres(6);

  private IronHoleAnswers() {}

  static double answer(ValidationCase c) {
    String question = c.question();
    return switch (question) {
      case "net area" -> NetSection.of(c.section("strap"), holes(c)).netArea().in(c.areaUnit());
      case "area of the line" ->
          NetSection.along(c.section("strap"), holes(c)).netArea().in(c.areaUnit());
      case "bearing" -> bearing(c).nominalByAisc(STRENGTH).in(ShopUnits.NEWTON);
      case "Eurocode bearing" -> bearing(c).designByEurocode(STRENGTH).in(ShopUnits.NEWTON);
      default -> distance(c, question).in(c.lengthUnit());
    };
  }

  private static Bearing bearing(ValidationCase c) {
    return Bearing.towardsEnd(
        c.section("strap"), holes(c)[0].clearing(FASTENER), c.length("given"));
  }

  private static Measure<Length> distance(ValidationCase c, String question) {
    return switch (question) {
      case "AISC most edge" -> IronHoleRule.AISC_360.mostEdge(c.length("given"));
      case "EN most edge" -> IronHoleRule.EN_1993_1_8.mostEdge(c.length("given"));
      case "EN most spacing" -> IronHoleRule.EN_1993_1_8.mostSpacing(c.length("given"));
      default -> least(question, holes(c)[0]);
    };
  }

  private static Measure<Length> least(String question, IronHole hole) {
    return switch (question) {
      case "AISC edge" -> IronHoleRule.AISC_360.leastEdge(hole);
      case "AISC spacing" -> IronHoleRule.AISC_360.leastSpacing(hole);
      case "AISC preferred" -> IronHoleRule.AISC_360.preferredSpacing(hole);
      case "EN end" -> IronHoleRule.EN_1993_1_8.leastEnd(hole);
      case "EN edge" -> IronHoleRule.EN_1993_1_8.leastEdge(hole);
      case "EN slot" -> IronHoleRule.EN_1993_1_8.leastEdgeOfSlot(hole);
      case "EN spacing" -> IronHoleRule.EN_1993_1_8.leastSpacing(hole);
      case "EN across" -> IronHoleRule.EN_1993_1_8.leastSpacingAcross(hole);
      case "EN staggered rows" -> IronHoleRule.EN_1993_1_8.leastSpacingOfStaggeredRows(hole);
      default -> throw new IllegalArgumentException(question);
    };
  }

  /** Drilled, and filled by their fasteners. */
  private static IronHole[] holes(ValidationCase c) {
    return c.value().inputs().stream()
        .filter(name -> name.matches("hole \\d+"))
        .map(name -> hole(c, name))
        .toArray(IronHole[]::new);
  }

  private static IronHole hole(ValidationCase c, String name) {
    IronHole hole = IronHole.drilled(c.length(name));
    return c.value().has(name + " at")
        ? hole.at(c.length(name + " at")).offCentre(c.length(name + " off centre"))
        : hole;
  }
}
