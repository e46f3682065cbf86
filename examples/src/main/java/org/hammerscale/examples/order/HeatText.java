package org.hammerscale.examples.order;

import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hammerscale.heat.Cooling;
import org.hammerscale.heat.HeatColour;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/** What a front says of a heat: its colour, and how long the iron keeps it. */
public final class HeatText {
  private static final Graduation<Time> WHOLE_SECOND = Graduation.of(Measures.seconds(1));
  private static final List<String> COLOURS =
      List.of("black", "red", "cherry", "salmon", "orange", "yellow", "white");

  private HeatText() {}

  /** How long there is to work, in whole seconds: {@code 14 to 38 s}. */
  public static String window(Cooling cooling) {
    Estimate<Time> window = cooling.window();
    return WHOLE_SECOND.downTo(window.low()).getValue().intValue()
        + " to "
        + WHOLE_SECOND.downTo(window.high());
  }

  /** What the published tables call it, in one phrase: {@code orange to yellow}. */
  public static String colour(Measure<Temperature> heat) {
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
