package org.hammerscale.examples.order;

/** One thing wrong in an order file: where, what, and what is accepted there. */
public record Fault(int line, String item, String problem) {
  private static final int MOST_ECHOED = 40;

  @Override
  public String toString() {
    return "line " + line + (item.isEmpty() ? "" : ", " + item) + ": " + problem;
  }

  /** What stands in a file as it may go to a terminal: cut short, its control characters told. */
  public static String echo(String text) {
    StringBuilder safe = new StringBuilder("\"");
    int end = Math.min(text.length(), MOST_ECHOED);
    for (int i = 0; i < end; i++) {
      char c = text.charAt(i);
      safe.append(isPrintable(c) ? c : String.format(java.util.Locale.ROOT, "\\u%04x", (int) c));
    }
    return safe.append(text.length() > end ? "…\"" : "\"").toString();
  }

  /** Whether a terminal shows it and does nothing else. */
  public static boolean isPrintable(char c) {
    int type = Character.getType(c);
    return type != Character.CONTROL
        && type != Character.FORMAT
        && type != Character.LINE_SEPARATOR
        && type != Character.PARAGRAPH_SEPARATOR;
  }
}
