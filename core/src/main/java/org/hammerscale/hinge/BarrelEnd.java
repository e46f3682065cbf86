package org.hammerscale.hinge;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.jspecify.annotations.Nullable;

/**
 * How the end of a rolled barrel meets the leaf: cut square, scarfed straight or tucked under, or
 * forge-welded. The end decides how much strap the barrel takes, see {@link BarrelClosing}. A
 * thinned end is a {@index scarf}.
 *
 * <pre>{@code
 * Section strap = Section.flat(inches("1 1/2"), inches("1/4"));
 * Barrel eye = Barrel.around(inches("1/2"), strap);
 * BarrelEnd scarf = BarrelEnd.scarfedTo(inches("1/8")).over(inches("5/8"));
 * eye.endedWith(BarrelEnd.squareCut()).closing().stripLength()     // 1.9635 in
 * eye.endedWith(scarf).closing().stripLength()                     // 1.984 in
 * eye.endedWith(BarrelEnd.tucked()).closing().stripLength()        // 2.0491 in
 * eye.endedWith(BarrelEnd.forgeWelded(WeldAllowance.ONE_THICKNESS)).stock(strap)  // 2.6062 in (2.2312 in to 2.7312 in)
 * }</pre>
 */
public final class BarrelEnd {
  enum Kind {
    SQUARE,
    SCARF,
    TUCKED,
    WELDED
  }

  private static final Section FLAT = Section.square(Measures.millimetres(1));
  private static final BarrelEnd SQUARE_CUT = new BarrelEnd(Kind.SQUARE, null, null, null);
  private static final BarrelEnd TUCKED = new BarrelEnd(Kind.TUCKED, null, null, null);

  private final Kind kind;
  private final @Nullable Measure<Length> edge;
  private final @Nullable Measure<Length> length;
  private final @Nullable WeldAllowance weld;

  private BarrelEnd(
      Kind kind,
      @Nullable Measure<Length> edge,
      @Nullable Measure<Length> length,
      @Nullable WeldAllowance weld) {
    this.kind = kind;
    this.edge = edge;
    this.length = length;
    this.weld = weld;
  }

  /** {@return an end cut square: its outer corner meets the leaf before the turn is full} */
  public static BarrelEnd squareCut() {
    return SQUARE_CUT;
  }

  /**
   * A straight scarf, thinned evenly from the full thickness to an edge, over the least length that
   * lets its tip seat on the leaf unless {@link #over} says otherwise. The width is held.
   *
   * @param edgeThickness how thick the tip is left; more than zero, less than the strap
   * @return the end
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public static BarrelEnd scarfedTo(Quantity<Length> edgeThickness) {
    Measure<Length> thickness = Arguments.positive("edge thickness", edgeThickness);
    return new BarrelEnd(Kind.SCARF, thickness, null, null);
  }

  /**
   * The same scarf over a length of the smith's own.
   *
   * @param scarfLength the length that is thinner, after thinning; more than zero
   * @return the end
   * @throws IllegalArgumentException if the length is not more than zero, or the end is no straight
   *     scarf
   */
  public BarrelEnd over(Quantity<Length> scarfLength) {
    if (kind != Kind.SCARF) {
      throw new IllegalArgumentException(
          "end must be a straight scarf to have a length, was "
              + this
              + "; begin with BarrelEnd.scarfedTo");
    }
    return new BarrelEnd(kind, edge, Arguments.positive("scarf length", scarfLength), null);
  }

  /** {@return a hollow scarf tucked right under the leaf, so that it closes the bore all round} */
  public static BarrelEnd tucked() {
    return TUCKED;
  }

  /**
   * An end welded to the leaf, so that the barrel is a closed ring.
   *
   * @param allowance what upsetting, scarfing and welding take beyond the ring
   * @return the end
   */
  public static BarrelEnd forgeWelded(WeldAllowance allowance) {
    return new BarrelEnd(Kind.WELDED, null, null, Objects.requireNonNull(allowance, "allowance"));
  }

  /** {@return whether it is welded to the leaf, which makes the barrel a closed ring} */
  public boolean isWelded() {
    return kind == Kind.WELDED;
  }

  Kind kind() {
    return kind;
  }

  @Nullable Measure<Length> edge() {
    return edge;
  }

  @Nullable Measure<Length> length() {
    return length;
  }

  @Nullable WeldAllowance weld() {
    return weld;
  }

  static boolean isFlat(Section section) {
    return section.isSimilarTo(FLAT);
  }

  /** Refuses a barrel that cannot end like this. */
  void checkOn(Section section, boolean centred) {
    boolean plain = kind == Kind.SQUARE || kind == Kind.WELDED;
    if (centred && !plain) {
      throw new IllegalArgumentException(
          "end of a centred barrel must be cut square or forge-welded, was "
              + this
              + "; no rule is known for another, so trim it to fit, or roll the barrel to one face");
    }
    if (!isFlat(section) && (centred || !plain)) {
      throw new IllegalArgumentException(
          "section of the barrel must be a flat or a square for a centred barrel or a scarf, was "
              + section
              + "; leave the end square on a barrel rolled to one face, or forge a flat first");
    }
    if (edge != null && edge.compareTo(section.thickness()) >= 0) {
      throw new IllegalArgumentException(
          "edge thickness of the barrel end must be less than the strap's thickness of "
              + section.thickness()
              + ", was "
              + edge
              + "; thin the scarf more, or leave the end square");
    }
  }

  /** The end in words, such as {@code straight scarf to 1/8 in over 5/8 in}. */
  @Override
  public String toString() {
    return switch (kind) {
      case SQUARE -> "square-cut end";
      case TUCKED -> "tucked scarf";
      case WELDED -> "forge-welded end";
      case SCARF -> "straight scarf to " + edge + (length == null ? "" : " over " + length);
    };
  }
}
