package org.hammerscale.examples;

/** One thing wrong in an order file: where, what, and what is accepted there. */
record Fault(int line, String item, String problem) {
  @Override
  public String toString() {
    return "line " + line + (item.isEmpty() ? "" : ", " + item) + ": " + problem;
  }
}
