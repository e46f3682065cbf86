package org.hammerscale.spacing;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/**
 * Numbers that building codes print for guards (balustrades): spheres that must not pass, and
 * heights. Other names: {@index guardrail}, {@index balustrade}. They are named so that one need
 * not look for them; local codes govern, and change.
 *
 * <pre>{@code
 * GuardCode.IRC_SPHERE.size()       // 4 in
 * GuardCode.ENGLAND_SPHERE.size()   // 100 mm
 * GuardCode.IRC_HEIGHT.isSphere()   // false  how high the rail must be, no opening
 * }</pre>
 *
 * <p>As printed: the 102 mm that American codes put beside 4 in are 101.6 mm rounded.
 */
public enum GuardCode {
  /** IRC: 4 in, a sphere that must not pass between balusters. */
  IRC_SPHERE("International Residential Code, R312.1.3, sphere", 4, true, Known.READ),
  /** IRC: 4 3/8 in, a sphere at the open side of stairs. */
  IRC_STAIR_SPHERE(
      "International Residential Code, R312.1.3 exception 2, sphere at stairs",
      4.375,
      true,
      Known.READ),
  /** IRC: 6 in, a sphere in the triangle of riser, tread and bottom rail. */
  IRC_TRIANGLE_SPHERE(
      "International Residential Code, R312.1.3 exception 1, sphere in the triangle of a stair",
      6,
      true,
      Known.READ),
  /** IRC: 30 in, the drop above which a guard is required. */
  IRC_DROP("International Residential Code, R312.1.1, drop that asks for a guard", 30, Known.READ),
  /** IRC: 36 in, the least height of a guard. */
  IRC_HEIGHT("International Residential Code, R312.1.2, height", 36, Known.READ),
  /** IRC: 34 in, the least height at the open side of stairs. */
  IRC_STAIR_HEIGHT(
      "International Residential Code, R312.1.2 exception, height at stairs", 34, Known.READ),
  /** IBC of 2000, superseded: 4 in, a sphere up to 34 in high. */
  IBC_2000_LOW_SPHERE(
      "International Building Code 2000, 1003.2.12.2, sphere up to 34 in", 4, true, Known.OLD),
  /** IBC of 2000, superseded: 8 in, a sphere from 34 to 42 in high. */
  IBC_2000_HIGH_SPHERE(
      "International Building Code 2000, 1003.2.12.2, sphere from 34 to 42 in", 8, true, Known.OLD),
  /** IBC of 2000, superseded: 21 in, a sphere where only workers go. */
  IBC_2000_INDUSTRIAL_SPHERE(
      "International Building Code 2000, 1003.2.12.2, sphere at industrial access",
      21,
      true,
      Known.OLD),
  /** England: 100 mm, a sphere where children under five may be. */
  ENGLAND_SPHERE("England, Approved Document K (2013), sphere", 100, true, Known.READ),
  /** England: 900 mm, the height of a guard in a dwelling; 1100 mm at balconies and roofs. */
  ENGLAND_HEIGHT("England, Approved Document K, diagram 3.1, height indoors", 900, Known.READ),
  /** Ireland: 100 mm, a sphere. */
  IRELAND_SPHERE("Ireland, Technical Guidance Document K, 1.1.19, sphere", 100, true, Known.READ),
  /** Scotland: 100 mm, a sphere. */
  SCOTLAND_SPHERE("Scotland, Technical Handbook, sphere", 100, true, Known.READ),
  /** Australia: 125 mm, a sphere. */
  AUSTRALIA_SPHERE("Australia, National Construction Code, sphere", 125, true, Known.MEMORY),
  /** Germany: 120 mm, the clear width between bars where small children are. */
  GERMANY_WIDTH("Germany, building rules of the states, clear width", 120, true, Known.MEMORY),
  /** Canada: 100 mm, a sphere. */
  CANADA_SPHERE("Canada, National Building Code, 9.8.8.5, sphere", 100, true, Known.MEMORY);

  private enum Known {
    READ,
    OLD,
    MEMORY
  }

  private final String title;
  private final double value;
  private final boolean sphere;
  private final Known known;

  GuardCode(String title, double value, boolean sphere, Known known) {
    this.title = title;
    this.value = value;
    this.sphere = sphere;
    this.known = known;
  }

  GuardCode(String title, double value, Known known) {
    this(title, value, false, known);
  }

  /**
   * The number, in the unit that the code is written in.
   *
   * @return the diameter of the sphere, the clear width or the height, exact
   */
  public Measure<Length> size() {
    return value < 50 ? Measures.inches(value) : Measures.millimetres(value);
  }

  /** {@return whether it is what must not pass between the pickets, and no height} */
  public boolean isSphere() {
    return sphere;
  }

  /** {@return where it was found} */
  public Source source() {
    return known == Known.MEMORY
        ? Source.fromMemory(title, "")
        : Source.read(title, "as public pages quote it");
  }

  /** {@return that local codes govern, and whether it is superseded} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (known == Known.OLD) {
      cautions.add(Caution.limit(title + " is superseded: take the edition in force", source()));
    }
    cautions.add(GOVERN);
    return List.copyOf(cautions);
  }

  static final Caution GOVERN =
      Caution.danger(
          "a guard keeps people from falling: local codes govern its openings, height and strength;"
              + " look up the edition in force, and have it checked where they ask for it");

  /** Title and number. */
  @Override
  public String toString() {
    return title + ": " + size();
  }
}
