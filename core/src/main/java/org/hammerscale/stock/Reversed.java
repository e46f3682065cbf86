package org.hammerscale.stock;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;

/** A feature seen from its other end. */
final class Reversed extends ForwardingFeature {
  Reversed(Feature feature) {
    super(feature);
  }

  @Override
  public Section start() {
    return feature().end();
  }

  @Override
  public Section end() {
    return feature().start();
  }

  @Override
  public Estimate<Length> stock(Section parent) {
    return feature().stock(parent);
  }

  @Override
  public Measure<Length> mostToCut(Section parent) {
    return feature().mostToCut(parent);
  }

  @Override
  public Section sectionAt(Quantity<Length> along) {
    Measure<Length> distance = Arguments.notNegative("along", along);
    return feature()
        .sectionAt(
            reach().isGreaterThan(distance) ? reach().subtract(distance) : distance.withValue(0));
  }

  @Override
  public Silhouette outline() {
    return Silhouette.of(feature()).reversed();
  }

  @Override
  public Feature reversed() {
    return feature();
  }

  /** The feature and that it is turned. */
  @Override
  public String toString() {
    return feature() + ", reversed";
  }
}
