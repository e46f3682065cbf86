package org.hammerscale.forging;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The length of a rivet's shank, under the head it is bought or made with, that closes a second
 * head, the {@index "rivet length"}: the grip G, what fills the hole, and what the head takes. L =
 * G + G ((D / d)² − 1) + h for a hole of diameter D, with h the {@linkplain Upset#stockLength shank
 * that the head takes}.
 *
 * <pre>{@code
 * Section shank = Section.round(inches("3/8"));
 * RivetBlank rivet = RivetBlank.through(inches("1/4"), Head.snap(shank));
 * rivet.length()                                  // 0.6718 in  under the head, in a hole that it fills
 * rivet.inHole(inches("13/32")).length()          // 0.7152 in  in a hole that it must swell to fill
 * RivetBlank.Rule.ONE_AND_A_HALF.length(inches("1/4"), shank)  // 13/16 in   by the bench rule, with some to spare
 * }</pre>
 *
 * <p>The length is exact as geometry, without scale or a flash round the head: the bench rules are
 * longer for that reason.
 *
 * <p>Source: conservation of volume.
 */
public final class RivetBlank {
  /** Lengths by rules of the bench, from the grip G and the diameter d. */
  public enum Rule {
    /** G + 1.5 d, for a round (snap) head. */
    ONE_AND_A_HALF("one and a half diameters", 1, 1.5),
    /** 1.1 G + 1.3 d, for a round head in a hole of 1.15 d. */
    FILLED_HOLE("a tenth of the grip and 1.3 diameters", 1.1, 1.3);

    private final String words;
    private final double grips;
    private final double diameters;

    Rule(String words, double grips, double diameters) {
      this.words = words;
      this.grips = grips;
      this.diameters = diameters;
    }

    /**
     * The shank by this rule, whatever the head is called.
     *
     * @param grip the thickness of all it holds together, more than zero
     * @param shank the round shank
     * @return the length under the first head, in the grip's unit
     * @throws IllegalArgumentException if the grip is not more than zero, or the shank not round
     */
    public Measure<Length> length(Quantity<Length> grip, Section shank) {
      Measure<Length> through = checked(grip, shank);
      return through.withValue(calculate(Notes.NONE, through, shank));
    }

    /**
     * How the rule comes to its length.
     *
     * @param grip the thickness of all it holds together, more than zero
     * @param shank the round shank
     * @return the working of {@link #length}
     * @throws IllegalArgumentException if the grip is not more than zero, or the shank not round
     */
    public Working working(Quantity<Length> grip, Section shank) {
      Measure<Length> through = checked(grip, shank);
      return Notes.taken(
              "rivet by the bench, " + words, through.getUnit(), n -> calculate(n, through, shank))
          .withSource(Source.read("rivet makers' length rules for round heads", ""));
    }

    private static Measure<Length> checked(Quantity<Length> grip, Section shank) {
      Head.checkRound("shank", Objects.requireNonNull(shank, "shank"));
      return Arguments.positive("grip", grip);
    }

    private double calculate(Notes n, Measure<Length> grip, Section shank) {
      double g = n.given("G", "grip", grip.getValue());
      double d = n.given("d", "diameter of the shank", shank.width().in(grip.getUnit()));
      String formula = this == ONE_AND_A_HALF ? "G + 1.5 d" : "1.1 G + 1.3 d";
      return n.length("L", "length under the head", formula, grips * g + diameters * d);
    }

    /** The rule in words. */
    @Override
    public String toString() {
      return words;
    }
  }

  private final Measure<Length> grip;
  private final Upset head;
  private final Measure<Length> hole;
  private final Unit<Length> unit;

  private RivetBlank(Measure<Length> grip, Upset head, Measure<Length> hole) {
    this.grip = grip;
    this.head = head;
    this.hole = hole;
    this.unit = grip.getUnit();
  }

  /**
   * A rivet whose shank fills its hole.
   *
   * @param grip the thickness of all it holds together, more than zero; less the depth of a {@link
   *     Head#countersunk} head, in full for {@link Head#countersunkOverGrip}
   * @param head the head to be closed, on a round shank
   * @return the rivet
   * @throws IllegalArgumentException if the grip is not more than zero, or the shank not round
   */
  public static RivetBlank through(Quantity<Length> grip, Upset head) {
    Objects.requireNonNull(head, "head");
    Head.checkRound("shank", head.start());
    return new RivetBlank(Arguments.positive("grip", grip), head, head.start().width());
  }

  /**
   * The same rivet in a wider hole, which it swells to fill.
   *
   * @param diameter of the hole, at least that of the shank
   * @return the rivet
   * @throws IllegalArgumentException if the hole is narrower than the shank
   */
  public RivetBlank inHole(Quantity<Length> diameter) {
    Measure<Length> wide = Arguments.positive("diameter", diameter);
    if (wide.isLessThan(shank().width())) {
      throw new IllegalArgumentException(
          "diameter must be at least the "
              + shank().width()
              + " of the shank, was "
              + wide
              + "; drill the hole wider");
    }
    return new RivetBlank(grip, head, wide);
  }

  /** {@return the round shank} */
  public Section shank() {
    return head.start();
  }

  /**
   * The shank by conservation of volume.
   *
   * @return the length under the first head, exact as geometry, in the grip's unit
   */
  public Measure<Length> length() {
    return grip.withValue(length(Notes.NONE));
  }

  /** {@return how the length was found} */
  public Working working() {
    return Notes.taken(toString(), unit, this::length)
        .withSource(Source.computed("conservation of volume"))
        .withCautions(head.cautions());
  }

  private double length(Notes n) {
    double g = n.given("G", "grip", grip.in(unit));
    double d = n.given("d", "diameter of the shank", shank().width().in(unit));
    double w = n.given("D", "diameter of the hole", hole.in(unit));
    double h = n.given("h", "shank taken by the " + head.name(), head.stockLength().in(unit));
    double f = n.length("f", "what fills the hole", "G ((D / d)² − 1)", g * (w / d * (w / d) - 1));
    return n.length("L", "length under the head", "G + f + h", g + f + h);
  }

  /** Shank, grip and head. */
  @Override
  public String toString() {
    return shank() + " rivet through " + grip + ", with a " + head.name();
  }
}
