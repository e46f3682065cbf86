package org.hammerscale.holding;

import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.fastening.CountersunkHead;
import org.hammerscale.fastening.LagScrew;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.stock.Material;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;

/**
 * How far a number of like screws is used by a pull and a push across, limit by limit, in the
 * screws' own units. All uses fall as the effective number of the row grows.
 *
 * @param screw one of the screws
 * @param length its length under or over the head
 * @param load what it bears, and what it goes through
 */
record ScrewHold(WoodFastener screw, Measure<Length> length, StrapScrews load) {
  /** Across the grain a lag screw holds less, the more the thicker: diameter in inches, share. */
  private static final double[][] LAG_ACROSS = {
    {0.1875, 1},
    {0.25, 0.97},
    {0.3125, 0.85},
    {0.375, 0.76},
    {0.4375, 0.70},
    {0.5, 0.65},
    {0.625, 0.60},
    {0.75, 0.55},
    {0.875, 0.52},
    {1, 0.50}
  };

  /** How deep it stands in the wood that receives its point. */
  Measure<Length> penetration() {
    return length.subtract(load.fixed());
  }

  /** The thread in that wood, without a tip that does not count. */
  Measure<Length> thread() {
    Measure<Length> thread = screw.threadLength(length);
    Measure<Length> inWood = penetration();
    return (thread.isLessThan(inWood) ? thread : inWood).subtract(screw.tip());
  }

  double use(ScrewChoice.Limit limit, Notes n, int count) {
    return switch (limit) {
      case WITHDRAWAL -> withdrawal(n, number(n, count), pull(n));
      case LATERAL -> lateral(n, number(n, count), push(n));
      case COMBINED -> combined(n, number(n, count));
      case HEAD -> head(n, number(n, count));
      case SCREW -> shank(n, number(n, count));
    };
  }

  /** The greatest use of any limit if one screw bore all of it. */
  double mostOfOne() {
    double most = 0;
    for (ScrewChoice.Limit limit : ScrewChoice.Limit.values()) {
      most = Math.max(most, use(limit, Notes.NONE, 1));
    }
    return most;
  }

  private static double number(Notes n, int count) {
    double all = n.number("n", "screws", "", count);
    return n.number("m", "number they count for", "pow(n, 0.9)", Math.pow(all, FastenerRow.POWER));
  }

  private double pull(Notes n) {
    return n.value("P", "pull out of the wood", "", load.pull().in(force()), force());
  }

  private double push(Notes n) {
    return n.value("S", "load across", "", load.across().in(force()), force());
  }

  private double withdrawal(Notes n, double m, double p) {
    Measure<Force> one = ReferenceWithdrawal.of(screw, load.wood()).force(thread());
    double w = n.value("W", "reference withdrawal of one", "", one.in(force()), force());
    return n.number("a", "use in withdrawal", "P / (m W)", p / (m * w));
  }

  private double lateral(Notes n, double m, double s) {
    double z = n.value("Z", "working load across of one", "", across().in(force()), force());
    return n.number("b", "use across", "S / (m Z)", s / (m * z));
  }

  /**
   * The old working load of a wood screw; of a lag screw the low value of its proportional limit.
   */
  private Measure<Force> across() {
    Wood wood = load.wood();
    if (screw.kind() == WoodFastener.Kind.WOOD_SCREW) {
      return AllowableLateral.of(screw, LateralClass.of(wood).group()).force(penetration());
    }
    Measure<Length> beyondTip = penetration().subtract(screw.tip());
    return LateralHold.of(screw, wood).force(beyondTip).low().multiply(acrossGrain());
  }

  private double acrossGrain() {
    double d = screw.diameter().in(ShopUnits.INCH);
    for (int i = 1; i < LAG_ACROSS.length; i++) {
      if (d <= LAG_ACROSS[i][0]) {
        double[] from = LAG_ACROSS[i - 1];
        double[] to = LAG_ACROSS[i];
        return Math.min(1, from[1] + (d - from[0]) / (to[0] - from[0]) * (to[1] - from[1]));
      }
    }
    return 0.5;
  }

  private double combined(Notes n, double m) {
    double p = pull(n);
    double s = push(n);
    double a = withdrawal(n, m, p);
    double b = lateral(n, m, s);
    double r = n.value("R", "both together", "√(P² + S²)", Math.sqrt(p * p + s * s), force());
    return r == 0
        ? n.number("c", "use in both, without a load", "R / W", 0)
        : n.number("c", "use in both", "(P a + S b) / R", (p * a + s * b) / r);
  }

  private double head(Notes n, double m) {
    double p = pull(n);
    double h = n.given("A", "diameter of the head", headDiameter().in(lengthUnit()));
    double t = n.given("t", "iron under it", load.iron().in(lengthUnit()));
    double tau = permissible(n, "iron") / Math.sqrt(3);
    n.value("τ", "permissible shear of the iron", "σ / √3", tau, pressure());
    return n.number(
        "h", "use of the iron round the head", "P / (m π A t τ)", p / (m * Math.PI * h * t * tau));
  }

  private double shank(Notes n, double m) {
    double p = pull(n);
    double s = push(n);
    double d = n.given("d", "root of the thread", screw.rootDiameter().in(lengthUnit()));
    double e = n.given("e", "screw where it leaves the iron", inIron().in(lengthUnit()));
    double root = n.area("Q", "section of the root", "π d² / 4", Math.PI * (d * d) / 4);
    double there = n.area("B", "section at the iron", "π e² / 4", Math.PI * (e * e) / 4);
    double tension = n.value("f", "tension", "P / (m Q)", p / (m * root), pressure());
    double shear = n.value("v", "shear", "S / (m B)", s / (m * there), pressure());
    double sigma = permissible(n, "screw");
    return n.number(
        "q",
        "use of the screw",
        "√(f² + 3 v²) / σ",
        Math.sqrt(tension * tension + 3 * (shear * shear)) / sigma);
  }

  /** The plain shank, or the root of the thread if that begins within the iron. */
  private Measure<Length> inIron() {
    Measure<Length> plain = length.subtract(screw.threadLength(length));
    return plain.isLessThan(load.fixed()) ? screw.rootDiameter() : screw.diameter();
  }

  private double permissible(Notes n, String part) {
    Measure<Pressure> low = Material.MILD_STEEL.yieldStrength().low();
    String meaning = "yield strength of the " + part + ", mild steel, low";
    double y = n.value("Y", meaning, "", low.in(pressure()), pressure());
    double f = n.number("s", "safety factor", "", load.safety());
    return n.value("σ", "permissible stress", "Y / s", y / f, pressure());
  }

  private Measure<Length> headDiameter() {
    if (screw instanceof CountersunkHead head) {
      return head.headDiameter();
    }
    return screw instanceof LagScrew lag ? lag.acrossFlats() : screw.diameter().multiply(1.5);
  }

  Unit<Length> lengthUnit() {
    return HoldingLaw.lengthUnit(screw);
  }

  private Unit<Force> force() {
    return HoldingLaw.forceUnit(screw);
  }

  private Unit<Pressure> pressure() {
    return force().equals(ShopUnits.POUND_FORCE) ? ShopUnits.PSI : ShopUnits.MEGAPASCAL;
  }
}
