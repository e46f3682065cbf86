package org.hammerscale.bending;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A coil: a bar wound round a mandrel with an even rise, L = N √((π m)² + p²) with the mean
 * diameter m and the pitch p. Other names: {@index helix}, {@index spring}; the strands of a
 * {@index "basket handle"} are coils.
 *
 * <pre>{@code
 * Section rod = Section.round(millimetres(10));
 * Coil coil = Coil.around(millimetres(80), 5, millimetres(40), rod);
 * coil.developedLength()                 // 1427.79 mm  rod for five turns on a mandrel of 80 mm
 * coil.reach()                           // 200 mm      how long the coil gets
 * coil.using(millimetres(1000)).reach()  // 140.08 mm   what a metre at hand winds to
 * }</pre>
 *
 * <p>Exact as geometry, on the mean line; lengths come out in the mandrel's unit.
 *
 * <p>Source: BS 8666:2005, shape code 77; geometry of the helix.
 */
public final class Coil extends BentBar {
  private static final double MOST_TURNS = 1e6;
  private static final Source HELIX = Source.read("BS 8666:2005", "shape code 77");

  private final Measure<Length> mandrel;
  private final double turns;
  private final Measure<Length> pitch;

  private Coil(Measure<Length> mandrel, double turns, Measure<Length> pitch, Section section) {
    super(section, mandrel.getUnit());
    this.mandrel = mandrel;
    this.turns = turns;
    this.pitch = pitch;
  }

  /**
   * A coil.
   *
   * @param mandrel the finished inside diameter, more than zero
   * @param turns how many turns, more than zero; parts of a turn count
   * @param pitch the rise along the axis in one turn, not negative
   * @param section the bar, its thickness across the bend and its width along the axis
   * @return the coil
   * @throws IllegalArgumentException if a value lies outside its range
   */
  public static Coil around(
      Quantity<Length> mandrel, double turns, Quantity<Length> pitch, Section section) {
    return new Coil(
        Arguments.positive("mandrel", mandrel),
        Arguments.number("turns", turns, MOST_TURNS, "count the turns of the finished coil"),
        Arguments.notNegative("pitch", pitch),
        section);
  }

  /**
   * The same coil with as many turns as a length of bar gives: N = L / √((π m)² + p²).
   *
   * @param length the length of bar, more than zero
   * @return the coil
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Coil using(Quantity<Length> length) {
    double used = Arguments.positive("length", length).in(unit());
    return around(mandrel, used / turn(Notes.NONE), pitch, section());
  }

  /** {@return the inside diameter} */
  public Measure<Length> insideDiameter() {
    return mandrel;
  }

  /** {@return how many turns} */
  public double turns() {
    return turns;
  }

  /** {@return the rise along the axis in one turn} */
  public Measure<Length> pitch() {
    return pitch;
  }

  /** {@return what is seen along its axis: a circle, or an arc of less than a turn} */
  @Override
  public MeanLine meanLine() {
    double radius = (mandrel.in(unit()) + thickness()) / 2;
    MeanLine seen = MeanLine.from(unit()).arc(radius, 2 * Math.PI * Math.min(turns, 1));
    return turns < 1 ? seen : seen.closed();
  }

  /** {@return {@code coil}} */
  @Override
  public String name() {
    return "coil";
  }

  /** {@return its length along the axis, from the middle of one end to that of the other} */
  @Override
  public Measure<Length> reach() {
    return measure(pitch.in(unit()) * turns);
  }

  /** {@return cautions if the turns lie in one another's way, or the bend is very tight} */
  @Override
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(tightCurl(mandrel));
    if (turns > 1 && pitch.isLessThan(section().width())) {
      cautions.add(
          Caution.limit(
              "a pitch of "
                  + pitch
                  + " leaves no room for a bar of "
                  + section().width()
                  + " along the axis: the turns would lie in one another; rise at least as much as"
                  + " the bar is wide",
              Source.computed("geometry of the helix")));
    }
    return List.copyOf(cautions);
  }

  /** {@return how the length of bar was found} */
  @Override
  public Working working() {
    return Notes.taken("coil of " + section(), unit(), this::developed)
        .withSource(HELIX)
        .withCautions(cautions());
  }

  @Override
  double developed(Notes n) {
    double h = turn(n);
    double count = n.number("N", "turns", "", turns);
    return n.length("L", "bar used", "N h", count * h);
  }

  private double turn(Notes n) {
    double d = n.given("d", "inside diameter", mandrel.in(unit()));
    double t = t(n);
    double m = n.length("m", "mean diameter", "d + t", d + t);
    double p = n.given("p", "pitch", pitch.in(unit()));
    return n.length(
        "h", "bar of one turn", "√(π² m² + p²)", Math.sqrt(Math.PI * Math.PI * (m * m) + p * p));
  }

  /** Turns, pitch, mandrel and bar. */
  @Override
  public String toString() {
    return "coil of "
        + count(turns)
        + " turns, pitch "
        + pitch
        + ", "
        + mandrel
        + " inside, of "
        + section();
  }
}
