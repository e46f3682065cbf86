package org.hammerscale.validation;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.newtons;

import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.strength.DoorLoad;
import org.hammerscale.strength.HingeCount;
import org.hammerscale.strength.HingeGrade;
import org.hammerscale.strength.LidLoad;
import org.hammerscale.strength.LidOnStay;
import org.hammerscale.strength.StrapRule;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** What doors and lids ask of their hinges. */
final class LoadTopics {
  private LoadTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Doors on their hinges", "door_loads.csv", LoadTopics::door),
        new ValidationTopic("Lids on their stays", "lid_loads.csv", LoadTopics::lid),
        new ValidationTopic("Hinges and straps of a door", "door_rules.csv", LoadTopics::rule),
        new ValidationTopic("Grades of hinges", "hinge_grades.csv", LoadTopics::grade));
  }

  private static double number(ValidationCase c, String column) {
    return Double.parseDouble(c.text(column));
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static double door(ValidationCase c) {
    Quantity<Length>[] heights =
        Arrays.stream(c.text("heights").split(" ", -1))
            .map(text -> Measures.metres(Double.parseDouble(text)))
            .toArray(Quantity[]::new);
    DoorLoad door =
        DoorLoad.pressing(newtons(number(c, "weight in N")), c.length("width")).hungAt(heights);
    return switch (c.text("quantity")) {
      case "pull" -> door.pull(Integer.parseInt(c.text("hinge"))).in(ShopUnits.NEWTON);
      case "equal share" -> door.bearing().likely().in(ShopUnits.NEWTON);
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static double lid(ValidationCase c) {
    Measure<Length> middle = c.length("middle");
    LidLoad lid =
        LidLoad.pressing(newtons(number(c, "weight in N")), middle.multiply(2))
            .raisedTo(degrees(number(c, "raised")));
    if (c.text("quantity").equals("hinges, shut")) {
      return lid.shut().in(ShopUnits.NEWTON);
    }
    LidOnStay held = lid.onStay(c.length("stay at"), degrees(number(c, "stay to lid")));
    return switch (c.text("quantity")) {
      case "push of the stay" -> held.stay().in(ShopUnits.NEWTON);
      case "hinges" -> held.hinges().in(ShopUnits.NEWTON);
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static double rule(ValidationCase c) {
    Measure<Length> door = c.length("door");
    return switch (c.text("quantity")) {
      case "hinges by height" -> HingeCount.forHeight(door).hinges();
      case "a third at least" -> StrapRule.AT_LEAST_A_THIRD.least(door).in(ShopUnits.INCH);
      case "two thirds at most" -> StrapRule.THIRD_TO_TWO_THIRDS.most(door).in(ShopUnits.INCH);
      case "half at least" -> StrapRule.HALF_TO_TWO_THIRDS.least(door).in(ShopUnits.INCH);
      case "dummy at least" -> StrapRule.DUMMY_FRONT.least(door).in(ShopUnits.INCH);
      case "dummy at most" -> StrapRule.DUMMY_FRONT.most(door).in(ShopUnits.INCH);
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static double grade(ValidationCase c) {
    HingeGrade grade = HingeGrade.of(Integer.parseInt(c.text("grade")));
    return switch (c.text("quantity")) {
      case "door" -> grade.doorMass().in(ShopUnits.KILOGRAM);
      case "openings" -> grade.testCycles();
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }
}
