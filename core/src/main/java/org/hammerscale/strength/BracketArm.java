package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The arm of a bracket, held at the wall and free at its tip: a {@index cantilever}. How far it
 * sinks, its {@index sag}, δ = F L³ / (3 E I) under a load at the tip, W L³ / (8 E I) under one
 * spread evenly, and its stress at the wall, M / Z.
 *
 * <pre>{@code
 * BracketArm arm = BracketArm.of(Section.onEdge(millimetres(8), millimetres(25)), millimetres(250));
 * arm.sag(newtons(200))          // 0.4762 mm  at the tip, with 200 N hung there
 * arm.sagSpread(newtons(200))    // 0.1786 mm  with as much along a shelf
 * arm.stress(newtons(200))       // 60 MPa   at the wall
 * }</pre>
 *
 * <p>A flat's thickness is its height here: put it on edge. Steel of 210 000 MPa unless told
 * otherwise. Exact for a beam held fast; a clamped strip measured in a laboratory sank 0.915 mm
 * where 0.574 mm were reckoned, since its clamp gave. Sources: bending of a beam; EN 1993-1-1 for
 * the modulus (from memory).
 */
public final class BracketArm {
  private static final Source BEAM = Source.computed("bending of a cantilever, small deflections");
  private static final Source MODULUS =
      Source.fromMemory("EN 1993-1-1", "3.2.6, 210 000 N/mm²; or as the caller tells");
  private static final Source MEASURED =
      Source.read("student laboratory note", "clamped bar, 0.915 mm measured, 0.574 mm computed");

  private final Section section;
  private final Measure<Length> length;
  private final Measure<Pressure> modulus;

  private BracketArm(Section section, Measure<Length> length, Measure<Pressure> modulus) {
    this.section = section;
    this.length = length;
    this.modulus = modulus;
  }

  /**
   * An arm of steel.
   *
   * @param section round, square or flat, as thick as it is high in the wall
   * @param length from the wall to the tip, more than zero
   * @return the arm
   * @throws IllegalArgumentException if the section is another, or the length not more than zero
   */
  public static BracketArm of(Section section, Quantity<Length> length) {
    Section.requireArea("section", section);
    if (!HookBeam.knows(section)) {
      throw new IllegalArgumentException(
          "section must be round, square or flat, was " + section + "; take one of these");
    }
    return new BracketArm(
        section, Arguments.positive("length", length), Measures.megapascals(210_000));
  }

  /**
   * The same of another stiffness.
   *
   * @param elasticModulus E, Young's modulus of the metal, more than zero
   * @return the arm
   * @throws IllegalArgumentException if the modulus is not more than zero
   */
  public BracketArm withModulus(Quantity<Pressure> elasticModulus) {
    return new BracketArm(
        section, length, Arguments.positivePressure("elastic modulus", elasticModulus));
  }

  /**
   * How far the tip sinks under a load that hangs from it.
   *
   * @param load at the tip, more than zero
   * @return the sag, exact for that beam, in the unit of the arm's length
   * @throws IllegalArgumentException if the load is not more than zero
   */
  public Measure<Length> sag(Quantity<Force> load) {
    return sagging(load, 3);
  }

  /**
   * How far the tip sinks under a load spread evenly over the arm.
   *
   * @param load all of it, more than zero
   * @return the sag, exact for that beam, in the unit of the arm's length
   * @throws IllegalArgumentException if the load is not more than zero
   */
  public Measure<Length> sagSpread(Quantity<Force> load) {
    return sagging(load, 8);
  }

  /**
   * The stress at the wall under a load at the tip; spread evenly it is half of that.
   *
   * @param load at the tip, more than zero
   * @return the bending stress, exact for that beam
   * @throws IllegalArgumentException if the load is not more than zero
   */
  public Measure<Pressure> stress(Quantity<Force> load) {
    return StressUnits.stress("load", load, this::stress);
  }

  /** {@return that fixings give, and that no design is certified} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(
        Caution.limit(
            "plate, screws and wall give too: an arm sinks more than reckoned, half as much again in a"
                + " measured case",
            MEASURED));
    cautions.addAll(LoadCautions.OF_STRENGTH);
    return List.copyOf(cautions);
  }

  /**
   * How the sag under a load at the tip was found.
   *
   * @param load at the tip, more than zero
   * @return the working of {@link #sag}, in inches or millimetres
   */
  public Working sagWorking(Quantity<Force> load) {
    return told(StressUnits.working("sag of a " + this, "load", load, (n, u, f) -> sag(n, u, f, 3)))
        .withSource(MODULUS);
  }

  /**
   * How the sag under a load spread evenly was found.
   *
   * @param load all of it, more than zero
   * @return the working of {@link #sagSpread}, in inches or millimetres
   */
  public Working sagSpreadWorking(Quantity<Force> load) {
    return told(StressUnits.working("sag of a " + this, "load", load, (n, u, f) -> sag(n, u, f, 8)))
        .withSource(MODULUS);
  }

  /**
   * How the stress at the wall was found.
   *
   * @param load at the tip, more than zero
   * @return the working of {@link #stress}
   */
  public Working stressWorking(Quantity<Force> load) {
    return told(StressUnits.working("stress of a " + this, "load", load, this::stress));
  }

  private Working told(Working working) {
    return working.withSource(BEAM).withCautions(cautions());
  }

  private Measure<Length> sagging(Quantity<Force> load, int divisor) {
    Measure<Force> checked = Arguments.positiveForce("load", load);
    StressUnits units = StressUnits.ofForce(checked);
    return units.length(sag(Notes.NONE, units, checked, divisor)).to(length.getUnit());
  }

  private double sag(Notes n, StressUnits units, Measure<Force> load, int divisor) {
    double f = units.givenForce(n, "load", load);
    double l = units.given(n, "L", "length of the arm", length);
    double e = units.givenStress(n, "E", "modulus of the metal", modulus);
    double h = units.given(n, "h", "height of the arm", section.thickness());
    double b = units.given(n, "b", "width of the arm", section.width());
    double i = section.isRound() ? Math.PI * (h * h) * (h * h) / 64 : b * (h * h * h) / 12;
    n.value(
        "I",
        "second moment of its section",
        section.isRound() ? "π h² h² / 64" : "b h³ / 12",
        i,
        units.length().pow(4));
    return n.length(
        "δ", "sag of the tip", "F L³ / (" + divisor + " E I)", f * (l * l * l) / (divisor * e * i));
  }

  private double stress(Notes n, StressUnits units, Measure<Force> load) {
    double f = units.givenForce(n, "load", load);
    double l = units.given(n, "L", "length of the arm", length);
    double h = units.given(n, "h", "height of the arm", section.thickness());
    double b = units.given(n, "b", "width of the arm", section.width());
    double z =
        section.isRound()
            ? n.volume("Z", "section modulus", "π h³ / 32", Math.PI * (h * h * h) / 32)
            : n.volume("Z", "section modulus", "b h² / 6", b * (h * h) / 6);
    return units.pressure(n, "σ", "bending stress at the wall", "F L / Z", f * l / z);
  }

  /** Section and length. */
  @Override
  public String toString() {
    return "bracket arm of " + section + ", " + length + " long";
  }
}
