package org.hammerscale.working;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * Evaluates the formula texts of workings, by a reader written apart from the code that prints
 * them: sums, products (× or a space), quotients, powers ² ³, roots √, π, {@code up(x, s)}, {@code
 * pow(x, y)}, {@code atan2(y, x)} and the {@link #FUNCTIONS}.
 */
final class Formula {
  /** Functions of one argument; angles in radians, lg to base ten. */
  private static final Map<String, DoubleUnaryOperator> FUNCTIONS =
      Map.of(
          "sin", Math::sin,
          "cos", Math::cos,
          "tan", Math::tan,
          "asin", Math::asin,
          "acos", Math::acos,
          "atan", Math::atan,
          "ln", Math::log,
          "lg", Math::log10,
          "exp", Math::exp,
          "E", Formula::ellipticE);

  private final String text;
  private final Map<String, Double> values;
  private int at;

  private Formula(String text, Map<String, Double> values) {
    this.text = text;
    this.values = values;
  }

  static double evaluate(String text, Map<String, Double> values) {
    Formula formula = new Formula(text, values);
    double result = formula.sum();
    if (formula.at < text.length()) {
      throw new IllegalArgumentException("cannot read on at " + formula.at + " of " + text);
    }
    return result;
  }

  private double sum() {
    double result = product();
    while (true) {
      if (take('+')) {
        result += product();
      } else if (take('−')) {
        result -= product();
      } else {
        return result;
      }
    }
  }

  private double product() {
    double result = power();
    while (true) {
      if (take('×')) {
        result *= power();
      } else if (take('/')) {
        result /= power();
      } else if (factorFollows()) {
        result *= power();
      } else {
        return result;
      }
    }
  }

  private double power() {
    double result = factor();
    if (take('²')) {
      return result * result;
    }
    return take('³') ? result * result * result : result;
  }

  private double factor() {
    if (take('(')) {
      double result = sum();
      expect(')');
      return result;
    }
    if (take('√')) {
      return Math.sqrt(factor());
    }
    String word = word();
    if (word.equals("up")) {
      expect('(');
      double value = sum();
      expect(',');
      double step = sum();
      expect(')');
      return Math.ceil(value / step - 1e-9) * step;
    }
    if (word.equals("pow")) {
      expect('(');
      double base = sum();
      expect(',');
      double exponent = sum();
      expect(')');
      return Math.pow(base, exponent);
    }
    if (word.equals("atan2")) {
      expect('(');
      double opposite = sum();
      expect(',');
      double adjacent = sum();
      expect(')');
      return Math.atan2(opposite, adjacent);
    }
    DoubleUnaryOperator function = FUNCTIONS.get(word);
    if (function != null) {
      expect('(');
      double value = sum();
      expect(')');
      return function.applyAsDouble(value);
    }
    if (word.equals("π")) {
      return Math.PI;
    }
    if (Character.isDigit(word.charAt(0))) {
      return Double.parseDouble(word);
    }
    Double value = values.get(word);
    if (value == null) {
      throw new IllegalArgumentException("no earlier symbol " + word + " in " + text);
    }
    return value;
  }

  /**
   * Complete elliptic integral of the second kind of the parameter m: the trapezium rule, which is
   * as good as exact for a periodic integrand.
   */
  private static double ellipticE(double m) {
    int steps = 4096;
    double sum = 0;
    double lost = 0; // what rounding dropped from the sum
    for (int i = 0; i < steps; i++) {
      double sine = Math.sin(Math.PI * (i + 0.5) / (2 * steps));
      double term = Math.sqrt(1 - m * sine * sine) - lost;
      double next = sum + term;
      lost = (next - sum) - term;
      sum = next;
    }
    return Math.PI / 2 * (sum / steps);
  }

  private String word() {
    skipSpace();
    int start = at;
    while (at < text.length() && "+−×/()²³√, ".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    if (at == start) {
      throw new IllegalArgumentException("a factor is missing at " + at + " of " + text);
    }
    return text.substring(start, at);
  }

  private boolean factorFollows() {
    skipSpace();
    return at < text.length() && "+−×/)²³,".indexOf(text.charAt(at)) < 0;
  }

  private boolean take(char c) {
    skipSpace();
    boolean found = at < text.length() && text.charAt(at) == c;
    if (found) {
      at++;
    }
    return found;
  }

  private void expect(char c) {
    if (!take(c)) {
      throw new IllegalArgumentException("expected " + c + " at " + at + " of " + text);
    }
  }

  private void skipSpace() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
  }
}
