package org.hammerscale.latch;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * How the closing edge of a door moves once it hangs: it drops as the upper hinge gives, and draws
 * away as the wood dries. What a latch, a bolt or a keeper must allow for. Other names: {@index
 * sag}, {@index shrinkage}.
 *
 * <pre>{@code
 * DoorMovement gate = DoorMovement.of(millimetres(1000));
 * gate.drop(millimetres(8), metres(1.7))   // 4.706 mm  the edge drops, the upper hinge out by 8 mm
 * gate.widthChange(0.00369, 6)             // 22.14 mm  red oak cut tangentially, drier by six per cent
 * gate.widthChange(0.00369, -2)            // -7.38 mm  and swells when it takes up two
 * }</pre>
 *
 * <p>Exact for the play and the coefficient that are given, in the width's unit. Source: plane
 * geometry; dimensional change w c ΔM of wood, USDA Forest Products Laboratory.
 */
public final class DoorMovement {
  private static final Source TURNING =
      Source.computed("the door turns about its lower hinge, seen at that hinge's level");
  private static final Source FPL =
      Source.read("US Forest Products Laboratory, dimensional change coefficients", "w c ΔM");
  private static final Caution BEYOND =
      Caution.limit(
          "the coefficients of wood hold from 6 to 14 per cent of moisture, so for a change of at"
              + " most 8 per cent",
          FPL);
  private static final double MOST_COEFFICIENT = 0.01;
  private static final double MOST_CHANGE = 30;
  private static final double VALID = 8;

  private final Measure<Length> width;
  private final Unit<Length> unit;

  private DoorMovement(Measure<Length> width) {
    this.width = width;
    this.unit = width.getUnit();
  }

  /**
   * Of a door.
   *
   * @param width from its hinges to the closing edge, across the grain for its shrinkage; more than
   *     zero
   * @return how it moves
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public static DoorMovement of(Quantity<Length> width) {
    return new DoorMovement(Arguments.positive("width", width));
  }

  /**
   * How far the closing edge drops when the upper hinge comes away: w p/h.
   *
   * @param play how far the upper hinge is out, zero or more and at most the spacing
   * @param spacing between the upper and the lower hinge, more than zero
   * @return the drop at the lower hinge's level, exact
   * @throws IllegalArgumentException if an argument is out of range
   */
  public Measure<Length> drop(Quantity<Length> play, Quantity<Length> spacing) {
    Measure<Length> out = checkedPlay(play, spacing);
    Measure<Length> apart = Measure.from(spacing);
    return Measure.of(drop(Notes.NONE, out, apart), unit);
  }

  /**
   * How the drop was found.
   *
   * @param play how far the upper hinge is out
   * @param spacing between the hinges
   * @return the working of {@link #drop}
   * @throws IllegalArgumentException if an argument is out of range
   */
  public Working dropWorking(Quantity<Length> play, Quantity<Length> spacing) {
    Measure<Length> out = checkedPlay(play, spacing);
    Measure<Length> apart = Measure.from(spacing);
    return Notes.taken("drop of a door's edge", unit, n -> drop(n, out, apart)).withSource(TURNING);
  }

  /**
   * How much narrower the door gets: w c ΔM.
   *
   * @param perPercent the wood's coefficient of change for each per cent of moisture, such as
   *     0.00369 for red oak cut tangentially; at most 0.01
   * @param drierByPercent how many per cent of moisture it loses, −30 to 30; negative if it swells
   * @return the change, exact by the coefficient; negative if it gets wider
   * @throws IllegalArgumentException if an argument is out of range
   */
  public Measure<Length> widthChange(double perPercent, double drierByPercent) {
    checkMoisture(perPercent, drierByPercent);
    return Measure.of(change(Notes.NONE, perPercent, drierByPercent), unit);
  }

  /**
   * How the change of width was found.
   *
   * @param perPercent the wood's coefficient
   * @param drierByPercent the loss of moisture
   * @return the working of {@link #widthChange}
   * @throws IllegalArgumentException if an argument is out of range
   */
  public Working widthChangeWorking(double perPercent, double drierByPercent) {
    checkMoisture(perPercent, drierByPercent);
    Working working =
        Notes.taken("change of a door's width", unit, n -> change(n, perPercent, drierByPercent))
            .withSource(FPL);
    return Math.abs(drierByPercent) <= VALID ? working : working.withCautions(List.of(BEYOND));
  }

  private static Measure<Length> checkedPlay(Quantity<Length> play, Quantity<Length> spacing) {
    Measure<Length> out = Arguments.notNegative("play", play);
    Measure<Length> apart = Arguments.positive("spacing", spacing);
    return Arguments.atMost(
        "play", out, "the spacing", apart, "give what the upper hinge has come away");
  }

  private static void checkMoisture(double perPercent, double drierByPercent) {
    Arguments.number("perPercent", perPercent, MOST_COEFFICIENT, "red oak has 0.00369");
    if (!(Math.abs(drierByPercent) <= MOST_CHANGE)) {
      throw new IllegalArgumentException(
          "drierByPercent must be from -30 to 30, was "
              + drierByPercent
              + "; give the loss of moisture in per cent of the dry wood");
    }
  }

  private double drop(Notes n, Measure<Length> play, Measure<Length> spacing) {
    double w = n.given("w", "width of the door", width.in(unit));
    double p = n.given("p", "upper hinge out by", play.in(unit));
    double h = n.given("h", "hinges apart", spacing.in(unit));
    return n.length("s", "drop of the edge", "w p / h", w * p / h);
  }

  private double change(Notes n, double perPercent, double drier) {
    double w = n.given("w", "width of the door", width.in(unit));
    double c = n.number("c", "change for each per cent", "", perPercent);
    double m = n.number("m", "loss of moisture in per cent", "", drier);
    return n.length("e", "narrower by", "w c m", w * c * m);
  }

  /** The width. */
  @Override
  public String toString() {
    return "movement of a door " + width + " wide";
  }
}
