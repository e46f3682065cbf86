package org.hammerscale.bending;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * Proportions of old crane hooks after Towne, by capacity in short tons (2000 lb), as a bench rule
 * for the shape of a hook: sizes of the opening by the capacity, sizes of the metal by the stock.
 * Letters are those of the printed figure. Other name: {@index "hoisting hook"}.
 *
 * <pre>{@code
 * HookProportions hook = HookProportions.forCapacity(pounds(500));
 * hook.stock()                          // 11/16 in  round bar, A
 * hook.size(HookProportions.Size.D)     // 1 3/8 in  the opening
 * hook.size(HookProportions.Size.F)     // 0.9325 in
 * hook.size(HookProportions.Size.H)     // 0.7425 in
 * }</pre>
 *
 * <p>Historical data and <strong>no rating</strong> of a hand-forged hook: what one bears tells
 * {@code CarryingHook} of the package {@code strength}, for a steady load, and not for lifting.
 * Exact by the printed formulas; the source rounds sizes of the bend to 1/16 in and of the body to
 * 1/32 in. Source: <cite>Modern Shop Practice</cite>, vol. 2, hoisting hooks after Towne (read;
 * 1/8, 1/2, 5 and 10 tons from memory, since the scan is garbled there).
 */
public final class HookProportions {
  private static final Source TOWNE =
      Source.read(
          "American Technical Society, Modern Shop Practice, vol. 2",
          "hoisting hooks, after Towne");
  private static final double SHORT_TON = 2000;

  /** Capacity in short tons, round stock in inches. */
  private static final double[][] STOCK = {
    {0.125, 0.625},
    {0.25, 0.6875},
    {0.5, 0.75},
    {1, 1.0625},
    {1.5, 1.25},
    {2, 1.375},
    {3, 1.75},
    {4, 2},
    {5, 2.25},
    {6, 2.5},
    {8, 2.875},
    {10, 3.25}
  };

  /** A size by the letter of the printed figure: of the opening D to G, O, Q; else of the metal. */
  public enum Size {
    /** Opening: 0.5 T + 1.25 in. */
    D(0.5, 1.25, 0),
    /** Opening: 0.64 T + 1.6 in. */
    E(0.64, 1.6, 0),
    /** Opening: 0.33 T + 0.85 in. */
    F(0.33, 0.85, 0),
    /** Opening: 0.75 D. */
    G(0.375, 0.9375, 0),
    /** Opening: 0.363 T + 0.66 in. */
    O(0.363, 0.66, 0),
    /** Opening: 0.64 T + 1.6 in. */
    Q(0.64, 1.6, 0),
    /** Metal: 1.08 A. */
    H(0, 0, 1.08),
    /** Metal: 1.33 A. */
    I(0, 0, 1.33),
    /** Metal: 1.2 A. */
    J(0, 0, 1.2),
    /** Metal: 1.13 A. */
    K(0, 0, 1.13),
    /** Metal: 1.05 A. */
    L(0, 0, 1.05),
    /** Metal: 0.5 A. */
    M(0, 0, 0.5),
    /** Metal: 0.8 A. */
    B(0, 0, 0.8),
    /** Metal: 1.2 A. */
    C(0, 0, 1.2),
    /** Metal: 0.85 B − 0.16 in. */
    N(0, -0.16, 0.68),
    /** Metal: 0.866 A. */
    U(0, 0, 0.866);

    private final double perTon;
    private final double inches;
    private final double perStock;

    Size(double perTon, double inches, double perStock) {
      this.perTon = perTon;
      this.inches = inches;
      this.perStock = perStock;
    }
  }

  private final double tons;
  private final double stock;

  private HookProportions(double tons, double stock) {
    this.tons = tons;
    this.stock = stock;
  }

  /**
   * The proportions of a capacity; between those of the table, of the next.
   *
   * @param capacity up to 10 short tons, more than zero
   * @return the proportions
   * @throws IllegalArgumentException if the capacity is not more than zero, or beyond the table
   */
  public static HookProportions forCapacity(Quantity<Mass> capacity) {
    Measure<Mass> mass = Arguments.notNegativeMass("capacity", capacity);
    double tons = mass.in(ShopUnits.POUND) / SHORT_TON;
    for (double[] row : STOCK) {
      if (tons > 0 && tons <= row[0] * (1 + 1e-9)) {
        return new HookProportions(row[0], row[1]);
      }
    }
    throw new IllegalArgumentException(
        "capacity must be more than zero and at most 10 short tons (20000 lb), was "
            + mass
            + "; the table ends there");
  }

  /** {@return the capacity of the table that was taken, in pounds} */
  public Measure<Mass> capacity() {
    return Measures.pounds(tons * SHORT_TON);
  }

  /** {@return the diameter A of the round bar, as tabulated, in inches} */
  public Measure<Length> stock() {
    return Measures.inches(stock);
  }

  /**
   * A size of the hook.
   *
   * @param size its letter in the figure
   * @return the size by the printed formula, in inches
   */
  public Measure<Length> size(Size size) {
    return Measures.inches(size(Notes.NONE, Objects.requireNonNull(size, "size")));
  }

  /** {@return that it rates nothing} */
  public List<Caution> cautions() {
    return List.of(
        Caution.danger(
            "not for lifting people or over people, nor as lifting gear at all: proportions of old"
                + " shop-made hooks rate no hand-forged one; ask a licensed engineer"));
  }

  /**
   * How a size was found.
   *
   * @param size its letter in the figure
   * @return the working of {@link #size}
   */
  public Working working(Size size) {
    Objects.requireNonNull(size, "size");
    return Notes.taken("size " + size + " of a " + this, ShopUnits.INCH, n -> size(n, size))
        .withSource(TOWNE)
        .withCautions(cautions());
  }

  private double size(Notes n, Size size) {
    if (size.perStock > 0) {
      double a = n.given("A", "stock", stock);
      double p = n.number("p", "share of it", "", size.perStock);
      double m = n.given("m", "less", -size.inches);
      return n.length("S", "size " + size, "p A − m", p * a - m);
    }
    double t = n.number("T", "capacity in short tons", "", tons);
    double p = n.given("p", "on each ton", size.perTon);
    double m = n.given("m", "more", size.inches);
    return n.length("S", "size " + size, "p T + m", p * t + m);
  }

  /** Capacity and stock. */
  @Override
  public String toString() {
    return "hook for " + capacity() + " after Towne, of " + stock() + " bar";
  }
}
