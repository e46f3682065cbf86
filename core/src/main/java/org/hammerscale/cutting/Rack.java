package org.hammerscale.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Graduation;

/**
 * What lies in the rack and what can be bought, at what {@index price}, of many sections and
 * materials. It begins a {@link CutList} for any of them. Other names: {@index offcut} or {@index
 * drop}, {@index remnant}.
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
  private static final Rack EMPTY = new Rack(List.of());

  /** What there is of each bar, as a list without pieces. */
  private final List<CutList> lists;

  private Rack(List<CutList> lists) {
    this.lists = List.copyOf(lists);
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
    List<CutList> more = new ArrayList<>(lists);
    Optional<CutList> known = known(bar);
    CutList next = line.apply(known.orElseGet(() -> CutList.of(bar, Graduation.MILLIMETRE)));
    known.ifPresentOrElse(
        list -> more.replaceAll(each -> each == list ? next : each), () -> more.add(next));
    return new Rack(more);
  }

  /**
   * Whether there is anything of a section and material.
   *
   * @param bar section and material; 1/2 in round is 12.7 mm round
   * @return whether the rack has or can buy it
   */
  public boolean has(Bar bar) {
    return known(bar).isPresent();
  }

  /**
   * Begins a cut list from what the rack has of a bar.
   *
   * @param bar section and material
   * @param rule the marks that are chalked
   * @return the list, without bars if there are none, to which the pieces must still be told
   */
  public CutList cutList(Bar bar, Graduation<Length> rule) {
    return known(bar).map(list -> list.on(bar, rule)).orElseGet(() -> CutList.of(bar, rule));
  }

  private Optional<CutList> known(Bar bar) {
    Objects.requireNonNull(bar, "bar");
    return lists.stream().filter(list -> CutList.isOfSameStock(list.bar, bar)).findFirst();
  }

  /** Of which bars it has something. */
  @Override
  public String toString() {
    return lists.isEmpty()
        ? "empty rack"
        : lists.stream()
            .map(list -> list.bar.toString())
            .collect(Collectors.joining("; ", "rack of ", ""));
  }
}
