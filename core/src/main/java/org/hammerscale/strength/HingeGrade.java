package org.hammerscale.strength;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Source;

/**
 * A grade of single-axis hinges by EN 1935: the door that it is tested with and how often it is
 * opened. It says how other people's hinges are graded, so that a customer's demand can be read; a
 * forged hinge has no grade until it is tested.
 *
 * <pre>{@code
 * HingeGrade.forDoor(kilograms(55)).orElseThrow()   // grade 10: door of 60 kg, 200000 openings
 * HingeGrade.of(4).doorMass()                       // 20 kg  what a grade is tested with
 * HingeGrade.of(10).testCycles()                    // 200000  and how often it is opened
 * }</pre>
 *
 * <p>Source: EN 1935:2002. Grade 1 is 10 kg, not 20.
 */
public final class HingeGrade {
  private static final Source GRADES =
      Source.read("EN 1935:2002", "grades, as hinge makers print them");

  private static final int[] MASSES = {10, 20, 20, 20, 40, 40, 40, 60, 60, 60, 80, 100, 120, 160};
  private static final int WINDOW = 10_000;
  private static final int LIGHT = 25_000;
  private static final int DOOR = 200_000;
  private static final int[] CYCLES = {
    WINDOW, WINDOW, LIGHT, DOOR, WINDOW, LIGHT, DOOR, WINDOW, LIGHT, DOOR, DOOR, DOOR, DOOR, DOOR
  };

  private final int number;

  private HingeGrade(int number) {
    this.number = number;
  }

  /**
   * A grade by its number.
   *
   * @param number 1 to 14
   * @return the grade
   * @throws IllegalArgumentException if there is no such grade
   */
  public static HingeGrade of(int number) {
    if (number < 1 || number > MASSES.length) {
      throw new IllegalArgumentException(
          "number must lie between 1 and 14, was " + number + "; EN 1935 has fourteen grades");
    }
    return new HingeGrade(number);
  }

  /**
   * The lowest grade for a door that is used all day.
   *
   * @param door its mass, not negative
   * @return the grade with 200 000 openings; none above 160 kg
   * @throws IllegalArgumentException if the mass is negative
   */
  public static Optional<HingeGrade> forDoor(Quantity<Mass> door) {
    Measure<Mass> mass = Arguments.notNegativeMass("door", door);
    return all().stream()
        .filter(grade -> grade.testCycles() == DOOR)
        .filter(grade -> !mass.isGreaterThan(grade.doorMass()))
        .findFirst();
  }

  /** {@return the fourteen grades} */
  public static List<HingeGrade> all() {
    return IntStream.rangeClosed(1, MASSES.length).mapToObj(HingeGrade::new).toList();
  }

  /** {@return its number} */
  public int number() {
    return number;
  }

  /** {@return the mass of the door that it is tested with} */
  public Measure<Mass> doorMass() {
    return Measures.kilograms(MASSES[number - 1]);
  }

  /** {@return how often the door is opened in the test} */
  public int testCycles() {
    return CYCLES[number - 1];
  }

  /** {@return what it is for: window, door/window or door} */
  public String use() {
    return switch (testCycles()) {
      case WINDOW -> "window";
      case LIGHT -> "door/window";
      default -> "door";
    };
  }

  /** {@return the standard, and where its grades were seen in print} */
  public Source source() {
    return GRADES;
  }

  /** Number, mass and openings. */
  @Override
  public String toString() {
    return "grade " + number + ": door of " + doorMass() + ", " + testCycles() + " openings";
  }
}
