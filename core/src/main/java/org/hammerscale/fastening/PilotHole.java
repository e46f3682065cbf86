package org.hammerscale.fastening;

import java.util.Objects;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The hole to drill into the wood for a screw, a lag screw or a nail, with its wider part for the
 * plain shank. Other names: {@index "lead hole"}, {@index "pilot hole"}; {@index prebored} and
 * {@index pre-drilled} say that there is one. The denser the wood, the wider. The rules differ for
 * a screw that is pulled out and one that is loaded across its length.
 *
 * <pre>{@code
 * WoodScrew screw = WoodScrew.number(10);
 * Wood oak = Wood.named("white oak");
 * PilotHole.pulledOut(screw, oak).threadHole()  // 0.1368 in  for the thread of a screw that is pulled out
 * PilotHole across = PilotHole.acrossLoad(screw, oak);
 * across.shankHole()                            // 0.19 in  for the plain shank, where iron hangs on it
 * across.threadHole()                           // 0.152 in  for the thread of such a one
 * PilotHole lag = PilotHole.acrossLoad(LagScrew.of(inches("1/2")), oak);
 * lag.mostThreadHole()                          // 0.425 in  for a lag screw, no wider
 * }</pre>
 *
 * <p>Of the screws of a leaf, which do both, take the shank hole of the load across, and for the
 * thread the smaller of the two holes that is not zero.
 *
 * <p>A rule's nominal size, in the diameter's unit; drill the nearest bit, and try it in an offcut.
 * Sources: NDS 2015, sections 12.1.4 to 12.1.6; boundaries of density as the NDS puts them.
 */
public final class PilotHole {
  private static final Source SCREWS =
      Source.read("Wood screws, lead holes (civilengineeringx.com, after the NDS)", "");
  private static final Source NAILS =
      Source.read("Nails and spikes, bored holes (civilengineeringx.com, after the NDS)", "");
  private static final Source LAGS = Source.fromMemory("ANSI/AWC NDS 2015", "12.1.4");
  private static final Source BOUNDARIES =
      Source.fromMemory("ANSI/AWC NDS 2015", "12.1.4 to 12.1.6, boundaries of G, oven-dry");

  /**
   * The three classes of wood, by oven-dry gravity; a boundary belongs to the lighter class. Some
   * pages that quote the NDS give it to the denser one.
   */
  public enum Density {
    /** Dense: G of more than 0.6. */
    DENSE("G more than 0.6"),
    /** Between: G of more than 0.5, up to and with 0.6. */
    MIDDLE("G more than 0.5, at most 0.6"),
    /** Light: G up to and with 0.5. */
    LIGHT("G at most 0.5");

    private final String words;

    Density(String words) {
      this.words = words;
    }

    /**
     * The class of a wood.
     *
     * @param gravity its oven-dry gravity
     * @return the class
     */
    public static Density of(OvenDryGravity gravity) {
      Objects.requireNonNull(gravity, "gravity");
      double g = gravity.value();
      return g > 0.6 ? DENSE : g > 0.5 ? MIDDLE : LIGHT;
    }

    /** The bounds. */
    @Override
    public String toString() {
      return words;
    }

    private double pick(double dense, double middle, double light) {
      return this == DENSE ? dense : this == MIDDLE ? middle : light;
    }
  }

  private final WoodFastener fastener;
  private final Density density;
  private final boolean pulledOut;

  private PilotHole(WoodFastener fastener, Wood wood, boolean pulledOut) {
    this.fastener = Objects.requireNonNull(fastener, "fastener");
    this.density = Density.of(wood.ovenDry());
    this.pulledOut = pulledOut;
  }

  /**
   * For a fastener that is pulled out along its length: withdrawal.
   *
   * @param fastener the screw or nail
   * @param wood what it goes into
   * @return its hole
   */
  public static PilotHole pulledOut(WoodFastener fastener, Wood wood) {
    Objects.requireNonNull(wood, "wood");
    return new PilotHole(fastener, wood, true);
  }

  /**
   * For a fastener that is loaded across its length: lateral load.
   *
   * @param fastener the screw or nail
   * @param wood what it goes into
   * @return its hole
   */
  public static PilotHole acrossLoad(WoodFastener fastener, Wood wood) {
    Objects.requireNonNull(wood, "wood");
    return new PilotHole(fastener, wood, false);
  }

  /** {@return the class of the wood that ruled} */
  public Density density() {
    return density;
  }

  /**
   * The hole for the thread, or for the whole nail. Wood screw pulled out: 0.90, 0.70 or 0 of the
   * root diameter from dense to light wood; loaded across: 1, 7/8, 7/8 of the root. Lag screw: the
   * middle of what the rule allows. Nail: the most it allows.
   *
   * @return the diameter of the bit; zero where none is needed
   */
  public Measure<Length> threadHole() {
    return answer(this::thread);
  }

  /**
   * The least that the rule allows: of a lag screw 0.65, 0.60 or 0.40 of its diameter from dense to
   * light wood; of a nail zero; of a wood screw the {@linkplain #threadHole one size}.
   *
   * @return the least diameter
   */
  public Measure<Length> leastThreadHole() {
    return answer(this::leastThread);
  }

  /**
   * The most that the rule allows: of a lag screw 0.85, 0.75 or 0.70 of its diameter from dense to
   * light wood; of a nail 0.90 in dense, 0.75 in other wood; of a wood screw the {@linkplain
   * #threadHole one size}.
   *
   * @return the most diameter
   */
  public Measure<Length> mostThreadHole() {
    return answer(this::mostThread);
  }

  /**
   * The drill to take for the thread, or for the whole nail: the largest that the rule allows; of a
   * wood screw, for which it names one size, the nearest. The smaller a nail's hole, the harder it
   * drives and the more it splits the wood.
   *
   * @param drills a drill on each mark, such as sixty-fourths of an inch or half millimetres
   * @return the drill; zero where none is needed
   * @throws IllegalArgumentException if no drill lies within the rule
   */
  public Measure<Length> drill(Graduation<Length> drills) {
    Objects.requireNonNull(drills, "drills");
    Measure<Length> most = mostThreadHole();
    if (fastener.kind() == WoodFastener.Kind.WOOD_SCREW) {
      return drills.nearest(most);
    }
    Measure<Length> size = drills.downTo(most);
    if (!(size.getValue() > 0) || size.isLessThan(leastThreadHole())) {
      throw new IllegalArgumentException(
          "drills must have one of at most "
              + most
              + (leastThreadHole().getValue() > 0 ? " and at least " + leastThreadHole() : "")
              + ", was every "
              + drills.step()
              + "; take finer ones");
    }
    return size;
  }

  /**
   * The hole for the plain shank, as deep as that is long. Wood screw loaded across: 1, 7/8, 7/8 of
   * the diameter from dense to light wood; lag screw: its diameter.
   *
   * @return the diameter of the bit; zero where the rule names none: nails, and wood screws pulled
   *     out
   */
  public Measure<Length> shankHole() {
    return answer(this::shank);
  }

  /** {@return how the thread's hole was found} */
  public Working threadHoleWorking() {
    return working("pilot hole for the thread", this::thread);
  }

  /** {@return how the least hole was found} */
  public Working leastThreadHoleWorking() {
    return working("least pilot hole", this::leastThread);
  }

  /** {@return how the most was found} */
  public Working mostThreadHoleWorking() {
    return working("widest pilot hole", this::mostThread);
  }

  /** {@return how the shank's hole was found} */
  public Working shankHoleWorking() {
    return working("hole in the wood for the shank", this::shank);
  }

  private Working working(String question, Notes.Calculation calculation) {
    Source source =
        switch (fastener.kind()) {
          case WOOD_SCREW -> SCREWS;
          case LAG_SCREW -> LAGS;
          case NAIL -> NAILS;
        };
    return Notes.taken(question + ", wood of " + density, unit(), calculation)
        .withSource(source)
        .withSource(BOUNDARIES);
  }

  private Measure<Length> answer(Notes.Calculation calculation) {
    return fastener.diameter().withValue(calculation.calculate(Notes.NONE));
  }

  private double thread(Notes n) {
    return switch (fastener.kind()) {
      case WOOD_SCREW -> screwThread(n);
      case LAG_SCREW -> ofDiameter(n, density.pick(0.75, 0.675, 0.55));
      case NAIL -> mostThread(n);
    };
  }

  private double leastThread(Notes n) {
    return switch (fastener.kind()) {
      case WOOD_SCREW -> screwThread(n);
      case LAG_SCREW -> ofDiameter(n, density.pick(0.65, 0.60, 0.40));
      case NAIL -> ofDiameter(n, 0);
    };
  }

  private double mostThread(Notes n) {
    return switch (fastener.kind()) {
      case WOOD_SCREW -> screwThread(n);
      case LAG_SCREW -> ofDiameter(n, density.pick(0.85, 0.75, 0.70));
      case NAIL -> ofDiameter(n, density.pick(0.90, 0.75, 0.75));
    };
  }

  private double shank(Notes n) {
    return switch (fastener.kind()) {
      case WOOD_SCREW -> ofDiameter(n, pulledOut ? 0 : density.pick(1, 7 / 8d, 7 / 8d));
      case LAG_SCREW -> ofDiameter(n, 1);
      case NAIL -> ofDiameter(n, 0);
    };
  }

  private double screwThread(Notes n) {
    double r =
        n.given("R", "diameter at the root of the thread", fastener.rootDiameter().in(unit()));
    double share = pulledOut ? density.pick(0.90, 0.70, 0) : density.pick(1, 7 / 8d, 7 / 8d);
    double q = n.number("q", "share of it, by density of the wood", "", share);
    return n.length("h", "diameter of the hole", "q R", q * r);
  }

  private double ofDiameter(Notes n, double share) {
    double d = n.given("D", "diameter", fastener.diameter().in(unit()));
    double q = n.number("q", "share of it, by density of the wood", "", share);
    return n.length("h", "diameter of the hole", "q D", q * d);
  }

  private Unit<Length> unit() {
    return fastener.diameter().getUnit();
  }

  /** What to drill. */
  @Override
  public String toString() {
    String thread =
        threadHole().getValue() > 0
            ? "drill " + threadHole() + " for the "
            : "no pilot hole for the ";
    String part = fastener.kind() == WoodFastener.Kind.NAIL ? "nail" : "thread";
    return thread
        + part
        + (shankHole().getValue() > 0 ? ", " + shankHole() + " for the shank" : "");
  }
}
