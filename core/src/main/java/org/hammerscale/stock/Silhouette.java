package org.hammerscale.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;

/**
 * How a stretch of a finished piece looks: its rim and its openings seen on the wide side, and its
 * thickness along it. It is symmetric about its middle line but for what is laid beside it.
 *
 * <pre>{@code
 * Section neck = Section.flat(inches(1), inches("1/4"));
 * Silhouette heart = Silhouette.from(neck).to(inches("3/4"), inches(2)).to(inches(2), inches(0));
 * Silhouette eye = heart.withOpening(Silhouette.oval(inches(1), inches("1/2")), inches("1/2"), inches(0));
 * eye                                        // silhouette 2 in long, 2 in wide, 1 opening
 * eye.rims(ShopUnits.MILLIMETRE).size()      // 1
 * Silhouette.of(Plain.of(neck, inches(3)))   // silhouette 3 in long, 1 in wide  what anything has that says no more
 * }</pre>
 *
 * <p>Curves are given as so many points that the eye sees none of them: an oval has 144. Exact at
 * the points.
 */
public final class Silhouette {
  private static final int POINTS = 144;
  private static final int MOST = 10_000;

  private final Unit<Length> unit;

  /** Distance, width and thickness at each place, by turns. */
  private final List<double[]> places;

  private final List<double[]> beside;
  private final List<double[]> openings;

  private Silhouette(
      Unit<Length> unit, List<double[]> places, List<double[]> beside, List<double[]> openings) {
    this.unit = unit;
    this.places = places;
    this.beside = beside;
    this.openings = openings;
  }

  /**
   * A silhouette that begins with a section, to be led on.
   *
   * @param start the section where it begins
   * @return the silhouette, without length as yet
   */
  public static Silhouette from(Section start) {
    Unit<Length> unit = Objects.requireNonNull(start, "start").width().getUnit();
    double[] place = {0, start.width().in(unit), start.thickness().in(unit)};
    return new Silhouette(unit, List.of(place), List.of(), List.of());
  }

  /**
   * An oval as it lies in a piece, for an opening or a disc, without thickness.
   *
   * @param length along the piece, more than zero
   * @param width across it, more than zero
   * @return the silhouette
   * @throws IllegalArgumentException if a size is not more than zero
   */
  public static Silhouette oval(Quantity<Length> length, Quantity<Length> width) {
    Measure<Length> along = Arguments.positive("length", length);
    Unit<Length> unit = along.getUnit();
    double half = along.in(unit) / 2;
    double across = Arguments.positive("width", width).in(unit);
    List<double[]> places = new ArrayList<>();
    for (int i = 0; i <= POINTS / 2; i++) {
      double angle = 2 * Math.PI * i / POINTS;
      double wide = i == 0 || i == POINTS / 2 ? 0 : across * Math.sin(angle);
      places.add(new double[] {half - half * Math.cos(angle), wide, 0});
    }
    return new Silhouette(unit, List.copyOf(places), List.of(), List.of());
  }

  /**
   * What a feature says of itself if it is {@link Outlined}; else straight from the section where
   * it begins to the one where it ends.
   *
   * @param feature any feature
   * @return its silhouette
   */
  public static Silhouette of(Feature feature) {
    Objects.requireNonNull(feature, "feature");
    return feature instanceof Outlined outlined
        ? outlined.outline()
        : from(feature.start()).to(feature.reach(), feature.end());
  }

  /**
   * The same led on straight to another section.
   *
   * @param along from where it begins, no less than it is long already
   * @param section the section there
   * @return the silhouette
   * @throws IllegalArgumentException if the place lies before the last, or there are 10,000
   */
  public Silhouette to(Quantity<Length> along, Section section) {
    Objects.requireNonNull(section, "section");
    return to(along, section.width(), section.thickness().in(unit));
  }

  /**
   * The same led on straight to another width, as thick as it was.
   *
   * @param along from where it begins, no less than it is long already
   * @param width the whole width there, not negative
   * @return the silhouette
   * @throws IllegalArgumentException if the place lies before the last, or there are 10,000
   */
  public Silhouette to(Quantity<Length> along, Quantity<Length> width) {
    return to(along, width, last()[2]);
  }

  private Silhouette to(Quantity<Length> along, Quantity<Length> width, double thickness) {
    Measure<Length> far = Arguments.notNegative("along", along);
    double wide = Arguments.notNegative("width", width).in(unit);
    if (far.in(unit) < last()[0]) {
      throw new IllegalArgumentException(
          "along must be at least the "
              + Measure.of(last()[0], unit)
              + " that it is long already, was "
              + far
              + "; name the places from its beginning on");
    }
    Arguments.count("places along", places.size() + 1, 1, MOST, "leave out some of them");
    List<double[]> more = new ArrayList<>(places);
    more.add(new double[] {far.in(unit), wide, thickness});
    return new Silhouette(unit, List.copyOf(more), beside, openings);
  }

  /**
   * The same with an opening.
   *
   * @param opening its form
   * @param along from where the silhouette begins to where the opening does, not negative
   * @param across from the middle line to that of the opening; negative to the other side
   * @return the silhouette
   * @throws IllegalArgumentException if the distance along is negative
   */
  public Silhouette withOpening(
      Silhouette opening, Quantity<Length> along, Quantity<Length> across) {
    Objects.requireNonNull(opening, "opening");
    double far = Arguments.notNegative("along", along).in(unit);
    double aside = Arguments.length("across", across).in(unit);
    return new Silhouette(unit, places, beside, joined(openings, opening, far, aside));
  }

  /**
   * The same with another one beside it, such as the next tine of a split.
   *
   * @param other what lies beside it
   * @param across from the middle line of this one to that of the other; negative to the other side
   * @return both
   */
  public Silhouette beside(Silhouette other, Quantity<Length> across) {
    Objects.requireNonNull(other, "other");
    double aside = Arguments.length("across", across).in(unit);
    List<double[]> more = joined(beside, other, 0, aside);
    List<double[]> open = new ArrayList<>(openings);
    for (double[] opening : other.openings(unit)) {
      open.add(moved(opening, 0, aside));
    }
    return new Silhouette(unit, places, more, List.copyOf(open));
  }

  private List<double[]> joined(List<double[]> some, Silhouette more, double along, double across) {
    List<double[]> all = new ArrayList<>(some);
    for (double[] rim : more.rims(unit)) {
      all.add(moved(rim, along, across));
    }
    return List.copyOf(all);
  }

  private static double[] moved(double[] line, double along, double across) {
    double[] moved = line.clone();
    for (int i = 0; i < line.length; i += 2) {
      moved[i] += along;
      moved[i + 1] += across;
    }
    return moved;
  }

  /** {@return the same from its other end} */
  public Silhouette reversed() {
    double length = length();
    List<double[]> turned = new ArrayList<>(places.size());
    for (int i = places.size() - 1; i >= 0; i--) {
      double[] place = places.get(i);
      turned.add(new double[] {length - place[0], place[1], place[2]});
    }
    return new Silhouette(unit, turned, mirrored(beside, length), mirrored(openings, length));
  }

  private static List<double[]> mirrored(List<double[]> lines, double length) {
    List<double[]> all = new ArrayList<>(lines.size());
    for (double[] line : lines) {
      double[] turned = line.clone();
      for (int i = 0; i < line.length; i += 2) {
        turned[i] = length - line[i];
      }
      all.add(turned);
    }
    return all;
  }

  /**
   * The closed lines round its metal, seen on the wide side: one, and one more for each part beside
   * it.
   *
   * @param unitOfNumbers what the numbers count
   * @return of each line its corners, by turns the distance along and the distance across from the
   *     middle line
   */
  public List<double[]> rims(Unit<Length> unitOfNumbers) {
    int n = places.size();
    double[] rim = new double[4 * n];
    for (int i = 0; i < n; i++) {
      double[] place = places.get(i);
      rim[2 * i] = place[0];
      rim[2 * i + 1] = place[1] / 2;
      rim[4 * n - 2 - 2 * i] = place[0];
      rim[4 * n - 1 - 2 * i] = -place[1] / 2;
    }
    List<double[]> all = new ArrayList<>();
    all.add(rim);
    all.addAll(beside);
    return scaled(all, unitOfNumbers);
  }

  /**
   * The closed lines of its openings, seen on the wide side.
   *
   * @param unitOfNumbers what the numbers count
   * @return of each line its corners, as those of the {@link #rims}
   */
  public List<double[]> openings(Unit<Length> unitOfNumbers) {
    return scaled(openings, unitOfNumbers);
  }

  /**
   * Its thickness along it, straight between the places told.
   *
   * @param unitOfNumbers what the numbers count
   * @return by turns the distance along and the thickness there
   */
  public double[] edge(Unit<Length> unitOfNumbers) {
    int n = places.size();
    double length = length();
    boolean shorter = last()[0] < length; // than what lies beside it: tines go on as thick
    double[] edge = new double[2 * n + (shorter ? 2 : 0)];
    for (int i = 0; i < n; i++) {
      edge[2 * i] = places.get(i)[0];
      edge[2 * i + 1] = places.get(i)[2];
    }
    if (shorter) {
      edge[2 * n] = length;
      edge[2 * n + 1] = last()[2];
    }
    return scaled(List.of(edge), unitOfNumbers).get(0);
  }

  private double length() {
    double length = last()[0];
    for (double[] rim : beside) {
      for (int i = 0; i < rim.length; i += 2) {
        length = Math.max(length, rim[i]);
      }
    }
    return length;
  }

  private List<double[]> scaled(List<double[]> lines, Unit<Length> unitOfNumbers) {
    double factor = Measure.of(1, unit).in(unitOfNumbers);
    List<double[]> all = new ArrayList<>(lines.size());
    for (double[] line : lines) {
      double[] numbers = new double[line.length];
      for (int i = 0; i < line.length; i++) {
        numbers[i] = line[i] * factor;
      }
      all.add(numbers);
    }
    return List.copyOf(all);
  }

  private double[] last() {
    return places.get(places.size() - 1);
  }

  /** Length, greatest width and openings. */
  @Override
  public String toString() {
    double widest = 0;
    for (double[] place : places) {
      widest = Math.max(widest, place[1]);
    }
    int holes = openings.size();
    return "silhouette "
        + Measure.of(length(), unit)
        + " long, "
        + Measure.of(widest, unit)
        + " wide"
        + (beside.isEmpty() ? "" : ", " + (beside.size() + 1) + " side by side")
        + (holes == 0 ? "" : holes == 1 ? ", 1 opening" : ", " + holes + " openings");
  }
}
