package org.hammerscale.scale;

import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;

/** What the reckoning of scale rests on, for the checks against published values. */
public final class ScaleKernels {
  private static final double GAS = 8.314462618;

  private ScaleKernels() {}

  /** The constant before the exponential as it was published: m²/s, cm²/s or g²/(cm⁴ s). */
  public static double prefactor(ScaleLaw law) {
    if (law == ScaleLaw.MI) {
      return law.prefactor() / 2e6; // of mm² in X² = 2 k t
    }
    return law.prefactor() / 100; // of mm² in cm², and of kg²/m⁴ in g²/cm⁴
  }

  /** In kJ/mol. */
  public static double energy(ScaleLaw law) {
    return law.activation() * GAS / 1000;
  }

  /** In kg/m². */
  public static double oxygen(ScaleLaw law, FireHistory history) {
    return law.grown(Notes.NONE, history);
  }

  /** With a supply of oxygen for so many µm of metal a second. */
  public static Measure<Length> fed(ScaleLaw law, FireHistory history, double supply) {
    return Measures.millimetres(OxygenSupply.metal(law, history, supply / 1000));
  }

  public static double oxide(String name, String quantity) {
    if (name.equals("scale 95:4:1")) {
      return Oxide.metalPerLayeredScale();
    }
    Oxide oxide =
        switch (name) {
          case "wüstite" -> Oxide.WUSTITE;
          case "magnetite" -> Oxide.MAGNETITE;
          case "hematite" -> Oxide.HEMATITE;
          case "wüstite short of iron" -> new Oxide(0.95, 1, 5.7);
          default -> throw new IllegalArgumentException(name);
        };
    return switch (quantity) {
      case "molar mass" -> oxide.molarMass();
      case "iron fraction" -> oxide.ironFraction();
      case "oxide per iron" -> 1 / oxide.ironFraction();
      case "iron per oxygen" -> oxide.ironPerOxygen();
      case "density" -> oxide.density();
      case "Pilling-Bedworth ratio" -> 1 / oxide.metalPerScale();
      case "metal per scale" -> oxide.metalPerScale();
      default -> throw new IllegalArgumentException(quantity);
    };
  }
}
