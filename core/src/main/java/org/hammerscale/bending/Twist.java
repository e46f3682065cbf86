package org.hammerscale.bending;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A twist in a square or flat bar. Torsion only shears, so the bar keeps its length: a twist uses
 * as much as it is long. How much it could shorten at the very most is told, and not used.
 *
 * <pre>{@code
 * Twist twist = Twist.of(1, inches(2), Section.square(inches("3/8")));
 * twist.developedLength()  // 2 in      bar in it: as long as it is
 * twist.cornerAngle()      // 39.8°     how steep the corners lean
 * twist.cornerLength()     // 2.603 in  how far they are drawn, from 2 in
 * }</pre>
 *
 * <p>Lengths come out in the length's unit. Section sizes are told for squares, flats and rounds;
 * other sections keep their length just so, but do not tell their corners.
 *
 * <p>Source: American Technical Society, <cite>Modern Shop Practice</cite>, vol. 2, "Forming
 * shoulders" (no allowance; practically no effect on the length).
 */
public final class Twist extends BentBar {
  private static final double MOST_TURNS = 1e6;
  private static final double SAME = 1e-9;
  private static final Source NO_ALLOWANCE =
      Source.read("American Technical Society, Modern Shop Practice, vol. 2", "Forming shoulders");
  private static final Source HELIX = Source.computed("helix of the corner");

  /** Ilgen's gate hook: one turn of 3/8 in square in 2 in. */
  private static final double TIGHTEST_PUBLISHED = 16 / 3d;

  private final double turns;
  private final Measure<Length> length;

  private Twist(double turns, Measure<Length> length, Section section) {
    super(section, length.getUnit());
    this.turns = turns;
    this.length = length;
  }

  /**
   * A twist.
   *
   * @param turns full turns of one end against the other, more than zero; parts of a turn count
   * @param length the length that is twisted, more than zero
   * @param section the bar
   * @return the twist
   * @throws IllegalArgumentException if turns or length are not more than zero
   */
  public static Twist of(double turns, Quantity<Length> length, Section section) {
    return new Twist(
        Arguments.number("turns", turns, MOST_TURNS, "count the full turns of one end"),
        Arguments.positive("length", length),
        section);
  }

  /**
   * The same twist, as tight, over the length of bar at hand.
   *
   * @param bar the length of bar, more than zero
   * @return the twist, with its own turns
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Twist using(Quantity<Length> bar) {
    Objects.requireNonNull(bar, "bar");
    Measure<Length> used = Arguments.positive("bar", bar).to(unit());
    return of(turns * used.ratio(length), used, section());
  }

  /** {@return the full turns} */
  public double turns() {
    return turns;
  }

  /**
   * The length of one full turn: L / N.
   *
   * @return the pitch, exact, in the length's unit
   */
  public Measure<Length> pitch() {
    return measure(pitch(Notes.NONE));
  }

  /**
   * How far a corner lies from the middle of the bar: half the diagonal, or half the diameter.
   *
   * @return the radius, exact, in the length's unit
   * @throws IllegalArgumentException if the section is neither square, flat nor round
   */
  public Measure<Length> cornerRadius() {
    return measure(cornerRadius(Notes.NONE));
  }

  /**
   * How long a corner is as it winds round: √(L² + (2 π N r)²).
   *
   * @return the length of the helix, exact, in the length's unit
   * @throws IllegalArgumentException if the section is neither square, flat nor round
   */
  public Measure<Length> cornerLength() {
    return measure(cornerLength(Notes.NONE));
  }

  /**
   * How steeply a corner winds, measured from the bar's axis: atan(2 π N r / L).
   *
   * @return the angle, exact, in degrees
   * @throws IllegalArgumentException if the section is neither square, flat nor round
   */
  public Measure<Angle> cornerAngle() {
    double way = 2 * Math.PI * turns * cornerRadius(Notes.NONE);
    double angle = Math.atan2(way, length.in(unit()));
    return Measure.of(angle, ShopUnits.RADIAN).to(ShopUnits.DEGREE);
  }

  /**
   * How much a corner stretches: its length ÷ length − 1.
   *
   * @return the stretch as a ratio, 0.3 for 30 %
   * @throws IllegalArgumentException if the section is neither square, flat nor round
   */
  public double cornerStretch() {
    return cornerLength().ratio(length) - 1;
  }

  /**
   * A bound, not a prediction: the length if the bar's fibres kept theirs on the average (root mean
   * square), √(L² − (2 π N i)²) with the polar radius of gyration i.
   *
   * @return the length, in the length's unit; empty if so tight a twist has none
   * @throws IllegalArgumentException if the section is neither square, flat nor round
   */
  public Optional<Measure<Length>> lengthIfFibresKept() {
    return lengthIfKept(gyration());
  }

  /**
   * The outermost bound, not a prediction: the length if the corners could not stretch at all, √(L²
   * − (2 π N r)²).
   *
   * @return the length, in the length's unit; empty if so tight a twist has none
   * @throws IllegalArgumentException if the section is neither square, flat nor round
   */
  public Optional<Measure<Length>> lengthIfCornersKept() {
    return lengthIfKept(cornerRadius(Notes.NONE));
  }

  /** {@return straight} */
  @Override
  public MeanLine meanLine() {
    return MeanLine.straight(reach());
  }

  /** {@return {@code twist}} */
  @Override
  public String name() {
    return "twist";
  }

  /** {@return its length} */
  @Override
  public Measure<Length> reach() {
    return length;
  }

  /** {@return a caution if it is tighter than the published example; else none} */
  @Override
  public List<Caution> cautions() {
    Measure<Length> tightest = section().width().multiply(TIGHTEST_PUBLISHED);
    return pitch().isLessThan(tightest) && !pitch().isEquivalentTo(tightest)
        ? List.of(
            Caution.limit(
                "a pitch of "
                    + pitch()
                    + " is tighter than the published example of a turn in 5 1/3 widths, here "
                    + tightest.to(unit())
                    + ": heat it evenly and measure the first one, it may come out shorter",
                Source.read("Ilgen, Forge Work, 1912", "sec. 72")))
        : List.of();
  }

  /** {@return how the length of bar was found} */
  @Override
  public Working working() {
    return Notes.taken(toString(), unit(), this::developed)
        .withSource(NO_ALLOWANCE)
        .withCautions(cautions());
  }

  /** {@return how the pitch was found} */
  public Working pitchWorking() {
    return Notes.taken("pitch of a " + this, unit(), this::pitch)
        .withSource(Source.computed("length ÷ turns"));
  }

  /** {@return how the length of a corner was found} */
  public Working cornerWorking() {
    return Notes.taken("corner of a " + this, unit(), this::cornerLength).withSource(HELIX);
  }

  @Override
  double developed(Notes n) {
    double l = n.given("l", "length to twist", length.in(unit()));
    return n.length("L", "bar used: torsion keeps the length", "l", l);
  }

  private double pitch(Notes n) {
    double l = n.given("l", "length to twist", length.in(unit()));
    double count = n.number("N", "turns", "", turns);
    return n.length("p", "length of a turn", "l / N", l / count);
  }

  private double cornerLength(Notes n) {
    double l = n.given("l", "length to twist", length.in(unit()));
    double count = n.number("N", "turns", "", turns);
    double r = cornerRadius(n);
    double way = n.length("u", "way round of a corner", "2 π N r", 2 * Math.PI * count * r);
    return n.length("c", "length of a corner", "√(l² + u²)", Math.sqrt(l * l + way * way));
  }

  private double cornerRadius(Notes n) {
    double w = n.given("w", "width", section().width().in(unit()));
    if (isRound()) {
      return n.length("r", "outside radius", "w / 2", w / 2);
    }
    double t = t(n);
    return n.length("r", "half the diagonal", "√(w² + t²) / 2", Math.sqrt(w * w + t * t) / 2);
  }

  private double gyration() {
    double w = section().width().in(unit());
    double t = thickness();
    return isRound() ? w / Math.sqrt(8) : Math.sqrt((w * w + t * t) / 12);
  }

  private Optional<Measure<Length>> lengthIfKept(double radius) {
    double l = length.in(unit());
    double way = 2 * Math.PI * turns * radius;
    return way <= l ? Optional.of(measure(Math.sqrt((l - way) * (l + way)))) : Optional.empty();
  }

  /** Round, or else a rectangle: told by how much of the box w × t the section fills. */
  private boolean isRound() {
    Measure<Length> w = section().width();
    Measure<Length> t = section().thickness();
    double filled = section().area().ratio(Measures.area(w, t));
    if (Math.abs(filled - 1) < SAME) {
      return false;
    }
    if (w.isEquivalentTo(t) && Math.abs(filled - Math.PI / 4) < SAME) {
      return true;
    }
    throw new IllegalArgumentException(
        "section of the twist must be square, flat or round for its corners to be told, was "
            + section()
            + "; ask for its length alone");
  }

  /** Turns, length and bar. */
  @Override
  public String toString() {
    return "twist of " + count(turns) + " turns in " + length + " of " + section();
  }
}
