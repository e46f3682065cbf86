package org.hammerscale.piece;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * What the trials of a piece teach of one trimmed end: how much bar the features between the
 * reference mark and that end take together. Lengths of bar count from the reference mark, in the
 * unit of the bar's width.
 *
 * <p>What pieces take is normal, its mean and its spread from piece to piece unknown. Beforehand
 * the book's likely value is worth κ₀ trials and its spread ν₀. With n trials of mean ȳ the next
 * piece is expected to take μ = μ₀ + n (ȳ − μ₀)/(κ₀ + n), and enough for it with odds p is
 *
 * <p>B = μ + t(ν₀ + n, p) √(S/(ν₀ + n) (1 + 1/(κ₀ + n))), with S = ν₀ s₀² + Σ(y − ȳ)² + κ₀ n (ȳ −
 * μ₀)²/(κ₀ + n),
 *
 * <p>t being Student's quantile: a one-sided {@index "prediction bound"}. The book's spread s₀ is
 * the one with which, before the first trial, 19 pieces in 20 stay below the high value of its
 * estimate.
 *
 * <p>Source: conjugate prior of the normal distribution, as in textbooks of Bayesian statistics,
 * from memory; the law itself is checked by simulated shops.
 */
public final class EndTrials {
  private static final double NINETEEN_IN_TWENTY = 0.95;
  private static final double BY_CHANCE = 0.05;
  private static final Source LAW =
      Source.fromMemory(
          "Gelman and others, Bayesian Data Analysis, 3rd edition, 2013",
          "sec. 3.3: normal data with a conjugate prior");

  private final PieceEnd end;
  private final Estimate<Length> book;
  private final ShopModel model;

  EndTrials(PieceEnd end, Estimate<Length> book, ShopModel model) {
    this.end = end;
    this.book = book;
    this.model = model;
  }

  /** {@return the end} */
  public PieceEnd end() {
    return end;
  }

  /** {@return how many trials tell what was cut off at this end} */
  public int count() {
    return model.count();
  }

  /** {@return what the features on this side take by the layout, before any trial} */
  public Estimate<Length> book() {
    return book;
  }

  /** {@return what they have taken on average; by the layout if there are no trials} */
  public Measure<Length> mean() {
    return measure(model.mean());
  }

  /**
   * {@return what the next piece takes: book and trials together, nine of ten between low and high}
   */
  public Estimate<Length> next() {
    if (count() == 0) {
      return book;
    }
    double expected = model.expected();
    double above = model.bound(Notes.NONE, NINETEEN_IN_TWENTY) - expected;
    return Estimate.of(measure(expected - above), measure(expected), measure(expected + above));
  }

  /**
   * How much bar is enough on this side for the next piece: B. An extra trial that turns out as
   * expected never raises it.
   *
   * @param odds p, from 0.5 to 0.9999: 0.95 for 19 times in 20
   * @return the length from the reference mark, an upper prediction bound
   * @throws IllegalArgumentException if the odds are out of range
   */
  public Measure<Length> bound(double odds) {
    return measure(model.bound(Notes.NONE, odds("odds", odds)));
  }

  /**
   * How much bar is enough by the trials alone, as if there were no book: the classical one-sided
   * prediction bound ȳ + t(n − 1, p) s √(1 + 1/n). It is what {@link #bound} becomes where book and
   * its spread weigh nothing.
   *
   * @param odds p, from 0.5 to 0.9999: 0.95 for 19 times in 20
   * @return the length from the reference mark
   * @throws IllegalArgumentException if there are fewer than two trials or the odds are out of
   *     range
   */
  public Measure<Length> classicalBound(double odds) {
    odds("odds", odds);
    if (count() < 2) {
      throw new IllegalArgumentException(
          "trials must be at least 2 for the classical bound, was "
              + count()
              + "; ask bound(odds), which goes by the book as well");
    }
    return measure(model.classicalBound(odds));
  }

  /**
   * How often a length of bar on this side is enough for the next piece.
   *
   * @param fromReference the length from the reference mark to this end of the cut bar
   * @return the odds, 0 to 1
   * @throws IllegalArgumentException if it is not a length
   */
  public double odds(Quantity<Length> fromReference) {
    return model.odds(Arguments.length("fromReference", fromReference).in(unit()));
  }

  /** {@return how much a piece still varies from the next: the standard deviation} */
  public Measure<Length> spread() {
    return measure(model.spread());
  }

  /**
   * How often chance alone would put the mean of the trials so far from the book: Student's test on
   * both sides, the spread taken from the trials and from what was expected of it.
   *
   * @return the odds, 0 to 1; 1 without trials
   */
  public double chance() {
    return model.chance();
  }

  /**
   * {@return whether this shop takes more or less than the book by more than chance, which would do
   * so once in 20 times}
   */
  public boolean differsFromBook() {
    return chance() < BY_CHANCE;
  }

  /**
   * How much is enough, with its reasons.
   *
   * @param odds as {@link #bound} takes them
   * @return the working
   * @throws IllegalArgumentException if the odds are out of range
   */
  public Working working(double odds) {
    odds("odds", odds);
    return Notes.taken("bar for the next piece, to the " + end, unit(), n -> model.bound(n, odds))
        .withSource(LAW);
  }

  static double odds(String name, double odds) {
    if (!(odds >= 0.5 && odds <= 0.9999)) {
      throw new IllegalArgumentException(
          name
              + " must lie between 0.5 and 0.9999, was "
              + odds
              + "; give 0.95 for what is enough 19 times in 20");
    }
    return odds;
  }

  private Unit<Length> unit() {
    return book.likely().getUnit();
  }

  private Measure<Length> measure(double value) {
    return book.likely().withValue(value);
  }

  /** End, number of trials, what the next piece takes. */
  @Override
  public String toString() {
    return end
        + ", "
        + count()
        + (count() == 1 ? " trial" : " trials")
        + ": next "
        + next()
        + " by the book "
        + book.likely();
  }
}
