package org.hammerscale.stock;

import java.util.List;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** A feature seen from its other end. */
final class Reversed implements Feature {
  private final Feature feature;

  Reversed(Feature feature) {
    this.feature = feature;
  }

  @Override
  public String name() {
    return feature.name();
  }

  @Override
  public Section start() {
    return feature.end();
  }

  @Override
  public Section end() {
    return feature.start();
  }

  @Override
  public Estimate<Volume> metalKept() {
    return feature.metalKept();
  }

  @Override
  public Losses metalLost() {
    return feature.metalLost();
  }

  @Override
  public Measure<Length> reach() {
    return feature.reach();
  }

  @Override
  public List<Caution> cautions() {
    return feature.cautions();
  }

  @Override
  public Working working() {
    return feature.working();
  }

  @Override
  public Estimate<Length> stock(Section parent) {
    return feature.stock(parent);
  }

  @Override
  public Feature reversed() {
    return feature;
  }

  /** The feature and that it is turned. */
  @Override
  public String toString() {
    return feature + ", reversed";
  }
}
