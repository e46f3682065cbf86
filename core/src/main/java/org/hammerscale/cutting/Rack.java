package org.hammerscale.cutting;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Graduation;

/**
 * What lies in the rack and what can be bought, of many sections and materials. It begins a {@link
 * CutList} for any of them.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
 * Bar pin = Bar.of(Section.round(inches("1/2")), Material.MILD_STEEL);
 * Rack rack = Rack.empty().offcuts(strap, inches(40), 2).buying(strap, feet(20), new BigDecimal("42.00"));
 * rack = rack.buying(pin, feet(12), new BigDecimal("9.60"));
 * rack.cutList(pin, SIXTEENTH).pieces("pin", inches(6), 4).plan()   // cut 1 bar, pay 9.60: 1 × 12 ft; longest leftover 120 in
 * rack.has(Bar.of(pin.section(), Material.WROUGHT_IRON))            // false
 * }</pre>
 */
public final class Rack {
  private static final Rack EMPTY = new Rack(new LinkedHashMap<>());

  /** What there is of each bar, as a list without pieces. */
  private final Map<Bar, CutList> lists;

  private Rack(Map<Bar, CutList> lists) {
    this.lists = lists;
  }

  /** {@return a rack with nothing in it} */
  public static Rack empty() {
    return EMPTY;
  }

  /**
   * The same with offcuts.
   *
   * @param bar their section and material
   * @param length of each, more than zero
   * @param count how many, at least 1
   * @return the rack
   * @throws IllegalArgumentException as {@link CutList#offcuts}
   */
  public Rack offcuts(Bar bar, Quantity<Length> length, int count) {
    return with(bar, list -> list.offcuts(length, count));
  }

  /**
   * The same with new bars that need no price and never run out.
   *
   * @param bar their section and material
   * @param length of each, more than zero
   * @return the rack
   * @throws IllegalArgumentException as {@link CutList#buying(Quantity)}
   */
  public Rack buying(Bar bar, Quantity<Length> length) {
    return with(bar, list -> list.buying(length));
  }

  /**
   * The same with new bars that never run out.
   *
   * @param bar their section and material
   * @param length of each, more than zero
   * @param price of one bar, not negative
   * @return the rack
   * @throws IllegalArgumentException as {@link CutList#buying(Quantity, BigDecimal)}
   */
  public Rack buying(Bar bar, Quantity<Length> length, BigDecimal price) {
    return with(bar, list -> list.buying(length, price));
  }

  /**
   * The same with a limited number of new bars.
   *
   * @param bar their section and material
   * @param length of each, more than zero
   * @param price of one bar, not negative
   * @param most how many there are, at least 1
   * @return the rack
   * @throws IllegalArgumentException as {@link CutList#buying(Quantity, BigDecimal, int)}
   */
  public Rack buying(Bar bar, Quantity<Length> length, BigDecimal price, int most) {
    return with(bar, list -> list.buying(length, price, most));
  }

  private Rack with(Bar bar, UnaryOperator<CutList> line) {
    Map<Bar, CutList> more = new LinkedHashMap<>(lists);
    more.put(bar, line.apply(cutList(bar, Graduation.MILLIMETRE)));
    return new Rack(more);
  }

  /**
   * Whether there is anything of a section and material.
   *
   * @param bar section and material, each by its {@code equals}
   * @return whether the rack has or can buy it
   */
  public boolean has(Bar bar) {
    return lists.containsKey(bar);
  }

  /**
   * Begins a cut list from what the rack has of a bar.
   *
   * @param bar section and material
   * @param rule the marks that are chalked
   * @return the list, without bars if there are none, to which the pieces must still be told
   */
  public CutList cutList(Bar bar, Graduation<Length> rule) {
    CutList list = lists.get(bar);
    return list == null ? CutList.of(bar, rule) : list.on(rule);
  }

  /** Of which bars it has something. */
  @Override
  public String toString() {
    return lists.isEmpty()
        ? "empty rack"
        : lists.keySet().stream()
            .map(Bar::toString)
            .collect(Collectors.joining("; ", "rack of ", ""));
  }
}
