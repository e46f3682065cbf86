package org.hammerscale.stock;

import javax.measure.quantity.Length;
import org.hammerscale.units.Estimate;

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
  public Feature reversed() {
    return feature();
  }

  /** The feature and that it is turned. */
  @Override
  public String toString() {
    return feature() + ", reversed";
  }
}
