package org.hammerscale.stock;

import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/**
 * A feature that answers as another one does, but for what a subclass says otherwise: the same
 * feature seen from its other end, or with what the hand takes. What a feature works out from its
 * other answers, such as {@link Feature#stock}, it works out anew.
 */
public abstract class ForwardingFeature implements Feature, Outlined {
  private final Feature feature;

  /**
   * Wraps a feature.
   *
   * @param feature what answers unless a subclass does
   */
  protected ForwardingFeature(Feature feature) {
    this.feature = Objects.requireNonNull(feature, "feature");
  }

  /** {@return what answers unless a subclass does} */
  protected final Feature feature() {
    return feature;
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
    return feature.metalLost();
  }

  @Override
  public boolean holdsScale() {
    return feature.holdsScale();
  }

  @Override
  public Measure<Length> reach() {
    return feature.reach();
  }

  @Override
  public Trimming trimming() {
    return feature.trimming();
  }

  @Override
  public List<Caution> cautions() {
    return feature.cautions();
  }

  @Override
  public Silhouette outline() {
    return Silhouette.of(feature);
  }

  @Override
  public Working working() {
    return feature.working();
  }
}
