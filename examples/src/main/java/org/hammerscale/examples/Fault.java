package org.hammerscale.examples;

/** One thing wrong in an order file: where, what, and what is accepted there. */
record Fault(int line, String column, String problem) {
  @Override
  public String toString() {
    return "line " + line + (column.isEmpty() ? "" : ", " + column) + ": " + problem;
  }
}
