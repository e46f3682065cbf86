package org.hammerscale.examples.carry;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.examples.order.LoadText;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.Bracket;
import org.hammerscale.strength.BracketArm;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/**
 * The wind that blows square on a sign under an arm: it bends the arm sideways and turns the plate
 * about its side.
 *
 * @param wide the sign along the arm
 * @param high the sign
 * @param pressure of the wind
 * @param sideways the same bracket as it is pushed along the wall
 * @param arm as it is bent sideways
 */
record SignWind(
    Measure<Length> wide,
    Measure<Length> high,
    Measure<Pressure> pressure,
    Bracket sideways,
    BracketArm arm) {
  /**
   * That of an order, if it has a sign.
   *
   * @throws IllegalArgumentException if sign and wind are told by half, or the sign goes beyond the
   *     arm
   */
  static Optional<SignWind> of(OrderColumn job, Section bar, int screws) {
    Optional<Measure<Length>> wide = job.lengthIfAny(BracketItem.SIGN_WIDE);
    Optional<Measure<Length>> high = job.lengthIfAny(BracketItem.SIGN_HIGH);
    Optional<Measure<Pressure>> wind = job.measureIfAny(BracketItem.WIND, Pressure.class);
    if (wide.isPresent() != high.isPresent() || wide.isPresent() != wind.isPresent()) {
      throw new IllegalArgumentException(
          "sign must be told with its width, its height and the wind, or none in all three, was told"
              + " by half; tell the rest too");
    }
    return wide.map(it -> of(it, high.orElseThrow(), wind.orElseThrow(), job, bar, screws));
  }

  private static SignWind of(
      Measure<Length> wide,
      Measure<Length> high,
      Measure<Pressure> wind,
      OrderColumn job,
      Section bar,
      int screws) {
    Measure<Length> out = job.length(BracketItem.LOAD_OUT);
    Measure<Length> arm = job.length(BracketItem.ARM);
    Measure<Length> half = wide.divide(2);
    if (half.isGreaterThan(out) || half.isGreaterThan(arm.subtract(out))) {
      throw new IllegalArgumentException(
          "sign must hang between the wall and the arm's tip, its middle "
              + out
              + " out of "
              + arm
              + ", was "
              + wide
              + " wide; take a longer arm");
    }
    // The screws stand in the middle of the plate, which turns about its side.
    List<Measure<Length>> places = Collections.nCopies(screws, bar.width().divide(2));
    return new SignWind(
        wide,
        high,
        wind,
        Bracket.blownOn(wind, Measures.area(wide, high), out).screwedAt(BracketOrder.array(places)),
        BracketArm.of(bar.turned(), out));
  }

  /** What it pushes the sign with. */
  Measure<Force> force() {
    return sideways.load();
  }

  void write(SheetText sheet, Function<Measure<Length>, String> told) {
    sheet.entry(
        "Wind",
        "%s on a sign of %s × %s blows it sideways with %s",
        pressure,
        told.apply(wide),
        told.apply(high),
        LoadText.up(force()));
  }
}
