package org.hammerscale.examples;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.hammerscale.examples.order.Fault;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/** How long the hammer takes for a length of taper: {@code 0.2 min/in}, {@code 0.2 min/25 mm}. */
record WorkRate(Measure<Time> time, Measure<Length> length) {
  /**
   * Twelve seconds of blows for each inch of a strap: three inches take the 36 s of {@code
   * Heats.forStretches}, which counted heats come to.
   */
  static final WorkRate USUAL = new WorkRate(Measures.minutes(0.2), Measures.inches(1));

  /** Own judgement too: a hand's breadth is as much as a smith draws down before it is cold. */
  private static final Measure<Length> BREADTH = Measures.inches(4);

  static final Reading<WorkRate> READING =
      new Reading<>(
          "minutes at the anvil for a length, such as 0.2 min/in, or usual",
          WorkRate::parse,
          USUAL);

  private static final double MOST_MINUTES_AN_INCH = 10;
  private static final Pattern RATE = Pattern.compile("([0-9]+(?:\\.[0-9]+)?) *min */ *(.+)");

  static WorkRate parse(String text) {
    if (text.equals("usual")) {
      return USUAL;
    }
    Matcher rate = RATE.matcher(text);
    if (!rate.matches()) {
      throw new IllegalArgumentException(Fault.echo(text) + " is no time for a length");
    }
    String length = rate.group(2);
    WorkRate read =
        new WorkRate(
            Measures.minutes(Double.parseDouble(rate.group(1))),
            Measures.length(Character.isDigit(length.charAt(0)) ? length : "1 " + length));
    double minutes = read.length.getValue() > 0 ? read.of(Measures.inches(1)).getValue() : 0;
    if (!(minutes > 0 && minutes <= MOST_MINUTES_AN_INCH)) {
      throw new IllegalArgumentException(
          Fault.echo(text) + " is no pace of a hammer, more than zero and at most 10 min/in");
    }
    return read;
  }

  Measure<Time> of(Measure<Length> taper) {
    return time.multiply(taper.ratio(length));
  }

  /** In how many stretches a taper is drawn, each in heats of its own. */
  static int stretches(Measure<Length> taper) {
    return (int) Math.ceil(taper.ratio(BREADTH) - 1e-9);
  }

  @Override
  public String toString() {
    return time + " for " + length + (equals(USUAL) ? ", as counted heats say" : ", as ordered");
  }
}
