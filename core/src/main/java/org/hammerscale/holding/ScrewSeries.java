package org.hammerscale.holding;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.LagScrew;
import org.hammerscale.fastening.MetricWoodScrew;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.fastening.WoodScrew;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Source;

/**
 * Screws as they are stocked: the sizes of a series and the lengths that it comes in.
 *
 * <pre>{@code
 * import java.util.List;
 * ScrewSeries.WOOD_SCREWS.lengthAtLeast(inches(1.1715))           // 1 1/4 in  the next that is sold
 * ScrewSeries drawer = ScrewSeries.of("in the drawer", List.of(WoodScrew.number(10)), List.of(inches(1), inches("1 1/2")));
 * drawer.lengthAtLeast(inches("1 1/8"))                           // 1 1/2 in  the next that is there
 * }</pre>
 *
 * <p>Not every length is made in every size: look into the box before forging.
 */
public final class ScrewSeries {
  private static final int MOST = 500;

  /** American flat-head wood screws, numbers 2 to 24, 1/4 in to 6 in long. */
  public static final ScrewSeries WOOD_SCREWS =
      new ScrewSeries(
          "flat-head wood screws",
          WoodScrew.standardNumbers().stream()
              .filter(number -> number >= 2)
              .map(number -> (WoodFastener) WoodScrew.number(number))
              .toList(),
          inchLengths(),
          Source.read(
              "civil engineering formulas, wood screws",
              "1/4 to 6 in; steps of 1/8 to 1 in, of 1/4 to 3 in, of 1/2 to 5 in"));

  /**
   * Wood screws of DIN 97 from 3 to 8 mm, in the lengths of DIN 571 from 30 mm on, since those of
   * DIN 97 itself were not found in print.
   */
  public static final ScrewSeries METRIC_WOOD_SCREWS =
      new ScrewSeries(
          "DIN 97 wood screws",
          metricScrews(),
          metricLengths(),
          Source.read("DIN 571:1986", "nominal lengths; 16 to 25 mm were not legible"));

  /** American lag screws (coach screws), 1/4 in to 3/4 in, 1 1/2 in to 12 in long. */
  public static final ScrewSeries LAG_SCREWS =
      new ScrewSeries(
          "lag screws",
          lagScrews(),
          lagLengths(),
          Source.commonPractice(
              "1 1/2 to 12 in as a handbook prints it; steps of 1/2 in to 8 in and of 1 in beyond"));

  private final String name;
  private final List<WoodFastener> screws;
  private final List<Measure<Length>> lengths;
  private final Source source;

  private ScrewSeries(
      String name, List<WoodFastener> screws, List<Measure<Length>> lengths, Source source) {
    this.name = name;
    this.screws = screws;
    this.lengths = lengths;
    this.source = source;
  }

  /**
   * A series of the caller's own.
   *
   * @param name what to call it
   * @param screws its sizes, 1 to 500: wood screws or lag screws, no nails
   * @param lengths the lengths at hand, 1 to 500, rising
   * @return the series
   * @throws IllegalArgumentException if there is none or a nail among them, or the lengths do not
   *     rise
   */
  public static ScrewSeries of(
      String name, List<? extends WoodFastener> screws, List<? extends Quantity<Length>> lengths) {
    Arguments.text("name", name);
    Objects.requireNonNull(screws, "screws");
    Objects.requireNonNull(lengths, "lengths");
    Arguments.count("number of screws", screws.size(), 1, MOST, "name those at hand");
    Arguments.count("number of lengths", lengths.size(), 1, MOST, "name those at hand");
    for (WoodFastener screw : screws) {
      if (Objects.requireNonNull(screw, "screw").kind() == WoodFastener.Kind.NAIL) {
        throw new IllegalArgumentException(
            "screws must be wood screws or lag screws, was a "
                + HoldingLaw.words(screw)
                + "; ask ReferenceWithdrawal about nails");
      }
    }
    List<Measure<Length>> checked = new ArrayList<>();
    for (Quantity<Length> length : lengths) {
      Measure<Length> next = Arguments.positive("length", length);
      if (!checked.isEmpty() && !next.isGreaterThan(checked.get(checked.size() - 1))) {
        throw new IllegalArgumentException(
            "lengths must rise, was "
                + next
                + " behind "
                + checked.get(checked.size() - 1)
                + "; name the shortest first");
      }
      checked.add(next);
    }
    return new ScrewSeries(
        name,
        List.copyOf(screws),
        List.copyOf(checked),
        Source.commonPractice("screws at hand, told by the caller"));
  }

  /** {@return its sizes} */
  public List<WoodFastener> screws() {
    return screws;
  }

  /** {@return its lengths, rising} */
  public List<Measure<Length>> lengths() {
    return lengths;
  }

  /** {@return where its lengths come from} */
  public Source source() {
    return source;
  }

  /**
   * The first of its lengths that is no less than what is wanted.
   *
   * @param wanted the least length, more than zero
   * @return the stocked length
   * @throws IllegalArgumentException if the length is not more than zero, or none is so long
   */
  public Measure<Length> lengthAtLeast(Quantity<Length> wanted) {
    Measure<Length> least = Arguments.positive("wanted", wanted);
    for (Measure<Length> length : lengths) {
      if (!length.isLessThan(least) || length.isEquivalentTo(least)) {
        return length;
      }
    }
    throw new IllegalArgumentException(
        "wanted must be at most the longest of the "
            + name
            + ", "
            + lengths.get(lengths.size() - 1)
            + ", was "
            + least
            + "; sink the head, or bolt through");
  }

  private static List<Measure<Length>> inchLengths() {
    List<Measure<Length>> all = new ArrayList<>();
    for (int eighths = 2; eighths <= 8; eighths++) {
      all.add(Measures.inches(eighths / 8d));
    }
    for (int quarters = 5; quarters <= 12; quarters++) {
      all.add(Measures.inches(quarters / 4d));
    }
    for (double inches : new double[] {3.5, 4, 4.5, 5, 6}) {
      all.add(Measures.inches(inches));
    }
    return List.copyOf(all);
  }

  private static List<Measure<Length>> metricLengths() {
    List<Measure<Length>> all = new ArrayList<>();
    for (int length = 30; length <= 300; length += length < 80 ? 5 : length < 200 ? 10 : 20) {
      all.add(Measures.millimetres(length));
    }
    return List.copyOf(all);
  }

  private static List<Measure<Length>> lagLengths() {
    List<Measure<Length>> all = new ArrayList<>();
    for (double length = 1.5; length <= 12; length += length < 8 ? 0.5 : 1) {
      all.add(Measures.inches(length));
    }
    return List.copyOf(all);
  }

  private static List<WoodFastener> metricScrews() {
    List<WoodFastener> all = new ArrayList<>();
    for (double diameter : new double[] {3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8}) {
      all.add(MetricWoodScrew.din97(Measures.millimetres(diameter)));
    }
    return List.copyOf(all);
  }

  private static List<WoodFastener> lagScrews() {
    List<WoodFastener> all = new ArrayList<>();
    for (int sixteenths : new int[] {4, 5, 6, 7, 8, 10, 12}) {
      all.add(LagScrew.of(Measures.inches(sixteenths / 16d)));
    }
    return List.copyOf(all);
  }

  /** Its name, sizes and lengths. */
  @Override
  public String toString() {
    return name
        + ", "
        + screws.size()
        + (screws.size() == 1 ? " size, " : " sizes, ")
        + lengths.get(0)
        + " to "
        + lengths.get(lengths.size() - 1);
  }
}
