package org.hammerscale.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import org.hammerscale.units.Measure;

/**
 * One line of a working: a symbol, what it means, the formula it came by, and its value. A given
 * has no formula.
 *
 * <p>Formulas are written with {@code + − × / ( ) ² ³ √ π}, a space for a product, {@code up(x, s)}
 * for x rounded up to the next multiple of s, {@code pow(x, y)} for x to the power y, {@code
 * exp(x)}, and the functions of angles by their names, in radians, {@code atan2(y, x)} for the
 * angle whose opposite is y and adjacent x. Their symbols are those of earlier steps.
 */
public final class Step {
  private static final MathContext SIX_DIGITS = new MathContext(6);

  private final String symbol;
  private final String meaning;
  private final String formula;
  private final Measure<?> value;

  Step(String symbol, String meaning, String formula, Measure<?> value) {
    this.symbol = symbol;
    this.meaning = meaning;
    this.formula = formula;
    this.value = value;
  }

  /** {@return the symbol, such as {@code L}} */
  public String symbol() {
    return symbol;
  }

  /** {@return what the symbol means, in the smith's words} */
  public String meaning() {
    return meaning;
  }

  /** {@return the formula in symbols of earlier steps; empty for a given} */
  public String formula() {
    return formula;
  }

  /** {@return the value, in the unit that the formula is evaluated in} */
  public Measure<?> value() {
    return value;
  }

  /** {@return whether it was given, not calculated} */
  public boolean isGiven() {
    return formula.isEmpty();
  }

  /** Symbol, formula and value, without the numbers that went in. */
  @Override
  public String toString() {
    return isGiven() ? symbol + " = " + value : symbol + " = " + formula + " = " + value;
  }

  /** The same with the numbers put in for the symbols. */
  String withNumbers(Map<String, String> numbers) {
    return isGiven()
        ? toString()
        : symbol + " = " + formula + " = " + substitute(numbers) + " = " + value;
  }

  /** The value as it stands in later formulas. */
  String number() {
    BigDecimal exact = BigDecimal.valueOf(value.getValue());
    BigDecimal rounded = exact.round(SIX_DIGITS);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private String substitute(Map<String, String> numbers) {
    StringBuilder text = new StringBuilder();
    boolean factorBefore = false;
    int at = 0;
    while (at < formula.length()) {
      char c = formula.charAt(at);
      int end = at + 1;
      while (isWord(c) && end < formula.length() && isWord(formula.charAt(end))) {
        end++;
      }
      String token = formula.substring(at, end);
      if (factorBefore && (isWord(c) || c == '(' || c == '√')) {
        text.append("× "); // a space between two factors is a product
      }
      text.append(numbers.getOrDefault(token, token));
      boolean function = end < formula.length() && formula.charAt(end) == '(' && isWord(c);
      if (c != ' ') {
        factorBefore = !function && (isWord(c) || ")²³".indexOf(c) >= 0);
      }
      at = end;
    }
    return text.toString();
  }

  private static boolean isWord(char c) {
    return Character.isLetterOrDigit(c) || c == '.' || (c >= '₀' && c <= '₉') || c == 'ₘ';
  }
}
