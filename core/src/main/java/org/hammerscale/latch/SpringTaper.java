package org.hammerscale.latch;

/** How much more a flat spring gives that tapers in width: K of f = K P L³/(Y b t³). */
final class SpringTaper {
  private SpringTaper() {}

  /**
   * K at the tip, or at a part of the length: 12 ∫ u (u − 1 + part)/b du, u from the tip in lengths
   * and the width b from 1 − part to the root.
   *
   * @param part of the length from the root, 0 to 1
   * @param lost of the width from root to tip, 0 to 1
   */
  static double factor(double part, double lost) {
    if (lost * part <= 0.5) {
      // As a series in what the width loses: the closed form would lose digits.
      double power = 12 * part * part;
      double sum = 0;
      double term = power;
      for (int k = 0; sum + term != sum; k++) {
        term = power * (1.0 / (k + 1) - part / (k + 3)) / (k + 2);
        sum += term;
        power *= lost * part;
      }
      return sum;
    }
    double c = (1 - lost) / lost;
    double s = 1 - part;
    double bent = c == 0 ? 0 : c * (s + c) * Math.log((1 + c) / (s + c));
    return 12 / lost * ((1 - s * s) / 2 - (s + c) * part + bent);
  }

  /** The tip's width as a share of the root's that has a factor from 4 to 6. */
  static double of(double factor) {
    double wide = 1;
    double narrow = 0;
    while (wide - narrow > 1e-13) {
      double middle = (wide + narrow) / 2;
      if (factor(1, 1 - middle) > factor) {
        narrow = middle;
      } else {
        wide = middle;
      }
    }
    return (wide + narrow) / 2;
  }
}
