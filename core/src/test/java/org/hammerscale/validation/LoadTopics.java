package org.hammerscale.validation;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.strength.DoorLoad;
import org.hammerscale.strength.HingeCount;
import org.hammerscale.strength.HingeGrade;
import org.hammerscale.strength.LidLoad;
import org.hammerscale.strength.StrapRule;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What doors and lids ask of their hinges. */
final class LoadTopics {
  private LoadTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("strength/door_loads", LoadTopics::door),
        new ValidationTopic("strength/lid_loads", LoadTopics::lid),
        new ValidationTopic("strength/door_rules", LoadTopics::rule),
        new ValidationTopic("strength/hinge_grades", LoadTopics::grade));
  }

  private static Measure<Force> weight(ValidationCase c) {
    return c.value().input("weight", Force.class);
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static double door(ValidationCase c) {
    Quantity<Length>[] heights =
        c.value().inputs().stream()
            .filter(name -> name.startsWith("height "))
            .map(c::length)
            .toArray(Quantity[]::new);
    DoorLoad door = DoorLoad.pressing(weight(c), c.length("width")).hungAt(heights);
    return switch (c.question()) {
      case "pull" -> door.pull(c.count("hinge")).in(ShopUnits.NEWTON);
      case "equal share" -> door.bearing().likely().in(ShopUnits.NEWTON);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double lid(ValidationCase c) {
    Measure<Length> middle = c.length("middle");
    LidLoad lid = LidLoad.pressing(weight(c), middle.multiply(2)).raisedTo(c.angle("raised"));
    if (c.question().equals("hinges, shut")) {
      return lid.shut().in(ShopUnits.NEWTON);
    }
    LidLoad.OnStay held = lid.onStay(c.length("stay at"), c.angle("stay to lid"));
    return switch (c.question()) {
      case "push of the stay" -> held.stay().in(ShopUnits.NEWTON);
      case "hinges" -> held.hinges().in(ShopUnits.NEWTON);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double rule(ValidationCase c) {
    Measure<Length> door = c.length("door");
    return switch (c.question()) {
      case "hinges by height" -> HingeCount.forHeight(door).hinges();
      case "a third at least" -> StrapRule.AT_LEAST_A_THIRD.least(door).in(ShopUnits.INCH);
      case "two thirds at most" -> StrapRule.THIRD_TO_TWO_THIRDS.most(door).in(ShopUnits.INCH);
      case "half at least" -> StrapRule.HALF_TO_TWO_THIRDS.least(door).in(ShopUnits.INCH);
      case "dummy at least" -> StrapRule.DUMMY_FRONT.least(door).in(ShopUnits.INCH);
      case "dummy at most" -> StrapRule.DUMMY_FRONT.most(door).in(ShopUnits.INCH);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double grade(ValidationCase c) {
    HingeGrade grade = HingeGrade.of(c.count("grade"));
    return switch (c.question()) {
      case "door" -> grade.doorMass().in(ShopUnits.KILOGRAM);
      case "openings" -> grade.testCycles();
      default -> throw new IllegalArgumentException(c.question());
    };
  }
}
