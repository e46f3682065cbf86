package org.hammerscale.fastening;

import org.hammerscale.working.Source;

/** The distances that a rule names, in diameters. */
final class SpacingTable {
  private static final Source EC5 =
      Source.read(
          "LVL Handbook 2025, table 5.1, whose columns are those of EN 1995-1-1", "table 8.2");
  private static final Source COMMENTARY =
      Source.fromMemory("NDS Commentary", "tables C12.1.5.7 and C12.1.6.6");
  private static final Source ICC =
      Source.read("ICC-ES ESR-4948", "connection geometry, as the maker prints it");
  private static final Source BOLTS =
      Source.fromMemory("ANSI/AWC NDS 2015", "tables 12.5.1A to 12.5.1D");

  static final SpacingTable EC5_DRILLED =
      table(EC5).spaced(m(4, 1, 0), m(3, 0, 1)).ends(m(7, 5, 0), m(7)).edges(m(3, 0, 2), m(3));
  static final SpacingTable EC5_DRILLED_THICK = EC5_DRILLED.edges(m(3, 0, 4), m(3));
  static final SpacingTable EC5_LIGHT =
      table(EC5).spaced(m(5, 5, 0), m(5)).ends(m(10, 5, 0), m(10)).edges(m(5, 0, 2), m(5));
  static final SpacingTable EC5_LIGHT_THICK =
      EC5_LIGHT.spaced(m(5, 7, 0), m(5)).edges(m(5, 0, 5), m(5));
  static final SpacingTable EC5_DENSE =
      table(EC5).spaced(m(7, 8, 0), m(7)).ends(m(15, 5, 0), m(15)).edges(m(7, 0, 2), m(7));
  static final SpacingTable EC5_DENSE_THICK = EC5_DENSE.edges(m(7, 0, 5), m(7));

  static final SpacingTable STEEL_PLATE =
      table(COMMENTARY)
          .spaced(m(10), m(5))
          .rows(m(3), m(2.5))
          .ends(m(10), m(5))
          .edges(m(2.5), m(2.5));
  static final SpacingTable STEEL_PLATE_PREBORED =
      table(COMMENTARY)
          .spaced(m(5), m(2.5))
          .rows(m(2.5), m(2.5))
          .ends(m(5), m(3))
          .edges(m(2.5), m(2.5));
  static final SpacingTable WOOD_MEMBER =
      table(COMMENTARY)
          .spaced(m(15), m(10))
          .rows(m(5), m(2.5))
          .ends(m(15), m(10))
          .edges(m(2.5), m(2.5));
  static final SpacingTable WOOD_MEMBER_PREBORED =
      table(COMMENTARY)
          .spaced(m(10), m(5))
          .rows(m(3), m(2.5))
          .ends(m(10), m(5))
          .edges(m(2.5), m(2.5));

  static final SpacingTable STRUCTURAL_LIGHT =
      table(ICC).spaced(m(15), m(5)).ends(m(15), m(10)).edges(m(10), m(5));
  static final SpacingTable STRUCTURAL_DENSE =
      table(ICC).spaced(m(15), m(7)).ends(m(20), m(15)).edges(m(12), m(7));
  static final SpacingTable STRUCTURAL_AXIAL =
      table(ICC).spaced(m(7), m(5)).ends(m(10), m(10)).edges(m(4), m(4));

  static final SpacingTable BOLT_SOFTWOOD =
      table(BOLTS).spaced(m(4), m(4)).rows(m(1.5), m(1.5)).ends(m(7), m(4)).edges(m(4), m(1.5));
  static final SpacingTable BOLT_HARDWOOD = BOLT_SOFTWOOD.ends(m(5), m(4));

  private final Source source;
  private final Multiple along;
  private final Multiple across;
  private final Multiple rows;
  private final Multiple staggered;
  private final Multiple loadedEnd;
  private final Multiple unloadedEnd;
  private final Multiple loadedEdge;
  private final Multiple unloadedEdge;

  private SpacingTable(Source source, Multiple... all) {
    this.source = source;
    this.along = all[0];
    this.across = all[1];
    this.rows = all[2];
    this.staggered = all[3];
    this.loadedEnd = all[4];
    this.unloadedEnd = all[5];
    this.loadedEdge = all[6];
    this.unloadedEdge = all[7];
  }

  /**
   * So many diameters: fixed + along × cosine + across × sine of the angle between force and grain.
   */
  record Multiple(double fixed, double along, double across) {
    /** The formula, with u for the cosine and v for the sine. */
    String text() {
      String text = number(fixed);
      if (along > 0) {
        text += " + " + times(along, "u");
      }
      return across > 0 ? text + " + " + times(across, "v") : text;
    }

    private static String times(double factor, String symbol) {
      return factor == 1 ? symbol : number(factor) + " " + symbol;
    }

    private static String number(double value) {
      return value == Math.rint(value) ? Integer.toString((int) value) : Double.toString(value);
    }
  }

  private static Multiple m(double fixed) {
    return new Multiple(fixed, 0, 0);
  }

  private static Multiple m(double fixed, double along, double across) {
    return new Multiple(fixed, along, across);
  }

  private static SpacingTable table(Source source) {
    Multiple none = m(0);
    return new SpacingTable(source, none, none, none, none, none, none, none, none);
  }

  /** Rows stand as far apart as fasteners across the grain, unless {@link #rows} says otherwise. */
  private SpacingTable spaced(Multiple alongGrain, Multiple acrossGrain) {
    return new SpacingTable(
        source,
        alongGrain,
        acrossGrain,
        acrossGrain,
        acrossGrain,
        loadedEnd,
        unloadedEnd,
        loadedEdge,
        unloadedEdge);
  }

  private SpacingTable rows(Multiple inLine, Multiple inStagger) {
    return new SpacingTable(
        source, along, across, inLine, inStagger, loadedEnd, unloadedEnd, loadedEdge, unloadedEdge);
  }

  private SpacingTable ends(Multiple loaded, Multiple unloaded) {
    return new SpacingTable(
        source, along, across, rows, staggered, loaded, unloaded, loadedEdge, unloadedEdge);
  }

  private SpacingTable edges(Multiple loaded, Multiple unloaded) {
    return new SpacingTable(
        source, along, across, rows, staggered, loadedEnd, unloadedEnd, loaded, unloaded);
  }

  Source source() {
    return source;
  }

  Multiple along() {
    return along;
  }

  Multiple across() {
    return across;
  }

  Multiple rows() {
    return rows;
  }

  Multiple staggered() {
    return staggered;
  }

  Multiple loadedEnd() {
    return loadedEnd;
  }

  Multiple unloadedEnd() {
    return unloadedEnd;
  }

  Multiple loadedEdge() {
    return loadedEdge;
  }

  Multiple unloadedEdge() {
    return unloadedEdge;
  }
}
