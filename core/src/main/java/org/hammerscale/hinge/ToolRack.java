package org.hammerscale.hinge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * The sizes of a tool that the shop has: every mark of a rule, as drills and drifts come in
 * sixty-fourths, or a list of what hangs in the rack.
 *
 * <pre>{@code
 * ToolRack drifts = ToolRack.of(millimetres(12), millimetres(14), millimetres(15), millimetres(16));
 * drifts.nearest(millimetres(14.6))                       // 15 mm
 * ToolRack.every(SIXTY_FOURTH).nearest(inches(0.3794))    // 3/8 in
 * }</pre>
 */
public final class ToolRack {
  private final @Nullable Graduation<Length> every;
  private final List<Measure<Length>> sizes;

  private ToolRack(@Nullable Graduation<Length> every, List<Measure<Length>> sizes) {
    this.every = every;
    this.sizes = sizes;
  }

  /**
   * A size on each mark of a rule.
   *
   * @param rule such as sixty-fourths of an inch or half millimetres
   * @return the rack
   */
  public static ToolRack every(Graduation<Length> rule) {
    return new ToolRack(Objects.requireNonNull(rule, "rule"), List.of());
  }

  /**
   * The sizes at hand.
   *
   * @param sizes at least one, each more than zero, in any order and unit
   * @return the rack
   * @throws IllegalArgumentException if there is none, or one is not more than zero
   */
  @SafeVarargs
  public static ToolRack of(Quantity<Length>... sizes) {
    Objects.requireNonNull(sizes, "sizes");
    if (sizes.length == 0) {
      throw new IllegalArgumentException(
          "sizes must be at least one, was none; name the tools at hand, or take every mark of a"
              + " rule");
    }
    List<Measure<Length>> all = new ArrayList<>(sizes.length);
    for (Quantity<Length> size : sizes) {
      all.add(Arguments.positive("size", size));
    }
    all.sort(Comparator.naturalOrder());
    return new ToolRack(null, List.copyOf(all));
  }

  /**
   * The size nearest to one wanted; of two as near the larger.
   *
   * @param wanted more than zero
   * @return the size; of a rule in the unit wanted
   * @throws IllegalArgumentException if it is not more than zero
   */
  public Measure<Length> nearest(Quantity<Length> wanted) {
    Measure<Length> size = Arguments.positive("wanted", wanted);
    Optional<Measure<Length>> below = atMost(size);
    Optional<Measure<Length>> above = atLeast(size);
    if (below.isEmpty() || above.isEmpty()) {
      return below.or(() -> above).orElseThrow();
    }
    Measure<Length> down = size.subtract(below.get());
    Measure<Length> up = above.get().subtract(size);
    return down.isLessThan(up) ? below.get() : above.get();
  }

  /** The largest size that is not above one. */
  Optional<Measure<Length>> atMost(Measure<Length> size) {
    if (every != null) {
      return Optional.of(every.downTo(size)).filter(mark -> mark.getValue() > 0);
    }
    return sizes.stream()
        .filter(each -> !each.isGreaterThan(size) || each.isEquivalentTo(size))
        .reduce((before, each) -> each);
  }

  /** The smallest size that is not below one. */
  Optional<Measure<Length>> atLeast(Measure<Length> size) {
    if (every != null) {
      return Optional.of(every.upTo(size));
    }
    return sizes.stream()
        .filter(each -> !each.isLessThan(size) || each.isEquivalentTo(size))
        .findFirst();
  }

  /** The sizes, or the rule they come by. */
  @Override
  public String toString() {
    if (every != null) {
      return "sizes in " + every;
    }
    StringBuilder text = new StringBuilder("sizes of ");
    for (int i = 0; i < sizes.size(); i++) {
      text.append(i == 0 ? "" : ", ").append(sizes.get(i));
    }
    return text.toString();
  }
}
