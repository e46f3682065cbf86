package org.hammerscale.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * What a cutting plan is to be good at. Aims are ranked: a later one only chooses among plans that
 * are equally good in all earlier ones.
 */
public enum Aim {
  /** Pay the least for new bars. Bars without a price cost nothing. */
  LEAST_MONEY("money"),

  /** Buy the least length of new bar, whatever it costs. */
  LEAST_NEW_STOCK("new stock"),

  /** Cut into the fewest bars, new ones and offcuts together. */
  FEWEST_BARS("bars"),

  /** Leave the longest single piece over on one of the bars that are cut. */
  LONGEST_LEFTOVER("longest leftover"),

  /**
   * Cut the bars in the fewest different ways, so that a stop of the saw serves many bars. Plans
   * have few patterns, seldom proved to be the fewest; a leftover ranked behind them is not proved.
   */
  FEWEST_PATTERNS("patterns");

  private final String label;

  Aim(String label) {
    this.label = label;
  }

  /** Whether it adds up over the bars that are taken. */
  boolean isOfMaterial() {
    return compareTo(LONGEST_LEFTOVER) < 0;
  }

  /** All five aims in rank: those that were named, then the others of each group as listed here. */
  static List<Aim> ranked(List<Aim> named) {
    List<Aim> material = new ArrayList<>();
    List<Aim> rest = new ArrayList<>();
    for (Aim aim : named) {
      if (material.contains(aim) || rest.contains(aim)) {
        throw new IllegalArgumentException("aims must differ, was " + named + "; name each once");
      }
      if (aim.isOfMaterial() && !rest.isEmpty()) {
        throw new IllegalArgumentException(
            "aims must name money, new stock and bars before leftover and patterns, was "
                + named
                + "; material that is bought for a long leftover would be no saving");
      }
      (aim.isOfMaterial() ? material : rest).add(aim);
    }
    for (Aim aim : values()) {
      List<Aim> group = aim.isOfMaterial() ? material : rest;
      if (!group.contains(aim)) {
        group.add(aim);
      }
    }
    material.addAll(rest);
    return List.copyOf(material);
  }

  /** Its name in words. */
  @Override
  public String toString() {
    return label;
  }
}
