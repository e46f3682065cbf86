package org.hammerscale.scale;

/**
 * An oxide of iron, by its formula and its density when dense: how much iron stands in it. Scale
 * from a furnace is porous, so that it is thicker than this for the same metal.
 */
final class Oxide {
  /** Wüstite, FeO, which is nearly all of a forging scale. */
  static final Oxide WUSTITE = new Oxide(1, 1, 5.745);

  /** Magnetite, Fe₃O₄. */
  static final Oxide MAGNETITE = new Oxide(3, 4, 5.17);

  /** Hematite, Fe₂O₃. */
  static final Oxide HEMATITE = new Oxide(2, 3, 5.25);

  /** Density of iron, g/cm³. */
  static final double IRON_DENSITY = 7.874;

  private static final double IRON = 55.845;
  private static final double OXYGEN = 15.999;

  private final double molarIron;
  private final double molarOxygen;
  private final double density;

  Oxide(double ironAtoms, double oxygenAtoms, double density) {
    this.molarIron = ironAtoms * IRON;
    this.molarOxygen = oxygenAtoms * OXYGEN;
    this.density = density;
  }

  /** Grams in a mole. */
  double molarMass() {
    return molarIron + molarOxygen;
  }

  /** Grams in a cubic centimetre. */
  double density() {
    return density;
  }

  /** The mass of iron in a mass of oxide. */
  double ironFraction() {
    return molarIron / molarMass();
  }

  /** The mass of iron that a mass of oxygen takes. */
  double ironPerOxygen() {
    return molarIron / molarOxygen;
  }

  /** The thickness of metal that goes into a thickness of the dense oxide. */
  double metalPerScale() {
    return density * ironFraction() / IRON_DENSITY;
  }

  /** Of scale that is 95 parts wüstite, 4 magnetite and 1 hematite by thickness. */
  static double metalPerLayeredScale() {
    return 0.95 * WUSTITE.metalPerScale()
        + 0.04 * MAGNETITE.metalPerScale()
        + 0.01 * HEMATITE.metalPerScale();
  }
}
