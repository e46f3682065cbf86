package org.hammerscale.examples.order;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.CountersunkHead;
import org.hammerscale.fastening.MetricWoodScrew;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.fastening.WoodScrew;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/** A screw of either series: its head as the iron feels it, its shank as the wood does. */
public record Screw(String size, CountersunkHead head, WoodFastener shank, Measure<Length> length) {
  private static final Pattern SIZE = Pattern.compile("(.+?) *[x×] *(.+)");

  /** A gauge number or a diameter, and a length: {@code 10 × 1 1/2 in}, {@code 5 mm × 40 mm}. */
  public static Screw parse(String text) {
    Matcher size = SIZE.matcher(text);
    if (!size.matches()) {
      throw new IllegalArgumentException(Fault.echo(text) + " is no size and length of a screw");
    }
    Measure<Length> length = Measures.length(size.group(2));
    if (!(length.getValue() > 0)) {
      throw new IllegalArgumentException("a screw of " + length + " is none");
    }
    if (size.group(1).matches("[0-9]{1,2}")) {
      WoodScrew inch = WoodScrew.number(Integer.parseInt(size.group(1)));
      return new Screw("no. " + inch.number() + " wood screw", inch, inch, length);
    }
    MetricWoodScrew metric = MetricWoodScrew.din97(Measures.length(size.group(1)));
    return new Screw(metric.toString(), metric, metric, length);
  }

  @Override
  public String toString() {
    return size + ", " + length + " long";
  }
}
