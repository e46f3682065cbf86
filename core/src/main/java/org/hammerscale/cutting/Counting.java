package org.hammerscale.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import javax.measure.quantity.Length;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;

/** A cut list in whole steps of its rule, on the way to the search and back. */
final class Counting {
  private static final long MOST_STEPS = 200_000;

  final CutList list;
  final int kerf;
  final int trim;
  final List<CutList.Wanted> wanted;
  final List<CutList.OnOffer> offers;
  final List<Measure<Length>> offcuts = new ArrayList<>();

  /** Decimal places of the prices. */
  final int scale;

  Counting(CutList list) {
    this.list = list;
    this.kerf = up("kerf", list.kerf);
    this.trim = up("end trim", list.endTrim);
    // Sorted, so that the order in which they were told changes nothing.
    wanted = new ArrayList<>(list.wanted);
    wanted.sort(
        Comparator.comparing(CutList.Wanted::length)
            .reversed()
            .thenComparing(CutList.Wanted::name));
    if (wanted.isEmpty()) {
      throw new IllegalArgumentException(
          "pieces must be at least 1, was 0; say them with pieces(…)");
    }
    checkLongest();
    int shortest = up(wanted.get(wanted.size() - 1));
    offers =
        new ArrayList<>(list.offers.stream().filter(o -> usable(o.length()) >= shortest).toList());
    offers.sort(
        Comparator.comparing(CutList.OnOffer::length)
            .reversed()
            .thenComparing(Counting::price)
            .thenComparing(CutList.OnOffer::most));
    for (CutList.Offcut offcut : list.offcuts) {
      for (int n = 0; n < offcut.count() && usable(offcut.length()) >= shortest; n++) {
        offcuts.add(offcut.length());
      }
    }
    offcuts.sort(Comparator.reverseOrder());
    scale = scale();
  }

  private int scale() {
    long priced = list.offers.stream().filter(o -> o.price() != null).count();
    if (priced > 0 && priced < list.offers.size()) {
      throw new IllegalArgumentException(
          "prices must be told of all bars or of none, was of "
              + priced
              + " lengths of "
              + list.offers.size()
              + "; tell the others too, as 0 if they cost nothing");
    }
    return offers.stream().mapToInt(o -> Math.max(0, price(o).scale())).max().orElse(0);
  }

  private void checkLongest() {
    CutList.Wanted longest = wanted.get(0);
    List<Measure<Length>> bars = new ArrayList<>();
    list.offers.forEach(offer -> bars.add(offer.length()));
    list.offcuts.forEach(offcut -> bars.add(offcut.length()));
    if (bars.isEmpty()) {
      throw new IllegalArgumentException(
          "bars must be at least 1, was 0; say them with buying(…) or offcuts(…)");
    }
    Measure<Length> bar = bars.get(0);
    for (Measure<Length> other : bars) {
      bar = other.isGreaterThan(bar) ? other : bar;
    }
    if (up(longest) > usable(bar)) {
      throw new IllegalArgumentException(
          "length of "
              + longest.name()
              + " must fit a bar, was "
              + longest.length()
              + " and the longest bar has "
              + bar
              + (trim == 0 ? "" : " less an end trim of " + measure(trim))
              + "; buy longer bars, or make the piece of two");
    }
  }

  CuttingPlan plan(List<Aim> aims, Work work) {
    CutSearch search = new CutSearch(job(), aims, work);
    Draft draft = search.plan();
    if (draft == null) {
      if (search.isImpossible()) {
        throw new IllegalArgumentException(
            "bars must hold all pieces, was "
                + list
                + "; these bars are too few: offer more of them, or other lengths");
      }
      throw new IllegalStateException(
          "no plan was found in " + work.done() + " steps; allow more work, or offer more bars");
    }
    CuttingPlan plan = new CuttingPlan(this, new Chalk(this, draft).bars(), aims, draft, search);
    PlanCheck.check(this, plan.bars());
    return plan;
  }

  Job job() {
    TreeMap<Integer, Integer> sizes = new TreeMap<>(Comparator.reverseOrder());
    wanted.forEach(w -> sizes.merge(up(w) + kerf, w.count(), Integer::sum));
    return new Job(
        kerf,
        sizes.keySet().stream().mapToInt(Integer::intValue).toArray(),
        sizes.values().stream().mapToInt(Integer::intValue).toArray(),
        offers.stream().map(this::stock).toArray(Job.Stock[]::new),
        offcuts.stream().mapToInt(o -> usable(o) + kerf).toArray());
  }

  private Job.Stock stock(CutList.OnOffer offer) {
    return new Job.Stock(
        down(offer.length()),
        usable(offer.length()) + kerf,
        price(offer).setScale(scale).unscaledValue().longValue(),
        offer.most());
  }

  private static BigDecimal price(CutList.OnOffer offer) {
    BigDecimal price = offer.price();
    return price == null ? BigDecimal.ZERO : price;
  }

  boolean isPriced() {
    return list.offers.stream().anyMatch(o -> o.price() != null);
  }

  int up(CutList.Wanted piece) {
    return up("length of " + piece.name(), piece.length());
  }

  private int up(String name, Measure<Length> length) {
    return count(name, length, list.rule.upTo(length));
  }

  int down(Measure<Length> length) {
    return count("length of bar", length, list.rule.downTo(length));
  }

  private int usable(Measure<Length> bar) {
    return down(bar) - trim;
  }

  private int count(String name, Measure<Length> length, Measure<Length> mark) {
    Measure<Length> step = list.rule.step();
    double count = Math.rint(mark.in(step.getUnit()) / step.getValue());
    if (count > MOST_STEPS) {
      throw new IllegalArgumentException(
          name
              + " must be at most "
              + MOST_STEPS
              + " steps of the rule, was "
              + length
              + " in "
              + list.rule
              + "; count in a coarser rule");
    }
    return (int) count;
  }

  Measure<Length> measure(long steps) {
    Measure<Length> step = list.rule.step();
    Graduation<Length> rule = list.rule;
    return rule.nearest(step.withValue(steps * step.getValue()));
  }
}
