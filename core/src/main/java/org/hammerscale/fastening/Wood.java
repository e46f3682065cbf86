package org.hammerscale.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.hammerscale.internal.Arguments;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/**
 * The wood that a leaf is fixed to: hardwood or softwood, and its specific gravity on both bases. A
 * species of the table keeps the two printed values, which need not agree with the mean conversion;
 * of a wood made from one value the other is converted.
 *
 * <pre>{@code
 * Wood fir = Wood.named("Douglas-fir coast");
 * fir.ovenDry()                          // specific gravity 0.5 oven-dry  for the rules of the NDS
 * fir.at12Percent()                      // specific gravity 0.48 at 12 %  for those of the Wood Handbook
 * Wood.named("white oak").attacksIron()  // true  bare iron stains and rusts in it
 * Wood.named("oak")                      // Oak (European), specific gravity 0.6805 oven-dry
 * Wood larch = Wood.softwood("larch of the yard", TwelvePercentGravity.of(0.52));
 * larch.ovenDry()                        // specific gravity 0.5509 oven-dry  converted from what was weighed
 * }</pre>
 *
 * <p>Sources: USDA <cite>Wood Handbook</cite>, table 5-3, for the basis of 12 %; NDS, assigned
 * specific gravities, for the oven-dry basis; {@link #sources} tells how each value is known.
 */
public final class Wood {
  private final String name;
  private final boolean hardwood;
  private final boolean attacksIron;
  private final OvenDryGravity ovenDry;
  private final TwelvePercentGravity at12Percent;
  private final List<Source> sources;

  Wood(
      String name,
      boolean hardwood,
      boolean attacksIron,
      OvenDryGravity ovenDry,
      TwelvePercentGravity at12Percent,
      List<Source> sources) {
    this.name = Arguments.text("name", name);
    this.hardwood = hardwood;
    this.attacksIron = attacksIron;
    this.ovenDry = ovenDry;
    this.at12Percent = at12Percent;
    this.sources = sources;
  }

  /**
   * A species of the table.
   *
   * @param species its name as {@link #species} lists it, what stands there in brackets left out or
   *     not; capitals or not
   * @return the wood
   * @throws IllegalArgumentException if the table has no such species
   */
  public static Wood named(String species) {
    Objects.requireNonNull(species, "species");
    return species().stream()
        .filter(wood -> wood.isCalled(species.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "species must be one of the table, was "
                        + species
                        + "; take one of "
                        + species().stream().map(Wood::name).collect(Collectors.joining(", "))
                        + ", or give the gravity of your own"));
  }

  private boolean isCalled(String asked) {
    int bracket = name.indexOf(" (");
    return name.equalsIgnoreCase(asked)
        || (bracket > 0 && name.substring(0, bracket).equalsIgnoreCase(asked));
  }

  /** {@return every species of the table: American softwoods, hardwoods, then European timber} */
  public static List<Wood> species() {
    return WoodTable.SPECIES;
  }

  /**
   * A hardwood (broad-leaved tree) of known oven-dry gravity.
   *
   * @param name what to call it
   * @param gravity its specific gravity
   * @return the wood
   * @throws IllegalArgumentException if the name is blank
   */
  public static Wood hardwood(String name, OvenDryGravity gravity) {
    Objects.requireNonNull(gravity, "gravity");
    return converted(name, true, gravity, gravity.at12Percent());
  }

  /**
   * A hardwood (broad-leaved tree) of known gravity at 12 %.
   *
   * @param name what to call it
   * @param gravity its specific gravity
   * @return the wood
   * @throws IllegalArgumentException if the name is blank
   */
  public static Wood hardwood(String name, TwelvePercentGravity gravity) {
    Objects.requireNonNull(gravity, "gravity");
    return converted(name, true, gravity.ovenDry(), gravity);
  }

  /**
   * A softwood (conifer) of known oven-dry gravity.
   *
   * @param name what to call it
   * @param gravity its specific gravity
   * @return the wood
   * @throws IllegalArgumentException if the name is blank
   */
  public static Wood softwood(String name, OvenDryGravity gravity) {
    Objects.requireNonNull(gravity, "gravity");
    return converted(name, false, gravity, gravity.at12Percent());
  }

  /**
   * A softwood (conifer) of known gravity at 12 %.
   *
   * @param name what to call it
   * @param gravity its specific gravity
   * @return the wood
   * @throws IllegalArgumentException if the name is blank
   */
  public static Wood softwood(String name, TwelvePercentGravity gravity) {
    Objects.requireNonNull(gravity, "gravity");
    return converted(name, false, gravity.ovenDry(), gravity);
  }

  private static Wood converted(
      String name, boolean hardwood, OvenDryGravity dry, TwelvePercentGravity moist) {
    return new Wood(name, hardwood, false, dry, moist, List.of(OvenDryGravity.CONVERSION));
  }

  /**
   * The same wood where it eats bare iron: treated with copper or fire-retardant salts, or rich in
   * tannin, as oak and chestnut are.
   *
   * @return the wood, with a caution of it
   */
  public Wood attackingIron() {
    return new Wood(name, hardwood, true, ovenDry, at12Percent, sources);
  }

  /** {@return what it is called} */
  public String name() {
    return name;
  }

  /** {@return whether it is of a broad-leaved tree, not of a conifer} */
  public boolean isHardwood() {
    return hardwood;
  }

  /** {@return whether it eats bare iron} */
  public boolean attacksIron() {
    return attacksIron;
  }

  /** {@return its gravity on the basis of the NDS; converted if only the other is known} */
  public OvenDryGravity ovenDry() {
    return ovenDry;
  }

  /**
   * {@return its gravity on the basis of the Wood Handbook; converted if only the other is known}
   */
  public TwelvePercentGravity at12Percent() {
    return at12Percent;
  }

  /** {@return how its gravities are known} */
  public List<Source> sources() {
    return sources;
  }

  /** {@return what it does to iron, and what makes any wood hold less} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (attacksIron) {
      cautions.add(
          Caution.limit(
              name
                  + " eats bare iron and is stained by it: coat leaf and screws, or take stainless"
                  + " ones",
              Source.commonPractice("oak and treated timber corrode bare iron")));
    }
    cautions.add(
        Caution.limit(
            "wet, green, treated or old and worm-eaten timber holds less than sound dry wood",
            Source.commonPractice("values are for sound, seasoned, untreated wood")));
    return List.copyOf(cautions);
  }

  /** Name and oven-dry gravity. */
  @Override
  public String toString() {
    return name + ", " + ovenDry;
  }
}
