package org.hammerscale.examples.order;

import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Temperature;
import org.hammerscale.heat.HeatColour;
import org.hammerscale.units.Measure;

/** What the published tables call a heat, in one phrase: {@code orange to yellow}. */
public final class ColourPhrase {
  private static final List<String> COLOURS =
      List.of("black", "red", "cherry", "salmon", "orange", "yellow", "white");

  private ColourPhrase() {}

  public static String of(Measure<Temperature> heat) {
    int first = COLOURS.size();
    int last = -1;
    for (HeatColour colour : HeatColour.at(heat)) {
      String name = colour.name().toLowerCase(Locale.ROOT);
      for (int i = 0; i < COLOURS.size(); i++) {
        if (name.contains(COLOURS.get(i))) {
          first = Math.min(first, i);
          last = Math.max(last, i);
        }
      }
    }
    if (last < 0) {
      return "no table names its colour";
    }
    return first == last ? COLOURS.get(first) : COLOURS.get(first) + " to " + COLOURS.get(last);
  }
}
