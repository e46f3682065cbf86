package org.hammerscale.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measures;
import org.jspecify.annotations.Nullable;

/**
 * Metal that a feature uses but does not keep, by cause: a punched slug, a sawn slot, what is
 * trimmed. What the fire takes as scale is not the feature's and is not counted here, unless the
 * feature {@linkplain Feature#holdsScale says so}.
 */
public final class Losses {
  /** Nothing is lost. */
  public static final Losses NONE = new Losses(List.of());

  private final List<Loss> losses;

  private record Loss(String cause, Estimate<Volume> metal) {}

  private Losses(List<Loss> losses) {
    this.losses = losses;
  }

  /**
   * These losses and one more.
   *
   * @param cause what takes the metal, such as {@code slug}
   * @param metal how much it takes; likely not negative. At its low end it may be, where a stretch
   *     may come out of less metal than its geometry asks for
   * @return the losses
   * @throws IllegalArgumentException if the cause is blank or the likely metal negative
   */
  public Losses and(String cause, Estimate<Volume> metal) {
    Objects.requireNonNull(metal, "metal");
    if (metal.likely().getValue() < 0) {
      throw new IllegalArgumentException(
          "metal lost as "
              + cause
              + " must not be negative, was "
              + metal
              + "; count only what is taken away");
    }
    List<Loss> all = new ArrayList<>(losses);
    all.add(new Loss(Arguments.text("cause", cause), metal));
    return new Losses(List.copyOf(all));
  }

  /**
   * The metal used: what is kept and what is lost, erring together.
   *
   * @param kept the metal kept
   * @return the sum, in the unit of the metal kept
   */
  public Estimate<Volume> addedTo(Estimate<Volume> kept) {
    Objects.requireNonNull(kept, "kept");
    Estimate<Volume> used = kept;
    for (Loss loss : losses) {
      used = used.addDependent(loss.metal());
    }
    return used;
  }

  /**
   * All losses together.
   *
   * @return the sum; zero cubic millimetres if there are none
   */
  public Estimate<Volume> total() {
    Estimate<Volume> none =
        Estimate.exact(
            Measures.volume(
                Measures.millimetres(0),
                Measures.area(Measures.millimetres(0), Measures.millimetres(0))));
    return isNone()
        ? none
        : new Losses(losses.subList(1, losses.size())).addedTo(losses.get(0).metal());
  }

  /** {@return whether nothing is lost} */
  public boolean isNone() {
    return losses.isEmpty();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Losses that && losses.equals(that.losses);
  }

  @Override
  public int hashCode() {
    return Objects.hash(losses);
  }

  /** Each cause with its metal. */
  @Override
  public String toString() {
    if (isNone()) {
      return "nothing lost";
    }
    StringBuilder text = new StringBuilder();
    for (Loss loss : losses) {
      text.append(text.isEmpty() ? "" : ", ").append(loss.cause()).append(" ").append(loss.metal());
    }
    return text.toString();
  }
}
