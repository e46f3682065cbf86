package org.hammerscale.internal.pen;

/** The kinds of line, after the habits of ISO 128: wide for what is seen, narrow for the rest. */
public enum Line {
  /** Edges that are seen. */
  WIDE("wide", 0.5, ""),
  /** Dimensions, extension lines, leaders. */
  NARROW("narrow", 0.25, ""),
  /** Edges behind the iron. */
  HIDDEN("hidden", 0.25, "3 1.5"),
  /** Centre lines and mean lines. */
  CENTRE("centre", 0.25, "8 1.5 0.7 1.5"),
  /** Where a part lies at the other end of its way. */
  MOVED("moved", 0.25, "8 1.5 0.7 1.5 0.7 1.5"),
  /** Hatching of what is cut. */
  HATCH("hatch", 0.18, ""),
  /** Where the saw goes. */
  CUT("cut", 0.7, "6 2 1 2"),
  /** No line but what one encloses: arrowheads, points of contact. */
  SOLID("solid", 0, "");

  /** The word that its lines are classed by in the SVG. */
  public final String word;

  public final double width;
  public final String dashes;

  Line(String word, double width, String dashes) {
    this.word = word;
    this.width = width;
    this.dashes = dashes;
  }

  /** What a style sheet says of all of them. */
  public static String styleSheet() {
    StringBuilder css =
        new StringBuilder("path,circle{fill:none;stroke:#000;stroke-linejoin:round}");
    for (Line line : values()) {
      css.append('.').append(line.word).append("{stroke-width:").append(line.width);
      css.append(line.dashes.isEmpty() ? "" : ";stroke-dasharray:" + line.dashes).append('}');
    }
    return css.append(".solid{fill:#000;stroke:none}")
        .append("text{font-family:")
        .append(FontMetric.FAMILY)
        .append(";fill:#000}")
        .toString();
  }
}
