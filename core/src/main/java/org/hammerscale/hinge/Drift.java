package org.hammerscale.hinge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.heat.Contraction;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The drift that sizes a hot bore, so large that the bore is right after cooling: D = B (1 + e₁) /
 * (1 + e₂), for a cold bore B, with the elongations e₁ of the work and e₂ of the tool at their own
 * heats. Other names: {@index "drift pin"}; {@index mandrel}, where the barrel is rolled on it. It
 * serves any bore, that of a barrel, an eye or a drifted hole, and for a square drift the size
 * across its flats.
 *
 * <pre>{@code
 * Bore bore = Bore.forPin(inches("1/2")).clearing(inches("1/64"));
 * Drift drift = Drift.leaving(bore.diameter(), Contraction.from(celsius(900), Material.MILD_STEEL));
 * drift.diameter()                             // 0.5217 in  to forge one
 * ToolChoice taken = drift.chosenFrom(ToolRack.every(SIXTY_FOURTH), bore);
 * taken.size()                                 // 33/64 in  the rack has it
 * drift.boreLeftByEye(taken.size())            // 0.5096 in (0.5086 in to 0.51 in)
 * drift.bodyLength(inches("1 1/2"))            // 1.7609 in (1 1/2 in to 2.0217 in)
 * }</pre>
 *
 * <p>The diameter and the bore are exact for the heats given. A heat judged by eye may be 100 °C
 * off either way. The tool is taken for cold unless its heat is told; a tool that has grown warm
 * leaves a larger bore. The lengths of its parts are the smith's own choice.
 *
 * <p>Source: that of the {@link Contraction}; common practice for the shape.
 */
public final class Drift {
  private static final double STEEPEST_ENTRY = 6;
  private static final double ENTRY = 8;
  private static final double SLIMMEST_ENTRY = 12;
  private static final double STEEPEST_BACK = 3;
  private static final double BACK = 4;
  private static final double SLIMMEST_BACK = 6;
  private static final Source SHAPE =
      Source.commonPractice(
          "a drift tapers over a long stretch to enter and over a short one at the struck end;"
              + " the spread is that of smiths' own tools");
  private static final Caution STRUCK_END =
      Caution.danger(
          "knock the drift out while the work is hot, since the bore shrinks on to it; dress the"
              + " struck end before its burr can fly off, and keep it soft");

  private final Measure<Length> bore;
  private final HotFit fit;

  private Drift(Measure<Length> bore, HotFit fit) {
    this.bore = bore;
    this.fit = fit;
  }

  /**
   * A cold drift for a bore.
   *
   * @param bore the bore wanted when all is cold, more than zero
   * @param work the heat at which the drift leaves the work, and its metal
   * @return the drift
   * @throws IllegalArgumentException if the bore is not more than zero
   */
  public static Drift leaving(Quantity<Length> bore, Contraction work) {
    return new Drift(Arguments.positive("bore", bore), new HotFit(work, null));
  }

  /**
   * The same where the drift has grown warm.
   *
   * @param tool the heat and the metal of the drift itself
   * @return the drift
   */
  public Drift withTool(Contraction tool) {
    Objects.requireNonNull(tool, "tool");
    return new Drift(bore, fit.with(tool));
  }

  /** {@return the bore wanted when all is cold, B} */
  public Measure<Length> bore() {
    return bore;
  }

  /**
   * What the bore measures while hot: B (1 + e₁).
   *
   * @return the hot bore, exact for the heat given, in the bore's unit
   */
  public Measure<Length> hotBore() {
    return fit.work().hot(bore);
  }

  /**
   * The diameter of the drift's body, measured cold: B (1 + e₁) / (1 + e₂).
   *
   * @return the diameter, exact for the heats given, in the bore's unit
   */
  public Measure<Length> diameter() {
    return bore.withValue(diameter(Notes.NONE));
  }

  /**
   * The drift to take from the rack: of those whose bore leaves the pin a clearance that will do,
   * the one that comes nearest to the clearance asked for.
   *
   * @param rack the sizes at hand
   * @param bore the pin, its clearance and its coats, with the {@linkplain Bore#fromClearance
   *     least} and the {@linkplain Bore#upToClearance most} that will do
   * @return the size, and what it leaves
   * @throws IllegalArgumentException if no size will do, the message telling what the nearest
   *     leave; or the bore is not the one that the drift is for
   */
  public ToolChoice chosenFrom(ToolRack rack, Bore bore) {
    Objects.requireNonNull(rack, "rack");
    Objects.requireNonNull(bore, "bore");
    if (!bore.diameter().isEquivalentTo(this.bore)) {
      throw new IllegalArgumentException(
          "bore must be the one of "
              + this.bore
              + " that the drift leaves, was "
              + bore.diameter()
              + "; make the drift for bore.diameter()");
    }
    Optional<ToolChoice> less = rack.atMost(diameter()).map(this::choice);
    Optional<ToolChoice> more = rack.atLeast(diameter()).map(this::choice);
    return Stream.concat(less.stream(), more.stream())
        .filter(choice -> willDo(bore.clearanceLeftBy(choice.leaves()), bore))
        .min(Comparator.comparingDouble(choice -> Math.abs(choice.over().getValue())))
        .orElseThrow(() -> noneOf(rack, bore, less, more));
  }

  private ToolChoice choice(Measure<Length> size) {
    return new ToolChoice(size, boreLeftBy(size).to(bore.getUnit()), bore);
  }

  private static boolean willDo(Measure<Length> clearance, Bore bore) {
    return isUpTo(bore.leastClearance(), clearance) && isUpTo(clearance, bore.mostClearance());
  }

  private static boolean isUpTo(Measure<Length> less, Measure<Length> more) {
    return !less.isGreaterThan(more) || less.isEquivalentTo(more);
  }

  private IllegalArgumentException noneOf(
      ToolRack rack, Bore bore, Optional<ToolChoice> less, Optional<ToolChoice> more) {
    String leaves =
        Stream.concat(less.stream(), more.stream())
            .map(c -> c.size() + " leaves " + bore.clearanceLeftBy(c.leaves()))
            .distinct()
            .collect(Collectors.joining(" and "));
    return new IllegalArgumentException(
        "rack must have a drift that leaves the pin "
            + bore.leastClearance()
            + " to "
            + bore.mostClearance()
            + " of clearance, was "
            + rack
            + ", of which "
            + leaves
            + "; make one of "
            + diameter()
            + ", or allow more or less clearance");
  }

  /**
   * The bore that some drift leaves when all is cold: D (1 + e₂) / (1 + e₁).
   *
   * @param drift the diameter of its body, measured cold; more than zero
   * @return the bore, exact for the heats given, in the drift's unit
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public Measure<Length> boreLeftBy(Quantity<Length> drift) {
    Measure<Length> body = Arguments.positive("drift", drift);
    return body.withValue(boreLeft(Notes.NONE, body));
  }

  /**
   * The same where the heat of the work is judged by eye, which may be 100 °C off either way.
   *
   * @param drift the diameter of its body, measured cold; more than zero
   * @return the bore, an estimate, in the drift's unit
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public Estimate<Length> boreLeftByEye(Quantity<Length> drift) {
    return fit.workByEye(Arguments.positive("drift", drift));
  }

  /**
   * How long to leave the parallel body: the width of the work and half a diameter, from just the
   * width to a whole diameter more. So the whole bore is sized at once.
   *
   * @param width how far the bore goes through, more than zero
   * @return the length, an estimate by common practice, in the width's unit
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public Estimate<Length> bodyLength(Quantity<Length> width) {
    Measure<Length> through = Arguments.positive("width", width);
    return Estimate.of(
        through,
        through.withValue(body(Notes.NONE, through, 0.5)),
        through.withValue(body(Notes.NONE, through, 1)));
  }

  /**
   * The long taper that enters first: 1 in 8 on the diameter, from 1 in 6 to 1 in 12.
   *
   * @param tip the diameter at its tip, which must enter the hole as it is; not negative and less
   *     than the body's
   * @return the length, an estimate by common practice, in the bore's unit
   * @throws IllegalArgumentException if the tip lies outside that range
   */
  public Estimate<Length> enteringTaper(Quantity<Length> tip) {
    Measure<Length> end = below("tip", tip);
    return tapers(end, STEEPEST_ENTRY, ENTRY, SLIMMEST_ENTRY);
  }

  /**
   * The short taper at the struck end, so that its burr passes the bore: 1 in 4 on the diameter,
   * from 1 in 3 to 1 in 6.
   *
   * @param struckEnd the diameter where it is struck, not negative and less than the body's
   * @return the length, an estimate by common practice, in the bore's unit
   * @throws IllegalArgumentException if the end lies outside that range
   */
  public Estimate<Length> struckTaper(Quantity<Length> struckEnd) {
    Measure<Length> end = below("struck end", struckEnd);
    return tapers(end, STEEPEST_BACK, BACK, SLIMMEST_BACK);
  }

  /** {@return those of the contractions, and to knock it out hot} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(fit.cautions());
    cautions.add(STRUCK_END);
    return List.copyOf(cautions);
  }

  /** {@return how the diameter was found} */
  public Working working() {
    Working working = Notes.taken("drift for a bore", bore.getUnit(), this::diameter);
    return fit.sourced(working, bore).withCautions(cautions());
  }

  /**
   * How the bore was found that some drift leaves.
   *
   * @param drift the diameter of its body, measured cold; more than zero
   * @return the working of {@link #boreLeftBy}
   */
  public Working boreWorking(Quantity<Length> drift) {
    Measure<Length> body = Arguments.positive("drift", drift);
    Working working =
        Notes.taken("bore that a drift leaves", body.getUnit(), n -> boreLeft(n, body));
    return fit.sourced(working, body).withCautions(cautions());
  }

  /**
   * How the likely length of the body was found.
   *
   * @param width how far the bore goes through, more than zero
   * @return the working of {@link #bodyLength}
   */
  public Working bodyWorking(Quantity<Length> width) {
    Measure<Length> through = Arguments.positive("width", width);
    return Notes.taken("body of a drift", through.getUnit(), n -> body(n, through, 0.5))
        .withSource(SHAPE);
  }

  /**
   * How the likely length of the long taper was found.
   *
   * @param tip the diameter at its tip, not negative and less than the body's
   * @return the working of {@link #enteringTaper}
   */
  public Working enteringWorking(Quantity<Length> tip) {
    Measure<Length> end = below("tip", tip);
    return Notes.taken("entering taper of a drift", bore.getUnit(), n -> taper(n, end, ENTRY))
        .withSource(SHAPE);
  }

  /**
   * How the likely length of the short taper was found.
   *
   * @param struckEnd the diameter where it is struck, not negative and less than the body's
   * @return the working of {@link #struckTaper}
   */
  public Working struckWorking(Quantity<Length> struckEnd) {
    Measure<Length> end = below("struck end", struckEnd);
    return Notes.taken("struck taper of a drift", bore.getUnit(), n -> taper(n, end, BACK))
        .withSource(SHAPE);
  }

  private double diameter(Notes n) {
    return fit.toolSize(n, "bore", "drift", bore);
  }

  private double boreLeft(Notes n, Measure<Length> drift) {
    return fit.workSize(n, "bore", "drift", drift);
  }

  private double body(Notes n, Measure<Length> width, double diameters) {
    double w = n.given("w", "how far the bore goes through", width.getValue());
    double d = n.given("D", "diameter of the body", diameter().in(width.getUnit()));
    double k = n.number("k", "what stands out, in diameters", "", diameters);
    return n.length("L", "length of the body", "w + k D", w + k * d);
  }

  private double taper(Notes n, Measure<Length> end, double slenderness) {
    double d = n.given("D", "diameter of the body", diameter().getValue());
    double s = n.given("s", "diameter at the end", end.in(bore.getUnit()));
    double k = n.number("k", "length for each unit of diameter lost", "", slenderness);
    return n.length("L", "length of the taper", "k (D − s)", k * (d - s));
  }

  private Estimate<Length> tapers(Measure<Length> end, double low, double likely, double high) {
    return Estimate.of(
        bore.withValue(taper(Notes.NONE, end, low)),
        bore.withValue(taper(Notes.NONE, end, likely)),
        bore.withValue(taper(Notes.NONE, end, high)));
  }

  private Measure<Length> below(String name, Quantity<Length> end) {
    Measure<Length> size = Arguments.notNegative(name, end);
    if (size.isGreaterThanOrEqualTo(diameter())) {
      throw new IllegalArgumentException(
          name
              + " must be less than the body of "
              + diameter()
              + ", was "
              + size
              + "; give the diameter at the thin end of the taper");
    }
    return size;
  }

  /** Diameter, bore and heats. */
  @Override
  public String toString() {
    return diameter()
        + " drift at "
        + fit.toolHeat()
        + ", leaving a bore of "
        + bore
        + " in work at "
        + fit.work().heat();
  }
}
