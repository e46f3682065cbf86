package org.hammerscale.forging;

import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/**
 * Rough bolt heads of the old rule: width across flats D = 1.5 d + 1/8 in for a shank of diameter
 * d. Two conventions of their thickness are in print, which differ by a third and more; so the
 * choice is the caller's.
 *
 * <pre>{@code
 * Section shank = Section.round(inches("3/4"));
 * Upset head = BoltHead.HALF_WIDTH.square(shank);
 * head.end()                                     // 1 1/4 in square  what the spanner takes
 * head.reach()                                   // 5/8 in           how thick the head is
 * head.stockLength().upTo(EIGHTH)                // 2 1/4 in         rod to jump up for it
 * BoltHead.SHANK_DIAMETER.square(shank).reach()  // 3/4 in           how thick by the other convention
 * }</pre>
 *
 * <p>Exact as geometry. Leave a little for scale and for squaring the face.
 */
public enum BoltHead {
  /** As thick as half its width (Ilgen 1912; Modern Shop Practice, vol. 1): T = D / 2. */
  HALF_WIDTH("half its width thick", "D / 2"),
  /** As thick as the shank (Modern Shop Practice, vol. 2): T = d. */
  SHANK_DIAMETER("as thick as the shank", "d");

  private static final Source ILGEN =
      Source.read("Ilgen, Forge Work, 1912; Modern Shop Practice, vol. 1", "bolts");
  private static final Source MODERN_SHOP_PRACTICE =
      Source.read("American Technical Society, Modern Shop Practice, vol. 2", "Bolts, fig. 72");
  private static final Measure<Length> EIGHTH = Measures.inches(1 / 8d);

  private final String words;
  private final String formula;

  BoltHead(String words, String formula) {
    this.words = words;
    this.formula = formula;
  }

  /**
   * A square head: V = D² T.
   *
   * @param shank the round shank
   * @return the head, in the unit of the shank's diameter
   * @throws IllegalArgumentException if the shank is not round
   */
  public Upset square(Section shank) {
    Section.requireArea("shank", shank);
    Head.checkRound("shank", shank);
    return on("square head", shank, Section.square(width(shank)), BoltHead::squareVolume);
  }

  /**
   * A hexagonal head: V = √3 D² T / 2.
   *
   * @param shank the round shank
   * @return the head, in the unit of the shank's diameter
   * @throws IllegalArgumentException if the shank is not round
   */
  public Upset hexagon(Section shank) {
    Section.requireArea("shank", shank);
    Head.checkRound("shank", shank);
    return on("hexagonal head", shank, Section.hexagon(width(shank)), BoltHead::hexagonVolume);
  }

  @FunctionalInterface
  private interface Volume {
    double of(Notes n, double width, double thickness);
  }

  private Upset on(String name, Section shank, Section head, Volume volume) {
    Measure<Length> d = shank.width();
    double thick = thickness(Notes.NONE, head.thickness().getValue(), d.getValue());
    return new Upset(
        name,
        shank,
        head,
        head,
        d.withValue(thick),
        (n, unit) -> {
          double size = n.given("d", "diameter of the shank", d.in(unit));
          double wide = width(n, size, unit);
          return volume.of(n, wide, thickness(n, wide, size));
        },
        this == HALF_WIDTH ? ILGEN : MODERN_SHOP_PRACTICE,
        0);
  }

  private static Measure<Length> width(Section shank) {
    Measure<Length> d = shank.width();
    return d.withValue(width(Notes.NONE, d.getValue(), d.getUnit()));
  }

  private static double width(Notes n, double shank, Unit<Length> unit) {
    double e = n.given("e", "an eighth of an inch", EIGHTH.in(unit));
    return n.length("D", "width across flats", "1.5 d + e", 1.5 * shank + e);
  }

  private double thickness(Notes n, double width, double shank) {
    double t = this == HALF_WIDTH ? width / 2 : shank;
    return n.length("T", words, formula, t);
  }

  private static double squareVolume(Notes n, double width, double thickness) {
    return n.volume("V", "metal in it", "D² T", width * width * thickness);
  }

  private static double hexagonVolume(Notes n, double width, double thickness) {
    return n.volume(
        "V", "metal in it", "√3 D² T / 2", Math.sqrt(3) * (width * width) * thickness / 2);
  }

  /** The convention in words. */
  @Override
  public String toString() {
    return words;
  }
}
