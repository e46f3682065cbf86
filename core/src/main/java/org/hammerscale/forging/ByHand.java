package org.hammerscale.forging;

import org.hammerscale.stock.Feature;
import org.hammerscale.stock.ForwardingFeature;
import org.hammerscale.stock.Losses;
import org.hammerscale.working.Working;

/** A feature of which the hand takes its part. */
final class ByHand extends ForwardingFeature {
  private final HandAllowance hand;

  ByHand(Feature feature, HandAllowance hand) {
    super(feature);
    this.hand = hand;
  }

  @Override
  public Losses metalLost() {
    return hand.addedTo(feature().metalLost(), feature().metalKept());
  }

  @Override
  public boolean holdsScale() {
    return hand.holdsScale() || feature().holdsScale();
  }

  @Override
  public Working working() {
    return feature().working().withSource(hand.source());
  }

  /** The feature and the allowance. */
  @Override
  public String toString() {
    return feature() + ", " + hand;
  }
}
