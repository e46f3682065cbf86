package org.hammerscale.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Quadrature;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/**
 * How fast hot iron scales in air, by one published set of constants: {@index "parabolic
 * oxidation"}, x² = ∫ k(T) dt with k(T) = k₀ exp(−E / (R T)). Scale is oxide; it slows its own
 * growth, since iron must travel through it.
 *
 * <pre>{@code
 * FireHistory soak = FireHistory.soak(celsius(1150), minutes(10));
 * ScaleLaw.MI.metalLoss(soak)       // 0.2548 mm  off each face, by the law that ScaleLoss reckons by
 * ScaleLaw.MI.scaleThickness(soak)  // 0.4493 mm  the skin that falls off: oxide takes more room than iron
 * ScaleLaw.STANLEY.metalLoss(soak)  // 0.1932 mm  by another law,
 * ScaleLaw.STANLEY                  // law of Stanley, 500 °C to 900 °C  which was measured at lower heats
 * }</pre>
 *
 * <p>These are laboratory laws for clean iron with scale that holds on; iron and low-carbon steel
 * behave alike. What a bar loses in a forge is told with its spread by {@link ScaleLoss}, which
 * reckons by {@link #MI} and covers the other two.
 *
 * <p>Source: of each set its {@link #source}.
 */
public final class ScaleLaw {
  private static final double GAS = 8.314462618;

  /** Joules in a thermochemical calorie. */
  private static final double CALORIE = 4.184;

  /** One piece of an integral reaches to this many times the absolute temperature. */
  private static final double REACH = 1.5;

  /**
   * The set that {@link ScaleLoss} reckons by: growth of dense wüstite, X dX/dt = 267 mm²/s exp(−20
   * 319 K / T), 700 to 1250 °C. Made for burning iron, and calibrated on the growth that Paidassi
   * measured.
   */
  public static final ScaleLaw MI =
      new ScaleLaw(
          "Mi",
          Grown.WUSTITE,
          534,
          20319,
          1,
          "534 / exp(20319 / T)",
          new Range(700, 1250),
          Source.read(
              "open-source code of models of burning iron",
              "k₀ = 2.67e-4 m²/s, Tₐ = 20319 K; taken to be the law of Mi, Fujinawa and"
                  + " Bergthorson, Combustion and Flame, 2022"));

  /**
   * The growth of scale of all three oxides that Paidassi measured in 1958, as Chen and Yuen quote
   * it: X² = 6.1 cm²/s exp(−169 452 J / R T) t, 700 to 1250 °C.
   */
  public static final ScaleLaw PAIDASSI =
      new ScaleLaw(
          "Paidassi",
          Grown.LAYERS,
          610,
          169_452,
          GAS,
          "610 / exp(169452 / (8.314462618 T))",
          new Range(700, 1250),
          Source.fromMemory(
              "Paidassi 1958, in Chen and Yuen, Oxidation of Metals 59, 2003", "pp. 433 to 468"));

  /**
   * The oxygen that iron took up in air on the balance of Stanley, Hoene and Huntoon: W² = 0.37
   * g²/(cm⁴ s) exp(−33 000 cal / R T) t, 500 to 900 °C; hotter it is extrapolated.
   */
  public static final ScaleLaw STANLEY =
      new ScaleLaw(
          "Stanley",
          Grown.OXYGEN,
          37,
          33_000 * CALORIE,
          GAS,
          "37 / exp(138072 / (8.314462618 T))",
          new Range(500, 900),
          Source.read(
              "Stanley, Hoene and Huntoon, Transactions ASM, 1950",
              "abstract 3262 of the Bureau of Mines; the unit from memory"));

  static final List<ScaleLaw> ALL = List.of(MI, PAIDASSI, STANLEY);

  /** What a law tells the growth of, and how much metal that is. */
  private enum Grown {
    WUSTITE("X", "thickness of dense wüstite", 1, wustite()),
    LAYERS("X", "thickness of all scale", 1, Oxide.metalPerLayeredScale()),
    /** In kg/m², of which one over a density in g/cm³ is a millimetre. */
    OXYGEN(
        "W",
        "oxygen taken up, kg/m²",
        Oxide.WUSTITE.ironPerOxygen() / Oxide.IRON_DENSITY / wustite(),
        Oxide.WUSTITE.ironPerOxygen() / Oxide.IRON_DENSITY);

    final String symbol;
    final String meaning;
    final double scale;
    final double metal;

    Grown(String symbol, String meaning, double scale, double metal) {
      this.symbol = symbol;
      this.meaning = meaning;
      this.scale = scale;
      this.metal = metal;
    }

    Unit<?> unit() {
      return this == OXYGEN ? ShopUnits.ONE : ShopUnits.MILLIMETRE;
    }

    private static double wustite() {
      return Oxide.WUSTITE.metalPerScale();
    }
  }

  /** From where to where it was measured, °C. */
  private record Range(double from, double to) {}

  private final String name;
  private final Grown grown;
  private final double prefactor;
  private final double energy;
  private final double gas;
  private final String formula;
  private final Range range;
  private final Source source;

  private ScaleLaw(
      String name,
      Grown grown,
      double prefactor,
      double energy,
      double gas,
      String formula,
      Range range,
      Source source) {
    this.name = name;
    this.grown = grown;
    this.prefactor = prefactor;
    this.energy = energy;
    this.gas = gas;
    this.formula = formula;
    this.range = range;
    this.source = Objects.requireNonNull(source, "source");
  }

  /**
   * The metal that goes into scale which holds on, from each bare surface.
   *
   * @param history how hot the iron is, and when
   * @return the thickness of metal lost, in millimetres; what the law says, without spread
   */
  public Measure<Length> metalLoss(FireHistory history) {
    Objects.requireNonNull(history, "history");
    return Measures.millimetres(metal(Notes.NONE, history));
  }

  /**
   * How thick that scale is when dense; furnace scale is porous, and so thicker.
   *
   * @param history how hot the iron is, and when
   * @return the thickness of scale, in millimetres; what the law says, without spread
   */
  public Measure<Length> scaleThickness(FireHistory history) {
    Objects.requireNonNull(history, "history");
    return Measures.millimetres(grown(Notes.NONE, history) * grown.scale);
  }

  private String range() {
    return Measures.celsius(range.from) + " to " + Measures.celsius(range.to);
  }

  /** {@return where its constants come from} */
  public Source source() {
    return source;
  }

  /**
   * Where a history leaves the temperatures that the law was measured at.
   *
   * @param history how hot the iron is, and when
   * @return a caution if the hottest moment lies out of that range; else none
   */
  public List<Caution> cautions(FireHistory history) {
    Objects.requireNonNull(history, "history");
    List<Caution> cautions = new ArrayList<>();
    double hottest = history.hottest().in(ShopUnits.CELSIUS);
    if (hottest > range.to || hottest < range.from) {
      cautions.add(
          Caution.limit(
              "the law of "
                  + name
                  + " was measured from "
                  + range()
                  + " and is extrapolated to "
                  + history.hottest()
                  + (hottest > range.to
                      ? "; compare the other laws, and weigh a piece before and after"
                      : "; so little scale grows there that it rarely matters"),
              source));
    }
    return List.copyOf(cautions);
  }

  /** The growth by which the law goes, in its own unit. */
  double grown(Notes n, FireHistory history) {
    if (history.isSoak()) {
      double theta =
          n.value("θ", "heat", "", history.hottest().in(ShopUnits.CELSIUS), ShopUnits.CELSIUS);
      double t =
          n.value(
              "T", "the same from absolute zero", "θ + 273.15", kelvin(theta), ShopUnits.KELVIN);
      double k = n.number("k", "growth of " + grown.symbol + "² a second", formula, rate(t));
      double s = n.value("t", "time at it", "", history.seconds(), ShopUnits.SECOND);
      return n.value(grown.symbol, grown.meaning, "√(k t)", Math.sqrt(k * s), grown.unit());
    }
    double q =
        n.number(
            "Q",
            "∫ " + formula + " dt along " + history + ", each ramp integrated",
            "",
            integral(history));
    return n.value(grown.symbol, grown.meaning, "√Q", Math.sqrt(q), grown.unit());
  }

  /** The metal lost, in millimetres; noted as x. */
  double metal(Notes n, FireHistory history) {
    double g = grown(n, history);
    double f = n.number("f", "mm of metal in one of " + grown.symbol, "", grown.metal);
    return n.value("x", "metal lost in one heat", "f " + grown.symbol, f * g, ShopUnits.MILLIMETRE);
  }

  /** The growth a second of the square of the metal lost, mm²/s, at a temperature in °C. */
  double metalRate(double celsius) {
    return grown.metal * grown.metal * rate(kelvin(celsius));
  }

  /** The thickness of metal in a thickness of scale. */
  double metalPerScale() {
    return grown.metal / grown.scale;
  }

  double prefactor() {
    return prefactor;
  }

  /** The energy of activation over the gas constant, in kelvins. */
  double activation() {
    return energy / gas;
  }

  private double integral(FireHistory history) {
    DoubleUnaryOperator k = celsius -> rate(kelvin(celsius));
    return history.integral(
        k, (low, high) -> Quadrature.integrate(k, low, high, new double[0], -273.15, REACH));
  }

  private double rate(double kelvin) {
    return prefactor / Math.exp(energy / (gas * kelvin));
  }

  private static double kelvin(double celsius) {
    return celsius + 273.15;
  }

  /** Author and range. */
  @Override
  public String toString() {
    return "law of " + name + ", " + range();
  }
}
