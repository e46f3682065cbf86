package org.hammerscale.units;

import java.util.List;
import java.util.Map;
import javax.measure.Dimension;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import tech.units.indriya.unit.UnitDimension;
import tech.units.indriya.unit.Units;

/**
 * Dimensions packed into one number: the seven base exponents as digits of base 256. Multiplying
 * units adds their dimensions, dividing subtracts them, and comparing two is one instruction.
 */
final class Dimensions {
  static final long NONE = 0;
  static final long LENGTH = 1L;
  static final long MASS = 1L << 8;
  static final long TIME = 1L << 16;
  static final long CURRENT = 1L << 24;
  static final long TEMPERATURE = 1L << 32;
  static final long AMOUNT = 1L << 40;
  static final long LUMINOUS = 1L << 48;

  static final long AREA = 2 * LENGTH;
  static final long VOLUME = 3 * LENGTH;
  static final long DENSITY = MASS - VOLUME;
  static final long LINEAR_DENSITY = MASS - LENGTH;
  static final long FORCE = MASS + LENGTH - 2 * TIME;
  static final long PRESSURE = FORCE - AREA;

  private static final Map<Class<?>, Long> BY_TYPE =
      Map.ofEntries(
          Map.entry(Length.class, LENGTH),
          Map.entry(Area.class, AREA),
          Map.entry(Volume.class, VOLUME),
          Map.entry(Mass.class, MASS),
          Map.entry(Time.class, TIME),
          Map.entry(Temperature.class, TEMPERATURE),
          Map.entry(Angle.class, NONE),
          Map.entry(Dimensionless.class, NONE),
          Map.entry(Force.class, FORCE),
          Map.entry(Pressure.class, PRESSURE),
          Map.entry(Density.class, DENSITY),
          Map.entry(LinearDensity.class, LINEAR_DENSITY));

  private static final Map<Dimension, Long> BASE =
      Map.of(
          UnitDimension.LENGTH, LENGTH,
          UnitDimension.MASS, MASS,
          UnitDimension.TIME, TIME,
          UnitDimension.ELECTRIC_CURRENT, CURRENT,
          UnitDimension.TEMPERATURE, TEMPERATURE,
          UnitDimension.AMOUNT_OF_SUBSTANCE, AMOUNT,
          UnitDimension.LUMINOUS_INTENSITY, LUMINOUS);

  private static final List<Map.Entry<Dimension, Long>> ORDERED =
      BASE.entrySet().stream().sorted(Map.Entry.comparingByValue()).toList();

  private Dimensions() {}

  /**
   * The dimension of any JSR 385 unit: of the reference implementation's by its dimensions, of
   * another's by the symbols of its base units, since dimensions of two makers are never equal.
   *
   * @throws IllegalArgumentException if it has a root or a huge power of a base dimension
   */
  static long of(Unit<?> unit) {
    Dimension dimension = unit.getDimension();
    if (!(dimension instanceof UnitDimension)) {
      return bySymbols(unit.getSystemUnit());
    }
    long packed = packed(dimension);
    if (!dimension.equals(product(packed))) { // roots are lost in the base dimensions
      throw new IllegalArgumentException(
          "unit must be made of whole powers of the SI base units, was " + unit);
    }
    return packed;
  }

  private static Dimension product(long packed) {
    Dimension product = UnitDimension.NONE;
    long rest = packed;
    for (Map.Entry<Dimension, Long> base : ORDERED) {
      int exponent = (byte) rest;
      rest = (rest - exponent) >> 8;
      product = exponent == 0 ? product : product.multiply(base.getKey().pow(exponent));
    }
    return product;
  }

  private static long packed(Dimension dimension) {
    Map<? extends Dimension, Integer> factors = dimension.getBaseDimensions();
    if (factors == null) {
      return dimension.equals(UnitDimension.NONE) ? NONE : base(dimension);
    }
    long sum = 0;
    for (Map.Entry<? extends Dimension, Integer> factor : factors.entrySet()) {
      sum += base(factor.getKey()) * factor.getValue();
    }
    return sum;
  }

  private static long bySymbols(Unit<?> systemUnit) {
    Map<? extends Unit<?>, Integer> factors = systemUnit.getBaseUnits();
    if (factors == null) {
      return base(systemUnit);
    }
    long sum = 0;
    for (Map.Entry<? extends Unit<?>, Integer> factor : factors.entrySet()) {
      sum += base(factor.getKey()) * factor.getValue();
    }
    return sum;
  }

  /** The dimension that a quantity type stands for. */
  static <T extends Quantity<T>> long of(Class<T> type) {
    Long known = BY_TYPE.get(type);
    if (known != null) {
      return known;
    }
    Unit<T> unit = Units.getInstance().getUnit(type);
    if (unit == null) {
      throw new ClassCastException("no unit is known for the quantity type " + type.getName());
    }
    return of(unit);
  }

  /** The dimension in words, for messages. */
  static String name(long dimension) {
    if (dimension == NONE) {
      return "a plain number or angle";
    } else if (dimension == LENGTH) {
      return "a length";
    } else if (dimension == AREA) {
      return "an area";
    } else if (dimension == VOLUME) {
      return "a volume";
    } else if (dimension == MASS) {
      return "a mass";
    } else if (dimension == TIME) {
      return "a time";
    } else if (dimension == TEMPERATURE) {
      return "a temperature";
    } else if (dimension == DENSITY) {
      return "a density";
    } else if (dimension == LINEAR_DENSITY) {
      return "a mass per length";
    } else if (dimension == FORCE) {
      return "a force";
    } else if (dimension == PRESSURE) {
      return "a pressure";
    }
    return "a quantity of another kind";
  }

  private static long base(Unit<?> baseUnit) {
    String symbol = String.valueOf(baseUnit.getSymbol());
    return switch (symbol) {
      case "m" -> LENGTH;
      case "kg" -> MASS;
      case "s" -> TIME;
      case "A" -> CURRENT;
      case "K" -> TEMPERATURE;
      case "mol" -> AMOUNT;
      case "cd" -> LUMINOUS;
      default ->
          throw new IllegalArgumentException(
              "unit must be made of the seven SI base units, was of " + baseUnit);
    };
  }

  private static long base(Dimension dimension) {
    Long known = BASE.get(dimension);
    if (known == null) {
      throw new IllegalArgumentException(
          "unit must be made of the seven SI base dimensions, was of dimension " + dimension);
    }
    return known;
  }
}
