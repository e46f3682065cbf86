package org.hammerscale.examples.service;

import static org.hammerscale.examples.service.Flat.given;

import java.util.List;
import java.util.function.UnaryOperator;
import javax.measure.quantity.Length;
import org.hammerscale.spacing.ClosedStretch;
import org.hammerscale.spacing.HoleRow;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/** {@code POST /holes}: where the holes of a leaf go. */
record Holes(
    @Nullable Measure<Length> along,
    int holes,
    @Nullable Measure<Length> startingFrom,
    @Nullable Measure<Length> endingBefore,
    @Nullable Measure<Length> leastSpacing,
    @Nullable List<Stretch> missing) {
  record Stretch(@Nullable Measure<Length> from, @Nullable Measure<Length> to) {}

  Object answer() {
    Measure<Length> leaf = given("along", along);
    HoleRow row = Refused.in("along", () -> HoleRow.along(leaf));
    row = with("holes", row, r -> r.holes(holes));
    Measure<Length> start = given("startingFrom", startingFrom);
    row = with("startingFrom", row, r -> r.startingFrom(start));
    Measure<Length> end = given("endingBefore", endingBefore);
    row = with("endingBefore", row, r -> r.endingBefore(end));
    if (leastSpacing != null) {
      row = with("leastSpacing", row, r -> r.leastSpacing(leastSpacing));
    }
    List<Stretch> closed = missing == null ? List.of() : missing;
    for (int i = 0; i < closed.size(); i++) {
      String field = "missing[" + i + "]";
      Stretch stretch = given(field, closed.get(i));
      Measure<Length> from = given(field + ".from", stretch.from);
      Measure<Length> to = given(field + ".to", stretch.to);
      row = with(field, row, r -> r.missing(ClosedStretch.between(from, to)));
    }
    return Refused.in("", row::layout);
  }

  private static HoleRow with(String field, HoleRow row, UnaryOperator<HoleRow> more) {
    return Refused.in(field, () -> more.apply(row), "from", "to");
  }
}
