package org.hammerscale.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.LongPredicate;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * Pieces to be cut from bars of one section and material: what is wanted, which offcuts lie in the
 * rack, what can be bought, and what the saw takes. {@link #plan(Aim...)} answers which bars to buy
 * and where to cut.
 *
 * <p>The rule of the saw: pieces fit a bar if their lengths and a kerf between each two are not
 * longer than the bar less its end trim. The last cut takes what is left if that is no more than a
 * kerf; otherwise a kerf, and the rest is left over. Lengths are counted in whole steps of a rule:
 * pieces, kerf and trim are rounded up to it, bars down.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(millimetres(40), millimetres(6)), Material.MILD_STEEL);
 * CutList list = CutList.of(strap, MILLIMETRE).kerf(millimetres(2)).endTrim(millimetres(20));
 * list = list.pieces("gate strap", millimetres(1450), 4).pieces("door strap", millimetres(900), 4);
 * list = list.pieces("latch bar", millimetres(330), 2).offcuts(millimetres(1500), 1);
 * list = list.buying(metres(6), new BigDecimal("31.50")).buying(metres(3), new BigDecimal("17.25"));
 * list.plan()                            // cut 3 bars, pay 48.75: 1 × 6 m, 1 × 3 m, 1 × 1500 mm offcut; longest leftover 294 mm
 * list.plan().reached(Aim.LEAST_MONEY)   // money 48.75, proven
 * list.plan().bars().get(0)              // 1 × 1500 mm offcut: from 20 mm, mark 1470 mm (gate strap); 28 mm left
 * }</pre>
 *
 * <p>The same list always has the same plan, in whatever order its lines were told. Source: cutting
 * stock by column generation, P. C. Gilmore and R. E. Gomory, 1961 (from memory), and trying every
 * way where that leaves a doubt; checked against trying all plans of small lists. Other names:
 * {@index nesting}, {@index "bar optimisation"}, {@index "cutting stock problem"}, {@index "saw
 * list"}, {@index kerf}.
 */
public final class CutList {
  /** The most work of a plan unless told otherwise, in steps of the search: some seconds. */
  public static final long USUAL_STEPS = 2_000_000_000;

  private static final int MOST_PIECES = 50_000;
  private static final int MOST_DECIMALS = 6;
  private static final int MOST_DIGITS = 9;

  final Bar bar;
  final Graduation<Length> rule;
  final List<Wanted> wanted;
  final List<OnOffer> offers;
  final List<Offcut> offcuts;
  final Measure<Length> kerf;
  final Measure<Length> endTrim;
  final Measure<Length> leastOffcut;

  /** Pieces of one name. */
  record Wanted(String name, Measure<Length> length, int count) {}

  /** New bars; the price is null if none was told. */
  record OnOffer(Measure<Length> length, @Nullable BigDecimal price, int most) {}

  /** Offcuts of one length. */
  record Offcut(Measure<Length> length, int count) {}

  private CutList(
      Bar bar,
      Graduation<Length> rule,
      List<Wanted> wanted,
      List<OnOffer> offers,
      List<Offcut> offcuts,
      List<Measure<Length>> saw) {
    this.bar = bar;
    this.rule = rule;
    this.wanted = wanted;
    this.offers = offers;
    this.offcuts = offcuts;
    this.kerf = saw.get(0);
    this.endTrim = saw.get(1);
    this.leastOffcut = saw.get(2);
  }

  /**
   * An empty list: no pieces, no bars, no kerf, no trim.
   *
   * @param bar section and material of all its bars
   * @param rule the marks that are chalked; every length is counted in its steps
   * @return the list, to which pieces and bars must still be told
   */
  public static CutList of(Bar bar, Graduation<Length> rule) {
    Measure<Length> none = Objects.requireNonNull(rule, "rule").step().withValue(0);
    return new CutList(
        Objects.requireNonNull(bar, "bar"),
        rule,
        List.of(),
        List.of(),
        List.of(),
        List.of(none, none, none));
  }

  /**
   * The same with more pieces.
   *
   * @param name what they are, for the chalk; the same name may be told again
   * @param length of each, more than zero, rounded up to the rule
   * @param count how many, at least 1
   * @return the list
   * @throws IllegalArgumentException if the name is blank, the length not more than zero, or there
   *     are none or more than 50 000 pieces in all
   */
  public CutList pieces(String name, Quantity<Length> length, int count) {
    Wanted more =
        new Wanted(
            Arguments.text("name of the pieces", name),
            Arguments.positive("length of " + name, length),
            counted("count of " + name, count));
    long all = count + wanted.stream().mapToLong(Wanted::count).sum();
    if (all > MOST_PIECES) {
      throw new IllegalArgumentException(
          "pieces must be at most " + MOST_PIECES + ", was " + all + "; plan the list in parts");
    }
    return new CutList(bar, rule, joined(wanted, more), offers, offcuts, saw());
  }

  /**
   * The same with more pieces that are laid out on a rule, each cut as long as its odds ask.
   *
   * @param name what they are
   * @param piece one of them, of this list's bar
   * @param count how many, at least 1
   * @return the list
   * @throws IllegalArgumentException if the piece is of another bar, or as {@link #pieces(String,
   *     Quantity, int)} says
   */
  public CutList pieces(String name, MarkedBar piece, int count) {
    Bar its = Objects.requireNonNull(piece, "piece").layout().piece().bar();
    if (!isOfSameStock(bar, its)) {
      throw new IllegalArgumentException(
          name
              + " must be of the list's bar, "
              + bar
              + ", was of "
              + its
              + "; make a list for each section and material");
    }
    return pieces(name, piece.cutLength(), count);
  }

  /** Whether two bars are of the same material and section, in whatever units they are told. */
  static boolean isOfSameStock(Bar one, Bar other) {
    return one.material().equals(other.material()) && one.section().meets(other.section());
  }

  /**
   * The same with new bars of a length that need no price and never run out.
   *
   * @param length of a bar, more than zero, rounded down to the rule
   * @return the list
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public CutList buying(Quantity<Length> length) {
    return buying(new OnOffer(Arguments.positive("length of bar", length), null, MOST_PIECES));
  }

  /**
   * The same with new bars of a length and price that never run out.
   *
   * @param length of a bar, more than zero, rounded down to the rule
   * @param price of one bar, in any currency: from 0 to less than a thousand million, with six
   *     decimals at most; the plan's sums are exact
   * @return the list
   * @throws IllegalArgumentException if the length is not more than zero or the price is none such
   */
  public CutList buying(Quantity<Length> length, BigDecimal price) {
    return buying(length, price, MOST_PIECES);
  }

  /**
   * The same with a limited number of new bars of a length and price.
   *
   * @param length of a bar, more than zero, rounded down to the rule
   * @param price of one bar, as {@link #buying(Quantity, BigDecimal)} says
   * @param most how many there are, at least 1
   * @return the list
   * @throws IllegalArgumentException if the length is not more than zero, the price is none such,
   *     or there are none
   */
  public CutList buying(Quantity<Length> length, BigDecimal price, int most) {
    Measure<Length> each = Arguments.positive("length of bar", length);
    if (Objects.requireNonNull(price, "price").signum() < 0
        || price.scale() > MOST_DECIMALS
        || price.precision() - price.scale() > MOST_DIGITS) {
      throw new IllegalArgumentException(
          "price of a bar of "
              + each
              + " must be from 0 to less than a thousand million, with six decimals at most, was "
              + price
              + "; give what one bar costs");
    }
    return buying(new OnOffer(each, price, counted("number of bars of " + each, most)));
  }

  private CutList buying(OnOffer offer) {
    return new CutList(bar, rule, wanted, joined(offers, offer), offcuts, saw());
  }

  /**
   * The same with offcuts that lie in the rack. They cost nothing; each is trimmed like a bar.
   *
   * @param length of each, more than zero, rounded down to the rule
   * @param count how many, at least 1
   * @return the list
   * @throws IllegalArgumentException if the length is not more than zero, or there are none
   */
  public CutList offcuts(Quantity<Length> length, int count) {
    Measure<Length> each = Arguments.positive("length of offcut", length);
    Offcut more = new Offcut(each, counted("number of offcuts of " + each, count));
    return new CutList(bar, rule, wanted, offers, joined(offcuts, more), saw());
  }

  /**
   * The same with another kerf.
   *
   * @param width of the saw's cut, not negative, rounded up to the rule
   * @return the list
   * @throws IllegalArgumentException if the width is negative
   */
  public CutList kerf(Quantity<Length> width) {
    return with(
        Arguments.notNegative("kerf", Objects.requireNonNull(width, "width")),
        endTrim,
        leastOffcut);
  }

  /**
   * The same with another end trim: what is cut off each bar once, kerf included, before the first
   * piece is measured.
   *
   * @param length of it, not negative, rounded up to the rule
   * @return the list
   * @throws IllegalArgumentException if the length is negative
   */
  public CutList endTrim(Quantity<Length> length) {
    return with(
        kerf,
        Arguments.notNegative("end trim", Objects.requireNonNull(length, "length")),
        leastOffcut);
  }

  /**
   * The same with another least useful offcut. It changes no plan: what is left over is called an
   * offcut from this length on, else scrap.
   *
   * @param length of it, not negative
   * @return the list
   * @throws IllegalArgumentException if the length is negative
   */
  public CutList leastOffcut(Quantity<Length> length) {
    return with(
        kerf,
        endTrim,
        Arguments.notNegative("least useful offcut", Objects.requireNonNull(length, "length")));
  }

  private CutList with(Measure<Length> kerf, Measure<Length> trim, Measure<Length> least) {
    return new CutList(bar, rule, wanted, offers, offcuts, List.of(kerf, trim, least));
  }

  /** The same of a bar told in other units, counted in the steps of another rule. */
  CutList on(Bar same, Graduation<Length> other) {
    return new CutList(same, Objects.requireNonNull(other, "rule"), wanted, offers, offcuts, saw());
  }

  private List<Measure<Length>> saw() {
    return List.of(kerf, endTrim, leastOffcut);
  }

  /**
   * Plans the cuts, with the {@linkplain #USUAL_STEPS usual} limit of work.
   *
   * @param aims in rank; those not named follow in the order of {@link Aim}, money, new stock and
   *     bars always before leftover and patterns
   * @return the plan, which tells of each aim whether it is proved to be the best
   * @throws IllegalArgumentException if the pieces cannot be cut from these bars, naming the piece
   *     that is too long; if there are no pieces or bars, prices on some bars only, an aim named
   *     twice or out of its group, or numbers too great to be counted
   * @throws IllegalStateException if the limit ended the search before any plan was found
   */
  public CuttingPlan plan(Aim... aims) {
    return plan(USUAL_STEPS, steps -> true, aims);
  }

  /**
   * Plans the cuts, within a limit of work. There is always a plan if bars do not run out; more
   * work makes it better, or proves that it cannot be.
   *
   * @param mostSteps of the search, more than zero; the same on every machine
   * @param goOn told again and again, within milliseconds, how many steps are done; the search ends
   *     early if it answers false
   * @param aims in rank, as {@link #plan(Aim...)} says
   * @return the plan
   * @throws IllegalArgumentException as {@link #plan(Aim...)} says
   * @throws IllegalStateException as {@link #plan(Aim...)} says
   */
  public CuttingPlan plan(long mostSteps, LongPredicate goOn, Aim... aims) {
    if (mostSteps <= 0) {
      throw new IllegalArgumentException(
          "most steps must be more than zero, was "
              + mostSteps
              + "; a million find a plan, some hundred millions mostly prove it");
    }
    Objects.requireNonNull(goOn, "goOn");
    for (Aim aim : Objects.requireNonNull(aims, "aims")) {
      Objects.requireNonNull(aim, "aim");
    }
    List<Aim> ranked = Aim.ranked(List.of(aims));
    return new Counting(this).plan(ranked, new Work(mostSteps, goOn));
  }

  private static int counted(String name, int count) {
    if (count < 1 || count > MOST_PIECES) {
      throw new IllegalArgumentException(
          name
              + " must be 1 to "
              + MOST_PIECES
              + ", was "
              + count
              + "; leave out what there is none of");
    }
    return count;
  }

  private static <T> List<T> joined(List<T> some, T more) {
    List<T> joined = new ArrayList<>(some);
    joined.add(more);
    return List.copyOf(joined);
  }

  /** What is to be cut from which bar. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("cut from ").append(bar).append(": ");
    for (int i = 0; i < wanted.size(); i++) {
      Wanted w = wanted.get(i);
      text.append(i == 0 ? "" : ", ").append(w.count).append(" × ").append(w.name);
      text.append(' ').append(w.length);
    }
    return text.append(wanted.isEmpty() ? "nothing yet" : "").toString();
  }
}
