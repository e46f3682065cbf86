package org.hammerscale.hinge;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.heat.Contraction;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;

/**
 * The swage that trues the outside of a hot barrel: how wide its half-round groove must be, so that
 * the barrel is right after cooling: D = B (1 + e₁) / (1 + e₂), for a cold outside diameter B, with
 * the elongations e₁ of the work and e₂ of the swage at their own heats. Other names: {@index
 * "bottom swage"}, {@index "top and bottom swages"}, {@index "swage block"}.
 *
 * <pre>{@code
 * Contraction red = Contraction.from(celsius(900), Material.MILD_STEEL);
 * Swage swage = Swage.truing(inches(1), red);
 * swage.groove()                                // 1.0118 in
 * swage.chosenFrom(ToolRack.every(SIXTY_FOURTH))   // 1 1/64 in, leaves 1.0038 in
 * swage.outsideLeftByEye(inches("1 1/64"))      // 1.0038 in (1.0018 in to 1.0046 in)
 * }</pre>
 *
 * <p>Exact for the heats given; a heat judged by eye may be 100 °C off either way. The swage is
 * taken for cold unless its heat is told: it seldom grows more than warm. Source: that of the
 * {@link Contraction}.
 */
public final class Swage {
  private final Measure<Length> outside;
  private final HotFit fit;

  private Swage(Measure<Length> outside, HotFit fit) {
    this.outside = outside;
    this.fit = fit;
  }

  /**
   * A cold swage for an outside diameter.
   *
   * @param outside the outside diameter wanted when all is cold, more than zero
   * @param work the heat at which the work leaves the swage, and its metal
   * @return the swage
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static Swage truing(Quantity<Length> outside, Contraction work) {
    return new Swage(Arguments.positive("outside", outside), new HotFit(work, null));
  }

  /**
   * The same where the swage has grown warm.
   *
   * @param tool the heat and the metal of the swage itself
   * @return the swage
   */
  public Swage withTool(Contraction tool) {
    Objects.requireNonNull(tool, "tool");
    return new Swage(outside, fit.with(tool));
  }

  /** {@return the outside diameter wanted when all is cold, B} */
  public Measure<Length> outside() {
    return outside;
  }

  /**
   * What the outside measures while hot: B (1 + e₁). Set the callipers to it.
   *
   * @return the hot diameter, exact for the heat given, in the outside's unit
   */
  public Measure<Length> hotOutside() {
    return fit.work().hot(outside);
  }

  /**
   * The width of the groove, measured cold: B (1 + e₁) / (1 + e₂).
   *
   * @return the width, exact for the heats given, in the outside's unit
   */
  public Measure<Length> groove() {
    return outside.withValue(groove(Notes.NONE));
  }

  /**
   * The swage to take from the rack: the one whose groove is nearest.
   *
   * @param rack the sizes at hand
   * @return the size, and what it leaves over the barrel
   */
  public ToolChoice chosenFrom(ToolRack rack) {
    Measure<Length> size = Objects.requireNonNull(rack, "rack").nearest(groove());
    return new ToolChoice(size, outsideLeftBy(size).to(outside.getUnit()), outside);
  }

  /**
   * The outside diameter that some swage leaves when all is cold: D (1 + e₂) / (1 + e₁).
   *
   * @param groove the width of its groove, measured cold; more than zero
   * @return the diameter, exact for the heats given, in the groove's unit
   * @throws IllegalArgumentException if the groove is not more than zero
   */
  public Measure<Length> outsideLeftBy(Quantity<Length> groove) {
    Measure<Length> wide = Arguments.positive("groove", groove);
    return wide.withValue(outsideLeft(Notes.NONE, wide));
  }

  /**
   * The same where the heat of the work is judged by eye, which may be 100 °C off either way.
   *
   * @param groove the width of its groove, measured cold; more than zero
   * @return the diameter, an estimate, in the groove's unit
   * @throws IllegalArgumentException if the groove is not more than zero
   */
  public Estimate<Length> outsideLeftByEye(Quantity<Length> groove) {
    return fit.workByEye(Arguments.positive("groove", groove));
  }

  /** {@return those of the contractions} */
  public List<Caution> cautions() {
    return List.copyOf(fit.cautions());
  }

  /** {@return how the groove was found} */
  public Working working() {
    Working working = Notes.taken("swage for an outside", outside.getUnit(), this::groove);
    return fit.sourced(working, outside).withCautions(cautions());
  }

  /**
   * How the outside was found that some swage leaves.
   *
   * @param groove the width of its groove, measured cold; more than zero
   * @return the working of {@link #outsideLeftBy}
   */
  public Working outsideWorking(Quantity<Length> groove) {
    Measure<Length> wide = Arguments.positive("groove", groove);
    Working working =
        Notes.taken("outside that a swage leaves", wide.getUnit(), n -> outsideLeft(n, wide));
    return fit.sourced(working, wide).withCautions(cautions());
  }

  private double groove(Notes n) {
    return fit.toolSize(n, "outside", "groove of the swage", outside);
  }

  private double outsideLeft(Notes n, Measure<Length> groove) {
    return fit.workSize(n, "outside", "groove of the swage", groove);
  }

  /** Groove, outside and heats. */
  @Override
  public String toString() {
    return groove()
        + " swage at "
        + fit.toolHeat()
        + ", leaving an outside of "
        + outside
        + " on work at "
        + fit.work().heat();
  }
}
