package org.hammerscale.hinge;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * The round pin that a hinge turns on, and how long to cut it: the width of all knuckles with their
 * gaps, the washers, and what the heads take: L = w + k s + (a₁ + a₂) d. Other names: {@index
 * axle}, {@index "hinge pin"}, {@index "knuckle pin"}. A pin that stands on the post is a {@link
 * org.hammerscale.strength.HookPin}; what a pin bears is a {@link
 * org.hammerscale.strength.PinLoad}, which one to take a {@link org.hammerscale.strength.PinSize}.
 *
 * <pre>{@code
 * Pin loose = Pin.of(millimetres(10)).withWashers(2, millimetres(2));
 * loose.length(millimetres(60))       // 64 mm  through 60 mm of knuckles and both washers
 * Pin riveted = Pin.of(inches("3/8")).headed(Pin.Head.NONE, Pin.Head.LOW_PEEN);
 * riveted.length(inches(2))           // 2 9/32 in (2 3/16 in to 2 3/8 in)  cut the high end, trim the peen
 * Pin headed = Pin.of(inches("3/8")).headed(Pin.Head.FORGED, Pin.Head.KEYED);
 * headed.length(inches(2)).high()     // 3 1/8 in  with a head forged on it and room for a cotter
 * }</pre>
 *
 * <p>The length is exact but for what the hand decides: a low peen, a forged head, an end for a
 * cotter. Sources: rivet makers' rule of 1.5 d for a round head; common practice for a low peen.
 */
public final class Pin {
  /** What an end of a pin takes for its head, in diameters. */
  public enum Head {
    /** Cut flush, or a head that the pin is made with: nothing. */
    NONE("no head to close", 0, 0, 0),
    /** A round (snap) head, closed by riveting over: 1.5 d. */
    ROUND("round head", 1.5, 1.5, 1.5),
    /** A round head forged on the pin's own bar beforehand: 1.1 to 1.5 d. */
    FORGED("head forged beforehand", 1.1247, 1.3, 1.5),
    /** Left standing for a hole with a cotter or key, half a diameter beyond it: 1 to 1.5 d. */
    KEYED("end for a cotter", 1, 1.25, 1.5),
    /** A low peen, hammered over into a chamfer or on to a washer: 0.5 to 1 d. */
    LOW_PEEN("low peen", 0.5, 0.75, 1);

    private final String words;
    private final double low;
    private final double likely;
    private final double high;

    Head(String words, double low, double likely, double high) {
      this.words = words;
      this.low = low;
      this.likely = likely;
      this.high = high;
    }

    private boolean isByHand() {
      return low < high;
    }

    /** The head in words. */
    @Override
    public String toString() {
      return words;
    }
  }

  /** Which of the three values of an estimate is worked out. */
  private enum Outcome {
    LOW,
    LIKELY,
    HIGH;

    double of(Head head) {
      return switch (this) {
        case LOW -> head.low;
        case LIKELY -> head.likely;
        case HIGH -> head.high;
      };
    }
  }

  private static final Source ROUND_HEADS =
      Source.read("rivet makers' length rules for round heads", "1.5 diameters");
  private static final Source FORGED_HEADS =
      Source.computed("a snap head of 1.6 d by 0.7 d holds 1.12 d; rivet makers allow 1.5 d");
  private static final Source KEYS =
      Source.commonPractice("a cotter's hole of a quarter of the pin, half a diameter behind it");
  private static final Source LOW_PEENS =
      Source.commonPractice("a low peen takes half a diameter to one, as the hand likes its head");
  private static final Source PLAIN = Source.computed("sum of what stands on the pin");
  private static final Caution NO_QUENCH =
      Caution.danger(
          "do not quench a pin or hook that bears a load: steel with carbon in it turns brittle and"
              + " snaps without warning; let it cool in air");

  private final Measure<Length> diameter;
  private final int washers;
  private final Measure<Length> washer;
  private final Head one;
  private final Head other;

  private Pin(Measure<Length> diameter, int washers, Measure<Length> washer, Head one, Head other) {
    this.diameter = diameter;
    this.washers = washers;
    this.washer = washer;
    this.one = one;
    this.other = other;
  }

  /**
   * A plain pin, without washers and heads.
   *
   * @param diameter more than zero
   * @return the pin
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static Pin of(Quantity<Length> diameter) {
    Measure<Length> round = Arguments.positive("diameter", diameter);
    return new Pin(round, 0, round.withValue(0), Head.NONE, Head.NONE);
  }

  /**
   * The same pin with washers on it.
   *
   * @param count how many, 0 to 100
   * @param thickness of each, more than zero
   * @return the pin
   * @throws IllegalArgumentException if an argument lies outside its range
   */
  public Pin withWashers(int count, Quantity<Length> thickness) {
    if (count < 0 || count > 100) {
      throw new IllegalArgumentException(
          "count must lie between 0 and 100, was " + count + "; give the washers on one pin");
    }
    return new Pin(diameter, count, Arguments.positive("thickness", thickness), one, other);
  }

  /**
   * The same pin with a head closed on either end.
   *
   * @param oneEnd what becomes of one end
   * @param otherEnd what becomes of the other end
   * @return the pin
   */
  public Pin headed(Head oneEnd, Head otherEnd) {
    return new Pin(
        diameter,
        washers,
        washer,
        Objects.requireNonNull(oneEnd, "oneEnd"),
        Objects.requireNonNull(otherEnd, "otherEnd"));
  }

  /** {@return its diameter d} */
  public Measure<Length> diameter() {
    return diameter;
  }

  /** {@return the round bar that it is cut from} */
  public Section section() {
    return Section.round(diameter);
  }

  /**
   * How long to cut it: L = w + k s + (a₁ + a₂) d for k washers of thickness s and heads that take
   * a₁ and a₂ diameters.
   *
   * @param width the knuckles and the gaps between them, w; more than zero
   * @return the length in the width's unit; exact unless the hand decides an end
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public Estimate<Length> length(Quantity<Length> width) {
    Measure<Length> over = Arguments.positive("width", width);
    Measure<Length> likely = over.withValue(length(Notes.NONE, over, Outcome.LIKELY));
    return one.isByHand() || other.isByHand()
        ? Estimate.of(
            over.withValue(length(Notes.NONE, over, Outcome.LOW)),
            likely,
            over.withValue(length(Notes.NONE, over, Outcome.HIGH)))
        : Estimate.exact(likely);
  }

  /** {@return that a load-bearing pin must not be quenched} */
  public List<Caution> cautions() {
    return List.of(NO_QUENCH);
  }

  /**
   * How the likely length was found.
   *
   * @param width the knuckles and the gaps between them, more than zero
   * @return the working of {@link #length}, with the source of its spread
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public Working lengthWorking(Quantity<Length> width) {
    Measure<Length> over = Arguments.positive("width", width);
    Working working =
        Notes.taken("length of a pin", over.getUnit(), n -> length(n, over, Outcome.LIKELY));
    working = withSourceOf(Head.ROUND, ROUND_HEADS, working);
    working = withSourceOf(Head.LOW_PEEN, LOW_PEENS, working);
    working = withSourceOf(Head.FORGED, FORGED_HEADS, working);
    working = withSourceOf(Head.KEYED, KEYS, working);
    return working.withSource(PLAIN).withCautions(cautions());
  }

  private Working withSourceOf(Head head, Source source, Working working) {
    return one == head || other == head ? working.withSource(source) : working;
  }

  private double length(Notes n, Measure<Length> width, Outcome outcome) {
    double w = n.given("w", "knuckles with their gaps", width.getValue());
    double k = n.number("k", "washers", "", washers);
    double s = n.given("s", "thickness of a washer", washer.in(width.getUnit()));
    double d = n.given("d", "diameter of the pin", diameter.in(width.getUnit()));
    double a1 = n.number("a₁", one + ", in diameters", "", outcome.of(one));
    double a2 = n.number("a₂", other + ", in diameters", "", outcome.of(other));
    return n.length("L", "length to cut", "w + k s + (a₁ + a₂) d", w + k * s + (a1 + a2) * d);
  }

  /** Same sizes and heads, lengths by {@link Measure#equals}. */
  @Override
  public boolean equals(@Nullable Object object) {
    return object instanceof Pin pin
        && diameter.equals(pin.diameter)
        && washers == pin.washers
        && washer.equals(pin.washer)
        && one == pin.one
        && other == pin.other;
  }

  @Override
  public int hashCode() {
    return Objects.hash(diameter, washers, washer, one, other);
  }

  /** Diameter, washers and heads. */
  @Override
  public String toString() {
    String on =
        switch (washers) {
          case 0 -> "";
          case 1 -> ", a washer of " + washer;
          default -> ", " + washers + " washers of " + washer;
        };
    String heads = one == Head.NONE && other == Head.NONE ? "" : ", " + one + ", " + other;
    return diameter + " pin" + on + heads;
  }
}
