package org.hammerscale.examples.service;

import static org.hammerscale.examples.service.Flat.given;

import java.math.BigDecimal;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import javax.measure.quantity.Length;
import org.hammerscale.cutting.CutList;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/** {@code POST /cut-list}: which bars to take, and where to cut them. */
record Cuts(
    @Nullable Flat bar,
    @Nullable Measure<Length> rule,
    @Nullable Measure<Length> kerf,
    @Nullable Measure<Length> endTrim,
    @Nullable List<Wanted> pieces,
    @Nullable List<Bought> buying,
    @Nullable List<Wanted> offcuts) {
  /** Whoever asks waits no longer; the best plan till then is the answer. */
  private static final long PATIENCE = TimeUnit.SECONDS.toNanos(2);

  record Wanted(@Nullable String name, @Nullable Measure<Length> length, int count) {}

  record Bought(@Nullable Measure<Length> length, @Nullable BigDecimal price) {}

  Object answer() {
    Measure<Length> step = given("rule", rule);
    CutList list = Refused.in("rule", () -> CutList.of(Flat.bar("bar", bar), Graduation.of(step)));
    list = kerf == null ? list : with("kerf", list, l -> l.kerf(kerf));
    list = endTrim == null ? list : with("endTrim", list, l -> l.endTrim(endTrim));
    List<Wanted> wanted = given("pieces", pieces);
    for (int i = 0; i < wanted.size(); i++) {
      String field = "pieces[" + i + "]";
      Wanted piece = given(field, wanted.get(i));
      String name = given(field + ".name", piece.name);
      Measure<Length> length = given(field + ".length", piece.length);
      list = with(field, list, l -> l.pieces(name, length, piece.count));
    }
    List<Bought> bought = buying == null ? List.of() : buying;
    for (int i = 0; i < bought.size(); i++) {
      String field = "buying[" + i + "]";
      Bought one = given(field, bought.get(i));
      Measure<Length> length = given(field + ".length", one.length);
      BigDecimal price = one.price;
      list = with(field, list, l -> price == null ? l.buying(length) : l.buying(length, price));
    }
    List<Wanted> left = offcuts == null ? List.of() : offcuts;
    for (int i = 0; i < left.size(); i++) {
      String field = "offcuts[" + i + "]";
      Wanted offcut = given(field, left.get(i));
      Measure<Length> length = given(field + ".length", offcut.length);
      list = with(field, list, l -> l.offcuts(length, offcut.count));
    }
    CutList whole = list;
    long end = System.nanoTime() + PATIENCE;
    try {
      return Refused.in(
          "", () -> whole.plan(CutList.USUAL_STEPS, steps -> System.nanoTime() - end < 0));
    } catch (IllegalStateException e) {
      throw new Refused(503, "", "no plan was found in time; ask for fewer pieces at once");
    }
  }

  private static CutList with(String field, CutList list, UnaryOperator<CutList> more) {
    return Refused.in(field, () -> more.apply(list), "name", "length", "count", "price");
  }
}
