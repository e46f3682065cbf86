/**
 * Lengths as a smith writes them, and every other quantity that a forge measures.
 *
 * <p>Write a length, read it, round it to a rule, compare and convert it:
 *
 * <pre>{@code
 * import static org.hammerscale.units.Graduation.SIXTEENTH;
 * import static org.hammerscale.units.Measures.*;
 * import static org.hammerscale.units.ShopUnits.MILLIMETRE;
 *
 * Measure<Length> bore = inches("1/2");                // 1/2 in
 * bore.add(millimetres(3)).upTo(SIXTEENTH)             // 5/8 in
 * bore.to(MILLIMETRE)                                  // 12.7 mm
 * bore.in(MILLIMETRE)                                  // 12.7
 * bore.isLessThan(millimetres(13))                     // true
 * length("3' 6 1/2\"")                                 // 42 1/2 in
 * LengthFormat.to(SIXTEENTH).format(millimetres(100))  // "3 15/16 in"
 * }</pre>
 *
 * <p>{@link org.hammerscale.units.Measures} makes measures, {@link org.hammerscale.units.ShopUnits}
 * names their units, {@link org.hammerscale.units.Graduation} is the rule they are rounded to,
 * {@link org.hammerscale.units.LengthFormat} reads and prints them. {@link
 * org.hammerscale.units.Estimate} is a value that cannot be known exactly, {@link
 * org.hammerscale.units.Tolerance} says how far two may lie apart in a test, {@link
 * org.hammerscale.units.Gauge} holds the numbered sizes of sheet, wire and screws. A quantity of
 * any other JSR 385 library can stand wherever one of ours can.
 *
 * <p>Policies of the whole package: {@code null} is refused with a {@link NullPointerException};
 * any other bad argument with an {@link IllegalArgumentException} that says what to do; nothing
 * changes after it is made, so everything is safe between threads; the default locale is never
 * asked.
 */
@NullMarked
package org.hammerscale.units;

import org.jspecify.annotations.NullMarked;
