package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;

/**
 * A door, a gate or a shutter before it is hung: what it does to its hinges cannot be asked before
 * it is known where they sit.
 *
 * <pre>{@code
 * UnhungDoor gate = DoorLoad.weighing(kilograms(27), metres(0.91));
 * gate.hungAt(metres(0), metres(1.5)).pull(2)              // 80.32 N
 * gate.hungAt(metres(0), metres(0.9), metres(1.8)).pull(3) // 66.93 N
 * }</pre>
 */
public final class UnhungDoor {
  private static final int MOST = 100;

  private final Measure<Force> weight;
  private final Measure<Length> width;

  UnhungDoor(Measure<Force> weight, Measure<Length> width) {
    this.weight = weight;
    this.width = width;
  }

  /**
   * This door on its hinges.
   *
   * @param heightsOfHinges the height of each hinge above any one level, rising; 2 to 100
   * @return the load
   * @throws IllegalArgumentException if their number is out of range, or they do not rise
   */
  @SafeVarargs
  public final DoorLoad hungAt(Quantity<Length>... heightsOfHinges) {
    Objects.requireNonNull(heightsOfHinges, "heightsOfHinges");
    List<Measure<Length>> rising = new ArrayList<>();
    for (Quantity<Length> height : heightsOfHinges) {
      Measure<Length> next = Arguments.length("heightsOfHinges", height);
      if (!rising.isEmpty() && !next.isGreaterThan(rising.get(rising.size() - 1))) {
        throw new IllegalArgumentException(
            "heightsOfHinges must rise, but "
                + next
                + " follows "
                + rising.get(rising.size() - 1)
                + "; give them from the lowest hinge to the highest");
      }
      rising.add(next);
    }
    Arguments.count(
        "number of heightsOfHinges",
        rising.size(),
        2,
        MOST,
        "one hinge alone cannot keep a door upright");
    return DoorLoad.hung(weight, width, List.copyOf(rising));
  }

  /** Weight and width. */
  @Override
  public String toString() {
    return "door of " + weight + ", " + width + " wide, not hung yet";
  }
}
