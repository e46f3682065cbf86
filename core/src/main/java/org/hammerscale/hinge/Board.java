package org.hammerscale.hinge;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;

/**
 * The wood that a leaf is screwed to, as far as it matters for the swing: how thick it is, and how
 * far its edge stands back from the pin. Two boards stop a hinge long before the iron does.
 *
 * <pre>{@code
 * Board door = Board.of(inches("7/8")).edgeFromPin(inches("1/8"));
 * door                                                         // board of 7/8 in with its edge 1/8 in from the pin
 * Section strap = Section.flat(inches("1 1/2"), inches("1/4"));
 * LeafProfile leaf = LeafProfile.tangent(Barrel.around(inches("1/2"), strap));
 * Swing.of(leaf).withBoards(door).opening()                    // 10.39°
 * Swing.of(leaf).withBoards(door).contact()                    // boards
 * door.thickness()   // 7/8 in
 * }</pre>
 *
 * <p>A board lies against the face of its leaf and ends in a square edge. It is taken to be let out
 * where the barrel needs room, and to be as wide as a door, so that its far edge never matters.
 * Source: plane geometry.
 */
public final class Board {
  private final Measure<Length> thickness;
  private final Measure<Length> edge;

  private Board(Measure<Length> thickness, Measure<Length> edge) {
    this.thickness = thickness;
    this.edge = edge;
  }

  /**
   * A board with its edge in line with the pin.
   *
   * @param thickness how thick it is, more than zero
   * @return the board
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public static Board of(Quantity<Length> thickness) {
    Measure<Length> thick = Arguments.positive("thickness of board", thickness);
    return new Board(thick, thick.withValue(0));
  }

  /**
   * The same board with its edge back from the pin.
   *
   * @param distance from the pin's centre to the edge, along the leaf when the hinge is flat; zero
   *     or more
   * @return the board
   * @throws IllegalArgumentException if the distance is negative
   */
  public Board edgeFromPin(Quantity<Length> distance) {
    Objects.requireNonNull(distance, "distance");
    return new Board(thickness, Arguments.notNegative("edge from pin", distance));
  }

  /** {@return how thick it is} */
  public Measure<Length> thickness() {
    return thickness;
  }

  /** {@return how far its edge stands back from the pin's centre} */
  public Measure<Length> edgeFromPin() {
    return edge;
  }

  /** Thickness and edge. */
  @Override
  public String toString() {
    return "board of " + thickness + " with its edge " + edge + " from the pin";
  }
}
