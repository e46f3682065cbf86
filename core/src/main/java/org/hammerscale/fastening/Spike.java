package org.hammerscale.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.Taper;
import org.hammerscale.forging.Upset;
import org.hammerscale.internal.Arguments;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A driven shank: a {@index spike}, a big nail, the tail of a pintle or of a screwless eye, one leg
 * of a staple. The wood feels it as a nail of its diameter; of a square shank that is the side.
 *
 * <pre>{@code
 * Spike spike = Spike.of(Section.square(inches("3/8"))).through(inches(2)).driven(inches("4 3/4"));
 * spike.length()               // 6 3/4 in  under the head: the plank, and what goes into the beam
 * spike.holdingLength()        // 4 in  of full shank in the beam, before the point
 * spike.boringDepth()          // 6 in  to bore from the face of the plank
 * PilotHole.pulledOut(spike, Wood.named("oak")).drill(SIXTY_FOURTH)   // 21/64 in  the drill for it
 * spike.piece(Material.MILD_STEEL).layout().cutLength()   // 7 1/32 in (6 15/16 in to 7 1/8 in)  for rose head, shank and point
 * }</pre>
 *
 * <p>Only the full shank counts for what it holds, not the point, which is on the safe side:
 * published tables count a nail's whole length in the wood. It is bored for as deep as the full
 * shank goes, so that the point makes its own way. Exact as geometry, but for the rose head.
 *
 * <p>A square shank of the same metal has 1.13 of the surface of a round one; track spikes were
 * found to hold half as much again. The side for the diameter is therefore on the safe side, an
 * estimate. A {@index "chisel point"} goes across the grain.
 *
 * <p>Source: common practice for the square, the point and the depth of the hole; a page on track
 * spikes (read); at least three diameters beyond the member for a clench, NDS (from memory).
 */
public final class Spike extends DrivenShank {
  private static final Source SQUARE =
      Source.commonPractice("the side of a square shank for its diameter");
  private static final Source END =
      Source.fromMemory("ANSI/AWC NDS 2015", "12.2.3, nails and spikes not in end grain");
  private static final Source CLENCHED =
      Source.fromMemory("ANSI/AWC NDS 2015", "clinched nails, three diameters beyond the member");
  private static final Source BORED =
      Source.commonPractice(
          "bored as far as the full shank goes, since a sharp point makes its own way; for a blunt"
              + " end to it, for a clenched one right through");
  private static final Source ADDED = Source.computed("lengths added");
  private static final double POINT = 2;
  private static final double CLENCH = 3;

  private final Upset head;
  private final Taper point;
  private final Layers layers;
  private final @Nullable Measure<Length> depth;
  private final boolean clenched;

  /** The depth is that in the wood that holds; of a clenched one that wood's thickness. */
  private Spike(
      Section shank,
      Upset head,
      Taper point,
      Layers layers,
      @Nullable Measure<Length> depth,
      boolean clenched) {
    super(shank);
    this.head = head;
    this.point = point;
    this.layers = layers;
    this.depth = depth;
    this.clenched = clenched;
    if (depth != null && !clenched && !depth.isGreaterThan(point.reach())) {
      throw new IllegalArgumentException(
          "depth must be more than the point of "
              + point.reach()
              + ", was "
              + depth
              + "; drive it deeper, or make the point shorter");
    }
  }

  /**
   * A shank to be driven, with a rose head and a point two thicknesses long: a chisel point on a
   * square, a cone on a round.
   *
   * @param shank its section in the wood, square or round
   * @return the spike, driven into nothing yet
   * @throws IllegalArgumentException if the shank is neither square nor round
   */
  public static Spike of(Section shank) {
    Section.requireArea("shank", shank);
    requireDriven(shank);
    Measure<Length> long2 = shank.width().multiply(POINT);
    Taper point = shank.isRound() ? Taper.toPoint(shank, long2) : Taper.toEdge(shank, long2);
    return new Spike(shank, Head.nail(shank), point, Layers.NONE, null, false);
  }

  /**
   * The same with another head, such as {@link Head#tapered} or {@link Head#dome}.
   *
   * @param head the head, jumped up on its shank
   * @return the spike
   * @throws IllegalArgumentException if the head is that of another shank
   */
  public Spike withHead(Upset head) {
    Objects.requireNonNull(head, "head");
    requireOwn("head", head.start(), "jump it up on the shank");
    return new Spike(shank(), head, point, layers, depth, clenched);
  }

  /**
   * The same with another point: a chisel by {@link Taper#toEdge}, a cone or pyramid by {@link
   * Taper#toPoint}, an eased end by {@link Taper#between}.
   *
   * @param point the point, from its shank on
   * @return the spike
   * @throws IllegalArgumentException if the point begins with another section, or is longer than
   *     the spike is deep
   */
  public Spike withPoint(Taper point) {
    Objects.requireNonNull(point, "point");
    requireOwn("point", point.start(), "draw it from the shank");
    return new Spike(shank(), head, point, layers, depth, clenched);
  }

  private void requireOwn(String name, Section start, String advice) {
    if (!start.meets(shank())) {
      throw new IllegalArgumentException(
          name + " must begin with the shank of " + shank() + ", was " + start + "; " + advice);
    }
  }

  /**
   * The same through one thickness more that it fixes: iron, washer, plank.
   *
   * @param thickness more than zero
   * @return the spike
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public Spike through(Quantity<Length> thickness) {
    return new Spike(shank(), head, point, layers.and(thickness), depth, clenched);
  }

  /**
   * The same driven into the wood that holds it, and not through it.
   *
   * @param depth how deep its point reaches there, more than the length of the point
   * @return the spike
   * @throws IllegalArgumentException if it is not more than the point is long
   */
  public Spike driven(Quantity<Length> depth) {
    Measure<Length> deep = Arguments.positive("depth", depth);
    return new Spike(shank(), head, point, layers, deep, false);
  }

  /**
   * The same driven through the wood that holds it and turned over behind it, three diameters or
   * the length of its point, whichever is more.
   *
   * @param board the thickness of that wood, more than zero
   * @return the spike
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public Spike clenchedThrough(Quantity<Length> board) {
    Measure<Length> thick = Arguments.positive("board", board);
    return new Spike(shank(), head, point, layers, thick, true);
  }

  /** {@return its head} */
  public Upset head() {
    return head;
  }

  /** {@return its point} */
  public Taper point() {
    return point;
  }

  /** {@return what it goes through before it comes to the wood that holds it, from the head on} */
  public List<Measure<Length>> layers() {
    return layers.all();
  }

  /** {@return whether its point is turned over} */
  public boolean isClenched() {
    return clenched;
  }

  /** Whether its point cuts a way for itself: it ends in a point or an edge. */
  private boolean isSharp() {
    return point.end().area().getValue() == 0;
  }

  /**
   * What is turned over: 3 D, or the length of its point if that is more.
   *
   * @return the length that comes through, zero of one that is not clenched
   * @throws IllegalArgumentException if it is not driven yet
   */
  public Measure<Length> clench() {
    return Measure.of(clenched ? clench(Notes.NONE) : 0, unit());
  }

  /**
   * How far it reaches into the wood that holds it, beyond the face of that; with the clench.
   *
   * @return the depth, exact
   * @throws IllegalArgumentException if it is not driven yet
   */
  public Measure<Length> inWood() {
    return depth().to(unit()).add(clench());
  }

  /**
   * How much full shank is in the wood that holds it: the depth less the point, or the board that
   * it is clenched through.
   *
   * @return the length to reckon what it holds with, exact
   * @throws IllegalArgumentException if it is not driven yet
   */
  public Measure<Length> holdingLength() {
    Measure<Length> own = depth().to(unit());
    return clenched ? own : own.subtract(point.reach());
  }

  /**
   * The length under the head: L = G + d, all that it goes through and how deep it is driven; of a
   * clenched one G + b + c.
   *
   * @return the length, exact as a sum, in the unit of the first thickness told
   * @throws IllegalArgumentException if it is not driven yet
   */
  public Measure<Length> length() {
    return Measure.of(length(Notes.NONE), unit());
  }

  /**
   * How deep to bore for it from the first face on: H = G + d − p, as far as its full shank goes,
   * since a point makes its own way; of a blunt one to its end, G + d; of a clenched one right
   * through, G + b.
   *
   * @return the depth, exact as a sum
   * @throws IllegalArgumentException if it is not driven yet
   */
  public Measure<Length> boringDepth() {
    return Measure.of(boring(Notes.NONE), unit());
  }

  /**
   * The spike as it is forged: head, shank, point.
   *
   * @param material what it is made of
   * @return the piece, its marks from the head's end, trimmed at the point
   * @throws IllegalArgumentException if it is not driven yet
   */
  public Piece piece(Material material) {
    Objects.requireNonNull(material, "material");
    Plain shank = Plain.of(shank(), length().subtract(point.reach()));
    return Piece.of(Bar.of(shank(), material), head.reversed(), shank, point);
  }

  /** {@return what to heed in driving it} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(
        Caution.limit(
            "drive it into side grain, beyond any split or decayed wood, and bore for it: end grain is"
                + " not to be relied on",
            END));
    if (!shank().isRound()) {
      cautions.add(
          Caution.limit(
              "a square shank is reckoned as a round one of its side: an estimate, on the safe side;"
                  + " drive a chisel point across the grain, lest the wood split",
              SQUARE));
    }
    cautions.add(
        Caution.danger("wear eye protection: hardened heads and points chip under the hammer"));
    cautions.add(
        Caution.limit(
            "straight out is reckoned: a pull aslant, or on a driven pintle, also bends it, so reckon"
                + " the shank besides",
            Source.computed("statics")));
    return List.copyOf(cautions);
  }

  /**
   * How the length was found.
   *
   * @return the working of {@link #length}
   * @throws IllegalArgumentException if it is not driven yet
   */
  public Working working() {
    return Notes.taken("spike, under its head", unit(), this::length)
        .withSource(clenched ? CLENCHED : ADDED)
        .withCautions(cautions());
  }

  /**
   * How the depth to bore was found.
   *
   * @return the working of {@link #boringDepth}
   * @throws IllegalArgumentException if it is not driven yet
   */
  public Working boringWorking() {
    return Notes.taken("hole for a spike", unit(), this::boring)
        .withSource(BORED)
        .withCautions(cautions());
  }

  private Unit<Length> unit() {
    return layers.all().isEmpty() ? depth().getUnit() : layers.unit();
  }

  private Measure<Length> depth() {
    if (depth == null) {
      throw new IllegalArgumentException(
          "depth must be known, was none; tell how deep it is driven with driven(depth)");
    }
    return depth;
  }

  private double length(Notes n) {
    double g = grip(n);
    String all = layers.all().isEmpty() ? "" : "G + ";
    if (clenched) {
      double b = n.given("b", "thickness of the last wood", depth().in(unit()));
      double c = clench(n);
      return n.length("L", "length under the head", all + "b + c", g + b + c);
    }
    double d = n.given("d", "depth of its point", depth().in(unit()));
    return n.length("L", "length under the head", all + "d", g + d);
  }

  private double boring(Notes n) {
    double g = grip(n);
    String all = layers.all().isEmpty() ? "" : "G + ";
    if (clenched) {
      double b = n.given("b", "thickness of the last wood", depth().in(unit()));
      return n.length("H", "depth to bore", all + "b", g + b);
    }
    double d = n.given("d", "depth of its point", depth().in(unit()));
    if (!isSharp()) {
      return n.length("H", "depth to bore", all + "d", g + d);
    }
    double p = n.given("p", "length of its point", point.reach().in(unit()));
    return n.length("H", "depth to bore", all + "d − p", g + d - p);
  }

  private double clench(Notes n) {
    double three = CLENCH * diameter().in(unit());
    double long1 = point.reach().in(unit());
    if (long1 > three) {
      double p = n.given("p", "length of its point", long1);
      return n.length("c", "clench, as long as the point", "p", p);
    }
    double d = n.given("D", "diameter", diameter().in(unit()));
    return n.length("c", "clench", "3 D", CLENCH * d);
  }

  private double grip(Notes n) {
    return layers.all().isEmpty() ? 0 : layers.grip(n);
  }

  /** Its shank, and what it is driven into. */
  @Override
  public String toString() {
    String told = "spike of " + shank();
    if (depth == null) {
      return told;
    }
    return told + ", " + length() + (clenched ? " with its clench" : " under the head");
  }
}
