package org.hammerscale.cutting;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;

/**
 * Which bars to take and where to cut them: the answer to a {@link CutList}. It was counted anew in
 * whole steps after the search: every piece is there, on a mark, and no bar is overfull.
 *
 * <pre>{@code
 * CutList list = CutList.of(Bar.of(Section.round(inches("1/2")), Material.MILD_STEEL), SIXTEENTH).kerf(inches("1/8"));
 * list = list.pieces("hook", inches("14 1/2"), 16).pieces("pin", inches("5 1/4"), 6).buying(feet(20)).offcuts(inches(31), 1);
 * CuttingPlan plan = list.plan();
 * plan.bars().get(0)       // 1 × 31 in offcut: mark 14 1/2 in (hook), 19 7/8 in (pin), 25 1/4 in (pin), 30 5/8 in (pin); 1/4 in left
 * plan.longestLeftover()   // 4 1/2 in
 * plan.reached(Aim.FEWEST_BARS)   // bars 2, proven
 * plan.bars().get(1).marks().get(15)   // 224 5/8 in (pin)
 * }</pre>
 */
public final class CuttingPlan {
  private final Counting counting;
  private final List<CutBar> bars;
  private final Map<Aim, Reached> reached = new EnumMap<>(Aim.class);
  private final Map<Aim, Long> values = new EnumMap<>(Aim.class);

  CuttingPlan(Counting counting, List<CutBar> bars, List<Aim> aims, Draft draft, CutSearch search) {
    this.counting = counting;
    this.bars = bars;
    for (Aim aim : aims) {
      long value = draft.value(aim);
      values.put(aim, value);
      reached.put(
          aim, new Reached(aim, number(aim, value), number(aim, search.bound(aim)), unit(aim)));
    }
  }

  private BigDecimal number(Aim aim, long value) {
    return switch (aim) {
      case LEAST_MONEY -> BigDecimal.valueOf(value, counting.scale);
      case LEAST_NEW_STOCK, LONGEST_LEFTOVER ->
          BigDecimal.valueOf(counting.measure(value).getValue()).stripTrailingZeros();
      default -> BigDecimal.valueOf(value);
    };
  }

  private String unit(Aim aim) {
    boolean length = aim == Aim.LEAST_NEW_STOCK || aim == Aim.LONGEST_LEFTOVER;
    return length ? " " + counting.list.rule.step().getUnit() : "";
  }

  private long value(Aim aim) {
    return Objects.requireNonNull(values.get(aim));
  }

  /** {@return the bars: offcuts first, then new ones, the long ones first} */
  public List<CutBar> bars() {
    return bars;
  }

  /**
   * How far the plan reaches in an aim.
   *
   * @param aim any
   * @return value, bound, and whether they are the same
   */
  public Reached reached(Aim aim) {
    return Objects.requireNonNull(reached.get(Objects.requireNonNull(aim, "aim")));
  }

  /** {@return the price of all new bars, exact; zero if no prices were told} */
  public BigDecimal money() {
    return reached(Aim.LEAST_MONEY).value();
  }

  /** {@return the length of all new bars, each rounded down to the rule, in its unit} */
  public Measure<Length> newStock() {
    return counting.measure(value(Aim.LEAST_NEW_STOCK));
  }

  /** {@return how many bars are cut, offcuts included} */
  public int barCount() {
    return (int) value(Aim.FEWEST_BARS);
  }

  /** {@return the longest leftover of a bar that is cut, in the rule's unit} */
  public Measure<Length> longestLeftover() {
    return counting.measure(value(Aim.LONGEST_LEFTOVER));
  }

  /**
   * What to chalk on the bars: a line for each bar, or for several that are cut alike.
   *
   * @return lines, each with its end
   */
  public String cutList() {
    return bars.stream().map(bar -> bar + "\n").collect(Collectors.joining());
  }

  /**
   * What to buy: a line for each length, and the sum if there are prices.
   *
   * @param currency the word behind the sum
   * @return lines, each with its end; {@code nothing to buy} if the offcuts do
   */
  public String buyingList(String currency) {
    Arguments.text("currency", currency);
    StringBuilder text = new StringBuilder();
    counts(false).forEach((length, n) -> text.append(n + " × " + length + "\n"));
    if (text.isEmpty()) {
      return "nothing to buy\n";
    }
    if (counting.isPriced()) {
      text.append("together ").append(money().toPlainString());
      text.append(' ').append(currency).append('\n');
    }
    return text.toString();
  }

  private Map<Measure<Length>, Integer> counts(boolean offcuts) {
    Map<Measure<Length>, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
    bars.stream()
        .filter(bar -> bar.isOffcut() == offcuts)
        .forEach(bar -> counts.merge(bar.length(), bar.count(), Integer::sum));
    return counts;
  }

  /** Bars, money and leftover in a line. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("cut ");
    text.append(barCount()).append(barCount() == 1 ? " bar" : " bars");
    if (counting.isPriced()) {
      text.append(", pay ").append(money().toPlainString());
    }
    String[] between = {": "};
    counts(false)
        .forEach(
            (length, n) -> {
              text.append(between[0]).append(n).append(" × ").append(length);
              between[0] = ", ";
            });
    counts(true)
        .forEach(
            (length, n) -> {
              text.append(between[0]).append(n).append(" × ").append(length).append(" offcut");
              between[0] = ", ";
            });
    return text.append("; longest leftover ").append(longestLeftover()).toString();
  }
}
