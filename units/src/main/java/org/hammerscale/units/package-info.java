/**
 * Lengths as a smith writes them, and every other quantity that a forge measures.
 *
 * <p>Where to begin:
 *
 * <ul>
 *   <li>{@link org.hammerscale.units.Measures}: how is a length written, or read from text?
 *   <li>{@link org.hammerscale.units.Measure}: how is it added, compared, converted, got out as a
 *       number?
 *   <li>{@link org.hammerscale.units.Graduation}: what does a rule make of it?
 *   <li>{@link org.hammerscale.units.Estimate}: what if it cannot be known exactly?
 * </ul>
 *
 * <pre>{@code
 * import static org.hammerscale.units.Graduation.SIXTEENTH;
 * import static org.hammerscale.units.Measures.*;
 * import static org.hammerscale.units.ShopUnits.MILLIMETRE;
 *
 * Measure<Length> bore = inches("1/2");
 * bore.add(millimetres(3)).upTo(SIXTEENTH)             // 5/8 in        units mix; the answer is in inches
 * bore.isLessThan(millimetres(13))                     // true          and compare
 * bore.in(MILLIMETRE)                                  // 12.7          for a program that wants a number
 * LengthFormat.to(SIXTEENTH).format(millimetres(100))  // "3 15/16 in"  for a reader with an inch rule
 * }</pre>
 *
 * <p>{@link org.hammerscale.units.ShopUnits} names the units, {@link
 * org.hammerscale.units.ShopSystem} finds one by its symbol. {@link
 * org.hammerscale.units.LengthFormat} reads and prints lengths, and refuses with a {@link
 * javax.measure.format.MeasurementParseException}. {@link org.hammerscale.units.Tolerance} says how
 * far two may lie apart in a test, {@link org.hammerscale.units.Gauge} holds the numbered sizes of
 * sheet, wire and screws. {@link org.hammerscale.units.Density} and {@link
 * org.hammerscale.units.LinearDensity} are quantities that JSR 385 lacks. A quantity of any other
 * JSR 385 library can stand wherever one of ours can.
 *
 * <p>Policies of the whole package: {@code null} is refused with a {@link NullPointerException};
 * any other bad argument with an {@link IllegalArgumentException} that says what to do; nothing
 * changes after it is made, so everything is safe between threads; the default locale is never
 * asked.
 */
@NullMarked
package org.hammerscale.units;

import org.jspecify.annotations.NullMarked;
