package org.hammerscale.internal.pen;

/**
 * How wide a text is: the advance widths of Helvetica, which Arial and Liberation Sans share, in
 * thousandths of the size. Where another font stands in, each text is still set to this width, so
 * that the room kept for a label is the room that it takes.
 */
public final class FontMetric {
  /** As a style sheet names them. */
  public static final String FAMILY = "'Liberation Sans',Arial,Helvetica,sans-serif";

  /** Above the base line and below it, in sizes. */
  public static final double ASCENT = 0.74;

  public static final double DESCENT = 0.22;

  /** Half the height of a capital, in sizes. */
  public static final double HALF_CAPITAL = 0.36;

  private static final int WIDEST = 1015;

  /** From the blank to the tilde. */
  private static final int[] WIDTHS = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556,
    556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
    611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667,
    667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500,
    222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
  };

  private FontMetric() {}

  /** The width of a text of a size, in the unit of the size. */
  public static double width(String text, double size) {
    int sum = 0;
    for (int i = 0; i < text.length(); i++) {
      sum += advance(text.charAt(i));
    }
    return sum * size / 1000;
  }

  private static int advance(char c) {
    if (c >= ' ' && c <= '~') {
      return WIDTHS[c - ' '];
    }
    return switch (c) {
      case '°' -> 400;
      case '×', '−', '±' -> 584;
      case 'Ø' -> 778;
      case '–' -> 556;
      default -> WIDEST;
    };
  }
}
