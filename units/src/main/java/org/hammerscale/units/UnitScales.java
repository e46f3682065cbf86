package org.hammerscale.units;

import java.lang.ref.WeakReference;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReferenceArray;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.jspecify.annotations.Nullable;

/**
 * Finds the scale of a unit. The shop's own units stand in a fixed table; other people's units are
 * remembered in a small one that forgets: it holds them weakly, and a newcomer takes the place of
 * whoever sits on its slot. Forgetting costs time, never a result.
 */
final class UnitScales {
  private static final int KNOWN_SLOTS = 256;
  private static final int FOREIGN_SLOTS = 64;

  /** Relative difference up to which a foreign unit is taken to be one of the shop's. */
  private static final double SAME = 1e-15;

  /** The same for a scale with a zero of its own, whose size is a difference. */
  private static final double SAME_SHIFTED = 1e-12;

  private static final double FAR = 1e9;

  private static final @Nullable UnitScale<?>[] KNOWN = index(ShopUnits.scales());
  private static final AtomicReferenceArray<@Nullable WeakReference<UnitScale<?>>> FOREIGN =
      new AtomicReferenceArray<>(FOREIGN_SLOTS);

  private UnitScales() {}

  static <Q extends Quantity<Q>> UnitScale<Q> of(Unit<Q> unit) {
    int hash = System.identityHashCode(unit);
    for (int slot = hash & (KNOWN_SLOTS - 1); ; slot = (slot + 1) & (KNOWN_SLOTS - 1)) {
      UnitScale<?> known = KNOWN[slot];
      if (known == null) {
        return foreign(unit, hash & (FOREIGN_SLOTS - 1));
      }
      if (known.unit == unit) {
        return forUnit(known);
      }
    }
  }

  private static <Q extends Quantity<Q>> UnitScale<Q> foreign(Unit<Q> unit, int slot) {
    Objects.requireNonNull(unit, "unit");
    WeakReference<UnitScale<?>> seat = FOREIGN.getPlain(slot);
    UnitScale<?> seated = seat == null ? null : seat.get();
    if (seated != null && seated.unit == unit) {
      return forUnit(seated);
    }
    UnitScale<Q> made = measure(unit);
    FOREIGN.setRelease(slot, new WeakReference<>(made));
    return made;
  }

  /** A scale of the very same unit object measures the same quantity. */
  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> UnitScale<Q> forUnit(UnitScale<?> sameUnit) {
    return (UnitScale<Q>) sameUnit;
  }

  private static <Q extends Quantity<Q>> UnitScale<Q> measure(Unit<Q> unit) {
    long dimension = Dimensions.of(unit);
    UnitConverter toSi = unit.getConverterTo(unit.getSystemUnit());
    double zero;
    double factor;
    try {
      zero = toSi.convert(0.0);
      // Beside a shifted zero one unit is too small to be measured well.
      factor = zero == 0 ? toSi.convert(1.0) : (toSi.convert(FAR) - zero) / FAR;
      if (!isPlain(toSi, zero, factor) || (zero != 0 && dimension != Dimensions.TEMPERATURE)) {
        throw new IllegalArgumentException("it is no multiple of an SI unit");
      }
    } catch (IllegalArgumentException | ArithmeticException e) {
      throw new IllegalArgumentException(
          "unit must be a plain multiple of an SI unit, was " + unit + "; convert it first", e);
    }
    double hundredths = zero / factor * 100;
    for (UnitScale<?> known : ShopUnits.scales()) {
      double size = known.numerator / known.denominator;
      if (known.dimension == dimension
          && dimension != Dimensions.NONE // a ratio of one is not a radian
          && Math.abs(size - factor) <= (zero == 0 ? SAME : SAME_SHIFTED) * size
          && Math.abs(known.zero - hundredths) <= 1e-9 * Math.abs(known.zero)) {
        return known.under(unit);
      }
    }
    // A nanometre is 1/10⁹ m: as a fraction of whole numbers it stays exact.
    double inverse = zero == 0 ? toSi.inverse().convert(1.0) : 0;
    boolean isPart =
        inverse > 1 && inverse == Math.rint(inverse) && Math.abs(inverse * factor - 1) <= SAME;
    return new UnitScale<>(
        unit,
        unit.toString(),
        dimension,
        isPart ? 1 : factor,
        isPart ? inverse : 1,
        hundredths,
        UnitScale.Family.METRIC,
        0);
  }

  private static boolean isPlain(UnitConverter converter, double zero, double factor) {
    double far = converter.convert(1000.0);
    double expected = zero + 1000 * factor;
    return factor > 0
        && factor <= Double.MAX_VALUE
        && Math.abs(far - expected) <= 1e-12 * Math.abs(expected);
  }

  private static @Nullable UnitScale<?>[] index(Iterable<UnitScale<?>> scales) {
    @Nullable UnitScale<?>[] table = new UnitScale<?>[KNOWN_SLOTS];
    for (UnitScale<?> scale : scales) {
      int slot = System.identityHashCode(scale.unit) & (KNOWN_SLOTS - 1);
      while (table[slot] != null) {
        slot = (slot + 1) & (KNOWN_SLOTS - 1);
      }
      table[slot] = scale;
    }
    return table;
  }
}
