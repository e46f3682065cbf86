package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.hinge.Pin;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * What a pin bears under a force across it: shear, bending in a {@link Fork}, and bearing on the
 * bore.
 *
 * <pre>{@code
 * PinLoad load = PinLoad.on(Pin.of(millimetres(10)), newtons(1000));
 * load.peakShear(PinLoad.Shear.SINGLE)    // 16.98 MPa  a pin that stands on one side
 * load.meanShear(PinLoad.Shear.DOUBLE)    // 6.366 MPa  one held on both
 * load.bearing(millimetres(30))           // 3.333 MPa  on a knuckle of 30 mm
 * Fork fork = Fork.around(millimetres(30)).cheeks(millimetres(15)).gap(millimetres(1));
 * load.bending(fork)                      // 81.49 MPa  between its outer knuckles
 * }</pre>
 *
 * <p>Stresses come out in MPa, or in psi for a force in pounds-force. They are exact for a pin of
 * that size under that force. Shear is greatest in the middle of the pin and bending at its skin,
 * so that the two are compared with the strength one by one. Take for the force what the worst
 * knuckle carries: one of several hinges may carry all.
 *
 * <p>Source: strength of materials; bending in a fork after EN 1993-1-8, figure 3.11 (read).
 */
public final class PinLoad {
  /** In how many planes the force would have to shear the pin. */
  public enum Shear {
    /** In one plane: an eye on a pin held at one side, a pair of two knuckles. */
    SINGLE("single shear", 1),
    /** In two planes: a tongue in a fork, three knuckles or more. */
    DOUBLE("double shear", 2);

    private final String words;
    private final int planes;

    Shear(String words, int planes) {
      this.words = words;
      this.planes = planes;
    }

    int planes() {
      return planes;
    }

    /** The case in words. */
    @Override
    public String toString() {
      return words;
    }
  }

  static final Source SHEAR =
      Source.computed("shear of a solid round section, at its middle 4/3 of the mean");
  static final Source BENDING =
      Source.read("EN 1993-1-8:2005", "figure 3.11, as a public page works it");
  static final Source BEARING = Source.computed("force ÷ the bore's area seen along the force");
  private static final Caution WEAR =
      Caution.limit(
          "no published limit of bearing pressure for a hinge that wears could be read: keep it far"
              + " below the yield strength, and grease the pin",
          Source.commonPractice("a low bearing pressure makes a hinge last"));

  private final Pin pin;
  private final Measure<Force> force;
  private final StressUnits units;

  private PinLoad(Pin pin, Measure<Force> force) {
    this.pin = Objects.requireNonNull(pin, "pin");
    this.force = force;
    this.units = StressUnits.ofForce(force);
  }

  /**
   * A force across a pin.
   *
   * @param pin the pin
   * @param force the force, more than zero
   * @return the load
   * @throws IllegalArgumentException if the force is not more than zero
   */
  public static PinLoad on(Pin pin, Quantity<Force> force) {
    return new PinLoad(pin, Arguments.positiveForce("force", force));
  }

  /** {@return the pin} */
  public Pin pin() {
    return pin;
  }

  /** {@return the force across it} */
  public Measure<Force> force() {
    return force;
  }

  /**
   * The mean shear stress: τ = F / (k A), in k planes of A = π d²/4.
   *
   * @param shear in one plane or two
   * @return the stress, exact
   */
  public Measure<Pressure> meanShear(Shear shear) {
    return units.pressure(mean(Notes.NONE, shear));
  }

  /**
   * The greatest shear stress, in the middle of the round: 4/3 of the mean.
   *
   * @param shear in one plane or two
   * @return the stress, exact as strength of materials has it
   */
  public Measure<Pressure> peakShear(Shear shear) {
    return units.pressure(peak(Notes.NONE, shear));
  }

  /**
   * The greatest bending stress in a fork: σ = 32 M / (π d³) with M = F (b + 4 c + 2 a) / 8. The
   * bearings are taken to press evenly over their widths, which is on the safe side for a stiff
   * fork.
   *
   * @param fork the middle b, the cheeks a and the gaps c
   * @return the stress, exact for that distribution
   */
  public Measure<Pressure> bending(Fork fork) {
    return units.pressure(bending(Notes.NONE, fork));
  }

  /**
   * The mean bearing pressure on a bore: p = F / (d w). For the cheeks of a fork give the width of
   * both together.
   *
   * @param width how much of the bore's length bears, w; more than zero
   * @return the pressure, exact
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public Measure<Pressure> bearing(Quantity<Length> width) {
    return units.pressure(bearing(Notes.NONE, Arguments.positive("width", width)));
  }

  /** {@return those of the pin; of wear; and that no design is certified} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(pin.cautions());
    cautions.add(WEAR);
    cautions.addAll(LoadCautions.OF_STRENGTH);
    return List.copyOf(cautions);
  }

  /**
   * How the mean shear stress was found.
   *
   * @param shear in one plane or two
   * @return the working of {@link #meanShear}
   */
  public Working meanShearWorking(Shear shear) {
    return working("mean stress in " + shear, SHEAR, n -> mean(n, shear));
  }

  /**
   * How the greatest shear stress was found.
   *
   * @param shear in one plane or two
   * @return the working of {@link #peakShear}
   */
  public Working peakShearWorking(Shear shear) {
    return working("greatest stress in " + shear, SHEAR, n -> peak(n, shear));
  }

  /**
   * How the bending stress was found.
   *
   * @param fork the middle, the cheeks and the gaps
   * @return the working of {@link #bending}
   */
  public Working bendingWorking(Fork fork) {
    return working("bending of a pin in a fork", BENDING, n -> bending(n, fork));
  }

  /**
   * How the bearing pressure was found.
   *
   * @param width how much of the bore's length bears, more than zero
   * @return the working of {@link #bearing}
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public Working bearingWorking(Quantity<Length> width) {
    Measure<Length> bears = Arguments.positive("width", width);
    return working("bearing of a pin", BEARING, n -> bearing(n, bears));
  }

  private Working working(String title, Source source, Notes.Calculation calculation) {
    return Notes.taken(title, units.length(), calculation)
        .withSource(source)
        .withCautions(cautions());
  }

  private double diameter(Notes n) {
    return units.given(n, "d", "diameter of the pin", pin.diameter());
  }

  private double mean(Notes n, Shear shear) {
    double f = units.givenForce(n, "force across the pin", force);
    double d = diameter(n);
    double a = n.area("A", "section of the pin", "π d² / 4", Math.PI * (d * d) / 4);
    double k = n.number("k", "planes of shear", "", Objects.requireNonNull(shear, "shear").planes);
    return units.pressure(n, "τ", "mean shear stress", "F / (k A)", f / (k * a));
  }

  private double peak(Notes n, Shear shear) {
    double mean = mean(n, shear);
    return units.pressure(n, "τₘ", "in the middle of the round", "4 τ / 3", 4 * mean / 3);
  }

  private double bending(Notes n, Fork fork) {
    double m = moment(n, units, force, fork);
    double d = diameter(n);
    double cube = d * d * d;
    String formula = "32 M / (π d³)";
    return units.pressure(n, "σ", "bending stress", formula, 32 * m / (Math.PI * cube));
  }

  /** The bending moment in the middle of a fork, in the units of stress. */
  static double moment(Notes n, StressUnits units, Measure<Force> force, Fork fork) {
    double f = units.givenForce(n, "force across the pin", force);
    Objects.requireNonNull(fork, "fork");
    double b = units.given(n, "b", "width of the middle", fork.middle());
    double c = units.given(n, "c", "gap on either side", fork.gap());
    double a = units.given(n, "a", "width of each cheek", fork.cheek());
    String formula = "F (b + 4 c + 2 a) / 8";
    return units.moment(n, "M", "bending moment", formula, f * (b + 4 * c + 2 * a) / 8);
  }

  private double bearing(Notes n, Measure<Length> width) {
    double f = units.givenForce(n, "force across the pin", force);
    double d = diameter(n);
    double w = units.given(n, "w", "length of bore that bears", width);
    return units.pressure(n, "p", "bearing pressure", "F / (d w)", f / (d * w));
  }

  /** Force and pin. */
  @Override
  public String toString() {
    return force + " across a " + pin;
  }
}
