package org.hammerscale.forging;

import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** A feature of which the hand takes its part. */
final class ByHand implements Feature {
  private final Feature feature;
  private final HandAllowance hand;

  ByHand(Feature feature, HandAllowance hand) {
    this.feature = Objects.requireNonNull(feature, "feature");
    this.hand = hand;
  }

  @Override
  public String name() {
    return feature.name();
  }

  @Override
  public Section start() {
    return feature.start();
  }

  @Override
  public Section end() {
    return feature.end();
  }

  @Override
  public Estimate<Volume> metalKept() {
    return feature.metalKept();
  }

  @Override
  public Losses metalLost() {
    return hand.addedTo(feature.metalLost(), feature.metalKept());
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
    return feature.working().withSource(hand.source());
  }

  /** The feature and the allowance. */
  @Override
  public String toString() {
    return feature + ", " + hand;
  }
}
