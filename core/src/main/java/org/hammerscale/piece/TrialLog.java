package org.hammerscale.piece;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.StudentT;
import org.hammerscale.stock.Trimming;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/**
 * The trials of one piece, and what the next one takes by them. The first is planned by the book;
 * what was trimmed off each is turned back into bar, and the others are cut from that.
 *
 * <pre>{@code
 * Section flat = Section.flat(inches("1 1/2"), inches("1/4"));
 * Taper tip = Taper.between(flat, Section.flat(inches("3/4"), inches("1/8")), inches(6));
 * Layout book = Piece.of(Bar.of(flat, Material.MILD_STEEL), Plain.of(flat, inches(9)), tip).layout();
 * Trial first = Trial.cut(inches("12 7/8"));
 * TrialLog log = TrialLog.of(book).with(first.off(PieceEnd.LAST, inches("5/16"), flat), first.off(PieceEnd.LAST, inches("1/4"), flat));
 * log.at(PieceEnd.LAST).next()                // 12 9/16 in (12.4503 in to 12.6747 in)
 * log.layout().on(SIXTEENTH).cutLength()      // 12 11/16 in
 * }</pre>
 *
 * <p>An end that is cut to its length before it is worked, as the strip of a barrel is, teaches
 * nothing: what is cut off there was planned. The other end of the same piece does. Logs of the
 * same piece from several orders combine: {@code log.with(other.trials())}.
 *
 * <p>A trim is a single total for all the features between the reference mark and its end. It
 * cannot be shared out to them; where marks must move, each moves by its part of the spread, as the
 * layout has them err together.
 */
public final class TrialLog {
  private static final int MOST = 100_000;
  private static final double MOST_WORTH = 1000;

  /** What a cut and a trim are read to: nothing that is forged repeats more closely. */
  private static final Measure<Length> LEAST_SPREAD = Measure.of(0.4, ShopUnits.MILLIMETRE);

  private static final Source SHARED =
      Source.computed("one trim is one equation, whatever the number of features");

  private final Layout book;
  private final double meanWorth;
  private final double spreadWorth;
  private final Optional<Measure<Length>> spread;
  private final List<Trial> trials;
  private final List<EndTrials> ends;

  private TrialLog(
      Layout book,
      double meanWorth,
      double spreadWorth,
      Optional<Measure<Length>> spread,
      List<Trial> trials) {
    this.book = book;
    this.meanWorth = meanWorth;
    this.spreadWorth = spreadWorth;
    this.spread = spread;
    this.trials = trials;
    List<EndTrials> learning = new ArrayList<>(2);
    for (PieceEnd end : PieceEnd.values()) {
      Taking side = Taking.of(book, end);
      if (side.trimming().filter(Trimming.AFTER_WORK::equals).isPresent()) {
        learning.add(learned(end, side));
      }
    }
    this.ends = List.copyOf(learning);
  }

  /**
   * A log without trials.
   *
   * @param layout the piece as the book lays it out, with its heats if they are planned
   * @return the log; the book's likely value is worth one trial in it, and its spread two
   * @throws IllegalArgumentException if the piece is trimmed at no end after the work, or the
   *     layout is corrected by a log already
   */
  public static TrialLog of(Layout layout) {
    if (Objects.requireNonNull(layout, "layout").log().isPresent()) {
      throw new IllegalArgumentException(
          "layout must be the book's, was one that a log has corrected; add trials to that log");
    }
    TrialLog log = new TrialLog(layout, 1, 2, Optional.empty(), List.of());
    if (log.ends.isEmpty()) {
      throw new IllegalArgumentException(
          "layout must have an end that is trimmed after the work, was a "
              + layout.piece()
              + "; name a free end with trimmedAt(…)");
    }
    return log;
  }

  /**
   * The same log with more trials; their order does not matter.
   *
   * @param more what further pieces took
   * @return the log
   * @throws IllegalArgumentException if one does not fit the piece, or tells of no end that is
   *     trimmed after the work
   */
  public TrialLog with(Trial... more) {
    return with(Arrays.asList(Objects.requireNonNull(more, "more")));
  }

  /**
   * The same log with more trials, such as those of another order for the same piece.
   *
   * @param more what further pieces took
   * @return the log
   * @throws IllegalArgumentException if one does not fit the piece, or tells of no end that is
   *     trimmed after the work
   */
  public TrialLog with(Collection<Trial> more) {
    List<Trial> all = new ArrayList<>(trials);
    all.addAll(List.copyOf(Objects.requireNonNull(more, "more")));
    Arguments.count("more", all.size(), 0, MOST, "a log holds so many trials at most");
    for (Trial trial : all.subList(trials.size(), all.size())) {
      if (ends.stream().noneMatch(each -> trial.off(each.end()).isPresent())) {
        throw new IllegalArgumentException(
            "more must tell what was cut off at the "
                + ends.get(0).end()
                + ", was "
                + trial
                + "; write 0 if there was nothing to cut off");
      }
    }
    return new TrialLog(book, meanWorth, spreadWorth, spread, List.copyOf(all));
  }

  /**
   * The same log with another weight for the book's likely value: κ₀. The less it is, the sooner
   * the pieces outvote a book that is wrong for this shop; with 1, a first piece far from the book
   * makes the next bound wider before it makes it lower.
   *
   * @param pieces how many trials it is worth, more than 0 and at most 1000; 1 unless told
   * @return the log
   * @throws IllegalArgumentException if it is out of range
   */
  public TrialLog withMeanWorth(double pieces) {
    Arguments.number("pieces", pieces, MOST_WORTH, "1 is as much as one piece of your own");
    return new TrialLog(book, pieces, spreadWorth, spread, trials);
  }

  /**
   * The same log with another weight for the book's spread: ν₀.
   *
   * @param pieces how many trials it is worth, 1 to 1000; 2 unless told
   * @return the log
   * @throws IllegalArgumentException if it is out of range
   */
  public TrialLog withSpreadWorth(double pieces) {
    Arguments.number("pieces", pieces, MOST_WORTH, "2 is as much as two pieces of your own");
    if (pieces < 1) {
      throw new IllegalArgumentException(
          "pieces must be at least 1, was "
              + pieces
              + "; less would leave a spread without bounds");
    }
    return new TrialLog(book, meanWorth, pieces, spread, trials);
  }

  /**
   * The same log with the shop's own spread from piece to piece in place of the book's: s₀.
   *
   * @param deviation the standard deviation, more than zero
   * @return the log
   * @throws IllegalArgumentException if it is not more than zero
   */
  public TrialLog withSpread(Quantity<Length> deviation) {
    return new TrialLog(
        book,
        meanWorth,
        spreadWorth,
        Optional.of(Arguments.positive("deviation", deviation)),
        trials);
  }

  private EndTrials learned(PieceEnd end, Taking side) {
    Estimate<Length> taken = side.all();
    Unit<Length> unit = taken.likely().getUnit();
    double[] outcomes =
        trials.stream()
            .map(trial -> trial.taken(end, book.piece(), side.section()))
            .flatMap(Optional::stream)
            .mapToDouble(outcome -> outcome.in(unit))
            .toArray();
    double deviation = spread.map(own -> own.in(unit)).orElseGet(() -> deviation(taken));
    return new EndTrials(
        end,
        taken,
        ShopModel.of(taken.likely().in(unit), meanWorth, spreadWorth, deviation, outcomes));
  }

  /** The spread with which 19 first pieces in 20 stay below the book's high value. */
  private double deviation(Estimate<Length> taken) {
    Unit<Length> unit = taken.likely().getUnit();
    double above = taken.high().in(unit) - taken.likely().in(unit);
    double half = above > 0 ? above : taken.likely().in(unit) - taken.low().in(unit);
    double own = half / (StudentT.quantile(spreadWorth, 0.95) * Math.sqrt(1 + 1 / meanWorth));
    return Math.max(own, LEAST_SPREAD.in(unit));
  }

  /** {@return the trials in the order they were written down} */
  public List<Trial> trials() {
    return trials;
  }

  /** {@return the layout by the book} */
  public Layout book() {
    return book;
  }

  /** {@return the ends that are trimmed after the work, and what is known of each} */
  public List<EndTrials> ends() {
    return ends;
  }

  /**
   * What is known of one end.
   *
   * @param end an end that is trimmed after the work
   * @return what the trials teach of it
   * @throws IllegalArgumentException if it is not trimmed then
   */
  public EndTrials at(PieceEnd end) {
    return learnedAt(Objects.requireNonNull(end, "end"))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "end must be trimmed after the work, was the "
                        + end
                        + "; ask for the "
                        + end.other()));
  }

  Optional<EndTrials> learnedAt(PieceEnd end) {
    return ends.stream().filter(each -> each.end() == end).findFirst();
  }

  /**
   * The layout as the trials correct it: the next piece. Put {@linkplain Layout#on on a rule} it
   * tells what to cut with given odds, where to punch and what will be trimmed.
   *
   * @return the layout with its marks moved; the book's if there are no trials
   */
  public Layout layout() {
    return trials.isEmpty() ? book : book.correctedBy(this);
  }

  /** {@return what to know before trusting it} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    for (EndTrials each : ends) {
      if (each.count() > 0 && isShared(each.end())) {
        cautions.add(
            Caution.limit(
                "what was trimmed at the "
                    + each.end()
                    + " is one total and cannot be shared out to its features: the marks between"
                    + " them move by their part of the spread",
                SHARED));
      }
      if (each.differsFromBook()) {
        cautions.add(
            Caution.limit(
                "this shop takes "
                    + (each.mean().isGreaterThan(each.book().likely()) ? "more" : "less")
                    + " bar than the book at the "
                    + each.end()
                    + " by more than chance: look for the cause, then give the features allowances"
                    + " of your own",
                Source.computed("Student's test of the mean of the trials against the book's")));
      }
    }
    return List.copyOf(cautions);
  }

  /** Whether more than one feature of a side is moved. */
  private boolean isShared(PieceEnd end) {
    Taking side = Taking.of(book, end);
    return IntStream.range(0, side.count())
            .filter(i -> layout().correctionOf(side.index(i)).getValue() != 0)
            .count()
        > 1;
  }

  /** How many trials, and what is known of each end. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("log of ").append(trials.size());
    text.append(trials.size() == 1 ? " trial" : " trials");
    for (EndTrials each : ends) {
      text.append("\n  ").append(each);
    }
    return text.toString();
  }
}
