package org.hammerscale.units;

import java.io.InvalidObjectException;
import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What is written in place of a measure, an estimate, a rule or a tolerance when it is serialized:
 * numbers, symbols of units, and no more. What is read goes through the factories, which refuse
 * what cannot be.
 */
final class SerialForm {
  private SerialForm() {}

  /** A stream with the thing itself in it was not written by this library. */
  static InvalidObjectException required() {
    return new InvalidObjectException("it is written as its serial form; read it from that");
  }

  /** A value and its unit: the symbol of a unit of the shop, or another unit itself. */
  static final class OfMeasure implements Serializable {
    private static final long serialVersionUID = 1;

    private final double value;
    private final Object unit;

    OfMeasure(double value, UnitScale<?> scale) {
      this.value = value;
      this.unit =
          ShopUnits.system().getUnit(scale.symbol) == scale.unit ? scale.symbol : scale.unit;
    }

    private Object readResolve() throws InvalidObjectException {
      Object known = unit instanceof String symbol ? ShopUnits.system().getUnit(symbol) : unit;
      if (!(known instanceof Unit<?> found)) {
        throw new InvalidObjectException("unit must be one of the shop's, was " + unit);
      }
      return measure(found);
    }

    private <Q extends Quantity<Q>> Measure<Q> measure(Unit<Q> found) {
      return Measure.of(value, found);
    }
  }

  static final class OfEstimate<Q extends Quantity<Q>> implements Serializable {
    private static final long serialVersionUID = 1;

    private final Measure<Q> low;
    private final Measure<Q> likely;
    private final Measure<Q> high;

    OfEstimate(Measure<Q> low, Measure<Q> likely, Measure<Q> high) {
      this.low = low;
      this.likely = likely;
      this.high = high;
    }

    private Object readResolve() {
      return Estimate.of(low, likely, high);
    }
  }

  static final class OfGraduation<Q extends Quantity<Q>> implements Serializable {
    private static final long serialVersionUID = 1;

    private final Measure<Q> step;

    OfGraduation(Measure<Q> step) {
      this.step = step;
    }

    private Object readResolve() {
      return Graduation.of(step);
    }
  }

  static final class OfTolerance<Q extends Quantity<Q>> implements Serializable {
    private static final long serialVersionUID = 1;

    private final @Nullable Measure<Q> allowance;
    private final double fraction;

    OfTolerance(@Nullable Measure<Q> allowance, double fraction) {
      this.allowance = allowance;
      this.fraction = fraction;
    }

    private Object readResolve() {
      return allowance == null ? Tolerance.relative(fraction) : Tolerance.absolute(allowance);
    }
  }
}
