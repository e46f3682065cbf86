package org.hammerscale.units;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Objects;
import java.util.Set;
import javax.measure.Dimension;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.spi.SystemOfUnits;
import org.jspecify.annotations.Nullable;

/** The shop's units as JSR 385 wants a system of them. */
final class ShopSystem implements SystemOfUnits {
  static final ShopSystem INSTANCE = new ShopSystem();

  private ShopSystem() {}

  /** {@return {@code Hammerscale shop units}} */
  @Override
  public String getName() {
    return "Hammerscale shop units";
  }

  /**
   * The SI unit of a quantity type.
   *
   * @param quantityType such as {@code Length.class}
   * @param <Q> the quantity
   * @return its unit in this system, or null, as JSR 385 asks, if there is none
   */
  @Override
  @SuppressWarnings("unchecked") // the unit measures what the type's dimension says
  public <Q extends Quantity<Q>> @Nullable Unit<Q> getUnit(Class<Q> quantityType) {
    long dimension = Dimensions.of(Objects.requireNonNull(quantityType, "quantityType"));
    boolean angle = quantityType.equals(Angle.class);
    for (UnitScale<?> scale : ShopUnits.scales()) {
      boolean si = scale.numerator == scale.denominator && scale.zero == 0;
      if (si && scale.dimension == dimension && angle == scale.symbol.equals("rad")) {
        return (Unit<Q>) scale.unit;
      }
    }
    return null;
  }

  /**
   * A unit by its symbol, or by the text that the unit itself prints as: {@code ℃} and {@code °C}
   * are one unit, whose measures print {@code °C}.
   *
   * @param symbol such as {@code in} or {@code kg/m³}
   * @return the unit, or null, as JSR 385 asks, if there is none
   */
  @Override
  public @Nullable Unit<?> getUnit(String symbol) {
    Objects.requireNonNull(symbol, "symbol");
    for (UnitScale<?> scale : ShopUnits.scales()) {
      if (scale.symbol.equals(symbol) || scale.unit.toString().equals(symbol)) {
        return scale.unit;
      }
    }
    return null;
  }

  /** {@return all units of the system} */
  @Override
  public Set<? extends Unit<?>> getUnits() {
    Set<Unit<?>> units = new LinkedHashSet<>();
    ShopUnits.scales().forEach(scale -> units.add(scale.unit));
    return Collections.unmodifiableSet(units);
  }

  /**
   * The units of one dimension.
   *
   * @param dimension the dimension
   * @return its units, none if the system has none
   */
  @Override
  public Set<? extends Unit<?>> getUnits(Dimension dimension) {
    Objects.requireNonNull(dimension, "dimension");
    Set<Unit<?>> units = new LinkedHashSet<>();
    for (UnitScale<?> scale : ShopUnits.scales()) {
      if (scale.unit.getDimension().equals(dimension)) {
        units.add(scale.unit);
      }
    }
    return Collections.unmodifiableSet(units);
  }

  /** The name. */
  @Override
  public String toString() {
    return getName();
  }
}
