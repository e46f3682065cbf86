package org.hammerscale.heat;

import static org.hammerscale.units.Measures.celsius;

import java.util.List;
import org.hammerscale.working.Source;

/** The published tables of heat colours, as printed. One temperature is a point, two a range. */
final class HeatColourTables {
  private static final Source CHAPMAN =
      Source.read("Chapman, Workshop Technology, part 1, 5th ed., 1972", "heat colours");
  private static final Source STIRLING =
      Source.read("Stirling Consolidated Boiler Co., A Book of Steam for Engineers, 1905", "p. 50");
  private static final Source DOOLEY =
      Source.read("Dooley, Applied Science for Metal Workers", "printed in °F");
  private static final Source MACHINERY =
      Source.read("Machinery's Handbook, 12th ed.", "as quoted by others");
  private static final Source WHITE_TAYLOR =
      Source.fromMemory("White and Taylor, Transactions of the ASME, 1899", "heat colours");

  /** All rows, table by table, each from the coolest. */
  static final List<HeatColour> ALL =
      List.of(
          range(CHAPMAN, "black red (dull light)", 426, 593),
          range(CHAPMAN, "very dark red", 594, 704),
          range(CHAPMAN, "dark red", 705, 814),
          range(CHAPMAN, "cherry red", 815, 870),
          range(CHAPMAN, "light cherry red", 871, 981),
          range(CHAPMAN, "orange", 982, 1092),
          range(CHAPMAN, "yellow", 1093, 1258),
          range(CHAPMAN, "yellow white", 1259, 1314),
          upwards(CHAPMAN, "white", 1315),
          point(STIRLING, "red just visible", 525),
          point(STIRLING, "dull red", 699),
          point(STIRLING, "dull cherry red", 800),
          point(STIRLING, "full cherry red", 900),
          point(STIRLING, "clear cherry red", 1000),
          point(STIRLING, "deep orange", 1100),
          point(STIRLING, "clear orange", 1200),
          point(STIRLING, "white heat", 1300),
          point(STIRLING, "white bright", 1400),
          point(STIRLING, "white dazzling", 1500),
          point(DOOLEY, "first sign of red", 514),
          point(DOOLEY, "dull red", 699),
          point(DOOLEY, "dark cherry", 799),
          point(DOOLEY, "cherry red", 902),
          point(DOOLEY, "bright red", 1021),
          point(DOOLEY, "dull orange", 1099),
          point(DOOLEY, "bright orange", 1199),
          point(DOOLEY, "white heat", 1299),
          point(DOOLEY, "bright white", 1399),
          range(DOOLEY, "dazzling white", 1499, 1599),
          point(MACHINERY, "red heat visible in the dark", 400),
          point(MACHINERY, "red heat visible in twilight", 474),
          point(MACHINERY, "red heat visible in daylight", 524),
          point(MACHINERY, "red heat visible in sunlight", 581),
          point(MACHINERY, "dark red", 700),
          point(MACHINERY, "dazzling bluish white", 1600),
          point(WHITE_TAYLOR, "dark blood red / black red", 532),
          point(WHITE_TAYLOR, "dark red / blood red", 566),
          point(WHITE_TAYLOR, "dark cherry", 635),
          point(WHITE_TAYLOR, "medium cherry", 677),
          point(WHITE_TAYLOR, "cherry / full red", 746),
          point(WHITE_TAYLOR, "light cherry, scaling heat", 843),
          point(WHITE_TAYLOR, "salmon / orange", 899),
          point(WHITE_TAYLOR, "light salmon", 941),
          point(WHITE_TAYLOR, "yellow", 996),
          point(WHITE_TAYLOR, "light yellow", 1079),
          point(WHITE_TAYLOR, "white", 1204));

  private HeatColourTables() {}

  private static HeatColour range(Source table, String name, double from, double to) {
    return new HeatColour(table, name, celsius(from), celsius(to), false);
  }

  private static HeatColour upwards(Source table, String name, double from) {
    return new HeatColour(table, name, celsius(from), celsius(from), true);
  }

  private static HeatColour point(Source table, String name, double at) {
    return new HeatColour(table, name, celsius(at), celsius(at), false);
  }
}
