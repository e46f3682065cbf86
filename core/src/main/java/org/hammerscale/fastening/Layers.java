package org.hammerscale.fastening;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.Subscripts;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;

/**
 * What a bolt or a nail goes through, one thickness behind the other, in the unit of the first.
 *
 * @param all the thicknesses
 */
record Layers(List<Measure<Length>> all) {
  static final Layers NONE = new Layers(List.of());

  Layers and(Quantity<Length> thickness) {
    List<Measure<Length>> more = new ArrayList<>(all);
    more.add(Arguments.positive("thickness", thickness));
    return new Layers(List.copyOf(more));
  }

  Unit<Length> unit() {
    if (all.isEmpty()) {
      throw new IllegalArgumentException(
          "thickness must be known of all that it goes through, was none; name iron, board and"
              + " ledge with through(thickness)");
    }
    return all.get(0).getUnit();
  }

  /** All of them together, noted as G. */
  double grip(Notes n) {
    StringBuilder formula = new StringBuilder();
    double sum = 0;
    for (int i = 0; i < all.size(); i++) {
      String symbol = "t" + Subscripts.of(i + 1);
      sum += n.given(symbol, "thickness " + (i + 1), all.get(i).in(unit()));
      formula.append(i == 0 ? "" : " + ").append(symbol);
    }
    return n.length("G", "grip, all thicknesses", formula.toString(), sum);
  }

  Measure<Length> grip() {
    return Measure.of(grip(Notes.NONE), unit());
  }
}
