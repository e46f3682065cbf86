package org.hammerscale.strength;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.fastening.IronHole;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.Subscripts;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * What holes leave of a strap that is pulled: the least net width of any line from edge to edge,
 * straight or zigzag through staggered holes, b = w − Σ d0 + Σ s²/(4 g) with s the distance of two
 * holes of the line along the strap and g across it. The weakest line is found among all of them.
 * Other name: {@index "net area"}.
 *
 * <pre>{@code
 * Section strap = Section.flat(millimetres(40), millimetres(5));
 * IronHole near = IronHole.drilled(millimetres(7)).offCentre(millimetres(-10));
 * IronHole far = IronHole.drilled(millimetres(7)).offCentre(millimetres(10)).at(millimetres(30));
 * NetSection net = NetSection.of(strap, near, far);
 * net.netWidth()                                // 33 mm  through one hole: the weakest line
 * NetSection.along(strap, near, far).netArea()  // 186.3 mm²  the line through both is longer, so stronger
 * net.designRupture(megapascals(360))           // 42768 N
 * net.deducting(millimetres(2)).netWidth()      // 31 mm  if what punching spoils is taken off too
 * }</pre>
 *
 * <p>Widths and areas are exact by the rule. Strengths say in their names whether they are nominal,
 * without any factor of safety, or design values with the partial factor of the Eurocode.
 *
 * <p>Source: the s²/(4 g) rule of Cochrane, as in AISC 360, sec. B4.3b, and EN 1993-1-1, sec.
 * 6.2.2.2, from memory.
 */
public final class NetSection {
  private static final int MOST = 200;
  private static final Source STAGGER =
      Source.fromMemory("AISC 360, EN 1993-1-1", "secs. B4.3b, 6.2.2.2: s²/(4 g)");
  private static final Source AISC = Source.fromMemory("AISC 360", "sec. D2, nominal strength");
  private static final Source EUROCODE = Source.fromMemory("EN 1993-1-1", "sec. 6.2.3, γM2 = 1.25");
  private static final Source DAMAGE = Source.fromMemory("AISC 360", "sec. B4.3b");
  private static final Caution NOMINAL =
      Caution.limit(
          "a nominal strength carries no factor of safety: AISC takes 0.75 of it for rupture and"
              + " 0.9 for yielding, or divides by 2 and 1.67",
          AISC);
  private static final double GAMMA_M2 = 1.25;

  private final Section strap;
  private final List<IronHole> line;
  private final List<IronHole> holes;
  private final Measure<Length> extra;
  private final boolean anyLine;
  private final Unit<Length> unit;

  private NetSection(Section strap, List<IronHole> holes, Measure<Length> extra, boolean anyLine) {
    this.strap = strap;
    this.unit = strap.width().getUnit();
    this.extra = extra;
    this.anyLine = anyLine;
    holes.forEach(hole -> hole.requireWithin(strap));
    this.holes = holes.stream().sorted(Comparator.comparingDouble(this::across)).toList();
    this.line = anyLine ? WeakestLine.of(strap, this.holes, extra) : checkedLine(this.holes);
    if (!(netWidth(Notes.NONE) > 0)) {
      throw new IllegalArgumentException(
          "holes must leave some of the "
              + strap
              + ", was "
              + line.size()
              + " in a line that take it all; set them farther apart, make them smaller, or deduct"
              + " less");
    }
  }

  /**
   * The strap at its weakest line through any of its holes.
   *
   * @param strap a flat or square bar
   * @param holes its holes, each where it lies, up to 200; none leaves the whole strap
   * @return the net section
   * @throws IllegalArgumentException if a hole does not lie within the strap, or they leave nothing
   *     of it
   */
  public static NetSection of(Section strap, IronHole... holes) {
    Objects.requireNonNull(holes, "holes");
    Arguments.count("holes", holes.length, 0, MOST, "ask for each part of the strap by itself");
    Section.requireArea("strap", strap);
    return new NetSection(strap, List.of(holes), strap.width().withValue(0), true);
  }

  /**
   * The strap along the one line that goes through all of these holes, from edge to edge.
   *
   * @param strap a flat or square bar
   * @param holes the holes of the line, up to 200, no two of them equally far from the edge
   * @return the net section of that line, be it the weakest or not
   * @throws IllegalArgumentException if a hole does not lie within the strap, or two lie one behind
   *     the other, or they leave nothing of the strap
   */
  public static NetSection along(Section strap, IronHole... holes) {
    Objects.requireNonNull(holes, "holes");
    Arguments.count("holes", holes.length, 0, MOST, "ask for each part of the strap by itself");
    Section.requireArea("strap", strap);
    return new NetSection(strap, List.of(holes), strap.width().withValue(0), false);
  }

  private List<IronHole> checkedLine(List<IronHole> sorted) {
    for (int i = 1; i < sorted.size(); i++) {
      if (!WeakestLine.isBeside(sorted.get(i), sorted.get(i - 1), strap)) {
        throw new IllegalArgumentException(
            "holes of a line must lie one beside the other, was a "
                + sorted.get(i)
                + " behind another; leave one out, or let NetSection.of find the line");
      }
    }
    return sorted;
  }

  /**
   * The same with something more deducted at each drilled or punched hole: AISC takes 1/16 in for
   * what making the hole spoils.
   *
   * @param perHole not negative
   * @return the net section
   * @throws IllegalArgumentException if it is negative, or leaves nothing of the strap
   */
  public NetSection deducting(Quantity<Length> perHole) {
    Measure<Length> more = Arguments.notNegative("perHole", perHole);
    return new NetSection(strap, holes, more, anyLine);
  }

  /** {@return the holes of the line that counts, from one edge to the other} */
  public List<IronHole> line() {
    return line;
  }

  /** {@return the net width b, exact by the rule, in the unit of the strap's width} */
  public Measure<Length> netWidth() {
    return Measure.of(netWidth(Notes.NONE), unit);
  }

  /** {@return the net area b t, exact by the rule, in the square of that unit} */
  public Measure<Area> netArea() {
    return Measures.area(netWidth(), strap.thickness());
  }

  /**
   * The pull at which the whole strap yields: Fy w t, by AISC without its factor, by the Eurocode
   * with γM0 = 1.
   *
   * @param yieldStrength Fy, more than zero
   * @return the force: pounds-force for a strap in inches, else newtons
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Measure<Force> nominalYield(Quantity<Pressure> yieldStrength) {
    return force(yielding(strength("yieldStrength", yieldStrength)));
  }

  /**
   * The pull that tears the strap at its net section: Fu b t, nominal.
   *
   * @param tensileStrength Fu, more than zero
   * @return the force, without a factor of safety: pounds-force for a strap in inches, else newtons
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Measure<Force> nominalRupture(Quantity<Pressure> tensileStrength) {
    return force(rupture(strength("tensileStrength", tensileStrength)));
  }

  /**
   * The design resistance of the net section by the Eurocode: 0.9 b t fu / γM2, γM2 = 1.25.
   *
   * @param tensileStrength fu, more than zero
   * @return the force: pounds-force for a strap in inches, else newtons
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Measure<Force> designRupture(Quantity<Pressure> tensileStrength) {
    return force(design(strength("tensileStrength", tensileStrength)));
  }

  /** {@return how the net width was found} */
  public Working working() {
    return Notes.taken("net width of " + strap, unit, this::netWidth)
        .withSource(STAGGER)
        .withCautions(cautions());
  }

  /**
   * How the yielding pull was found.
   *
   * @param yieldStrength Fy, more than zero
   * @return the working of {@link #nominalYield}
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Working yieldWorking(Quantity<Pressure> yieldStrength) {
    return taken(
            "yielding of the strap, nominal", yielding(strength("yieldStrength", yieldStrength)))
        .withSource(AISC)
        .withCautions(List.of(NOMINAL));
  }

  /**
   * How the tearing pull was found.
   *
   * @param tensileStrength Fu, more than zero
   * @return the working of {@link #nominalRupture}
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Working ruptureWorking(Quantity<Pressure> tensileStrength) {
    Measure<Pressure> fu = strength("tensileStrength", tensileStrength);
    return taken("rupture at the net section, nominal", rupture(fu))
        .withSource(AISC)
        .withSource(STAGGER)
        .withCautions(List.of(NOMINAL))
        .withCautions(cautions());
  }

  /**
   * How the design resistance was found.
   *
   * @param tensileStrength fu, more than zero
   * @return the working of {@link #designRupture}
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Working designWorking(Quantity<Pressure> tensileStrength) {
    Measure<Pressure> fu = strength("tensileStrength", tensileStrength);
    return taken("net section, design resistance", design(fu))
        .withSource(EUROCODE)
        .withSource(STAGGER);
  }

  /** {@return a caution if nothing is deducted for what drill or punch spoils; else none} */
  public List<Caution> cautions() {
    boolean spoiled = line.stream().anyMatch(hole -> hole.widthTaken().getValue() > 0);
    return spoiled && extra.getValue() == 0
        ? List.of(
            Caution.limit(
                "AISC deducts 1/16 in more than the hole for what making it spoils, here nothing is"
                    + " deducted; take deducting(inches(\"1/16\"))",
                DAMAGE))
        : List.of();
  }

  private static Measure<Pressure> strength(String name, Quantity<Pressure> strength) {
    return Arguments.positivePressure(name, strength);
  }

  private Working taken(String title, Notes.Calculation kernel) {
    return Notes.taken(title, units().length(), kernel);
  }

  private Measure<Force> force(Notes.Calculation kernel) {
    return units().force(kernel.calculate(Notes.NONE));
  }

  private StressUnits units() {
    return StressUnits.ofStrap(strap);
  }

  private double netWidth(Notes n) {
    return netWidth(n, unit);
  }

  private double netWidth(Notes n, Unit<Length> in) {
    double b = n.given("w", "width of the strap", strap.width().in(in));
    double more = extra.getValue() == 0 ? 0 : n.given("x", "spoiled at each hole", extra.in(in));
    StringBuilder formula = new StringBuilder("w");
    for (int i = 0; i < line.size(); i++) {
      IronHole hole = line.get(i);
      String at = Subscripts.of(i + 1);
      if (i > 0) {
        IronHole last = line.get(i - 1);
        String s = "s" + Subscripts.of(i);
        String g = "g" + Subscripts.of(i);
        double apart =
            n.given(
                s, "distance along to hole " + (i + 1), hole.along().in(in) - last.along().in(in));
        double beside =
            n.given(g, "distance across to it", hole.offset().in(in) - last.offset().in(in));
        b += apart * apart / (4 * beside);
        formula.append(" + ").append(s).append("² / (4 ").append(g).append(")");
      }
      double taken = hole.widthTaken().in(in);
      if (taken > 0) {
        b -= n.given("d" + at, "diameter of hole " + (i + 1), taken) + more;
        formula.append(" − d").append(at).append(more > 0 ? " − x" : "");
      }
    }
    return n.length("b", "net width", formula.toString(), b);
  }

  private Notes.Calculation yielding(Measure<Pressure> strength) {
    return n -> {
      double w = n.given("w", "width of the strap", strap.width().in(units().length()));
      double t = thickness(n);
      double f = stress(n, "Fy", "yield strength", strength);
      return pull(n, "yielding of the whole strap, nominal", "Fy w t", f * w * t);
    };
  }

  private Notes.Calculation rupture(Measure<Pressure> strength) {
    return n -> {
      double b = netWidth(n, units().length());
      double t = thickness(n);
      double f = stress(n, "Fu", "tensile strength", strength);
      return pull(n, "rupture at the net section, nominal", "Fu b t", f * b * t);
    };
  }

  private Notes.Calculation design(Measure<Pressure> strength) {
    return n -> {
      double b = netWidth(n, units().length());
      double t = thickness(n);
      double f = stress(n, "fu", "tensile strength", strength);
      double g = n.value("γ", "partial factor γM2", "", GAMMA_M2, ShopUnits.ONE);
      return pull(n, "design resistance", "0.9 b t fu / γ", 0.9 * b * t * f / g);
    };
  }

  private double thickness(Notes n) {
    return n.given("t", "thickness of the strap", strap.thickness().in(units().length()));
  }

  private double stress(Notes n, String symbol, String meaning, Measure<Pressure> strength) {
    Unit<Pressure> in = units().pressure();
    return n.value(symbol, meaning, "", strength.in(in), in);
  }

  private double pull(Notes n, String meaning, String formula, double value) {
    return n.value("R", meaning, formula, value, units().force());
  }

  private double across(IronHole hole) {
    return hole.offset().in(unit);
  }

  /** The strap and how many holes count. */
  @Override
  public String toString() {
    return strap + " with " + line.size() + (line.size() == 1 ? " hole" : " holes") + " in a line";
  }
}
