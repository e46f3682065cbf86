package org.hammerscale.stock;

import java.util.Objects;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.hammerscale.units.Density;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Source;
import org.jspecify.annotations.Nullable;

/** What is known of a material. */
record Facts(
    Known<Measure<Density>> density,
    @Nullable Known<Range> forging,
    @Nullable Known<Measure<Temperature>> solidus,
    @Nullable Known<Double> expansion,
    @Nullable Known<Double> specificHeat,
    @Nullable Known<Estimate<Pressure>> yield,
    @Nullable Known<Measure<Temperature>> coldWork) {

  /** A value and where it comes from. */
  record Known<V>(V value, Source source) {
    Known {
      Objects.requireNonNull(value, "value");
      Objects.requireNonNull(source, "source");
    }
  }

  /** The hottest and the coldest to forge at. */
  record Range(Estimate<Temperature> start, Estimate<Temperature> finish) {
    Range {
      if (!finish.high().isLessThan(start.low())) {
        throw new IllegalArgumentException(
            "finish must lie below the start of "
                + start
                + ", was "
                + finish
                + "; name the hottest point first");
      }
    }
  }

  Facts {
    if (forging != null
        && solidus != null
        && !forging.value().start().high().isLessThan(solidus.value())) {
      throw new IllegalArgumentException(
          "solidus must lie above the start of the forging range, "
              + forging.value().start()
              + ", was "
              + solidus.value()
              + "; metal that melts while it is forged crumbles");
    }
  }

  static Facts of(Measure<Density> density, Source source) {
    return new Facts(new Known<>(density, source), null, null, null, null, null, null);
  }

  Facts withDensity(Measure<Density> value, Source source) {
    return new Facts(
        new Known<>(value, source), forging, solidus, expansion, specificHeat, yield, coldWork);
  }

  Facts withForging(Range value, Source source) {
    return new Facts(
        density, new Known<>(value, source), solidus, expansion, specificHeat, yield, coldWork);
  }

  Facts withSolidus(Measure<Temperature> value, Source source) {
    return new Facts(
        density, forging, new Known<>(value, source), expansion, specificHeat, yield, coldWork);
  }

  Facts withExpansion(double value, Source source) {
    return new Facts(
        density, forging, solidus, new Known<>(value, source), specificHeat, yield, coldWork);
  }

  Facts withSpecificHeat(double value, Source source) {
    return new Facts(
        density, forging, solidus, expansion, new Known<>(value, source), yield, coldWork);
  }

  Facts withYield(Estimate<Pressure> value, Source source) {
    return new Facts(
        density, forging, solidus, expansion, specificHeat, new Known<>(value, source), coldWork);
  }

  Facts withColdWork(Measure<Temperature> value, Source source) {
    return new Facts(
        density, forging, solidus, expansion, specificHeat, yield, new Known<>(value, source));
  }

  @Nullable Known<?> find(Material.Property property) {
    return switch (property) {
      case DENSITY -> density;
      case FORGING_RANGE -> forging;
      case SOLIDUS -> solidus;
      case EXPANSION -> expansion;
      case SPECIFIC_HEAT -> specificHeat;
      case YIELD_STRENGTH -> yield;
      case COLD_WORK -> coldWork;
    };
  }
}
