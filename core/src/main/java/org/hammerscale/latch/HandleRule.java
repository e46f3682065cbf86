package org.hammerscale.latch;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Source;
import org.jspecify.annotations.Nullable;

/**
 * What published rules and advice ask of handles: height, room for fingers, section. Other names:
 * {@index "door furniture"}, {@index "handle clearance"}.
 *
 * <pre>{@code
 * HandleRule.BS_8300_BEHIND_GRIP.allows(millimetres(40))   // false  too little room for fingers
 * HandleRule.ADA_HEIGHT                                    // height of door hardware from 34 in to 48 in
 * HandleRule.adaMostForce()                                // 5 lbf  with one hand, without pinching
 * }</pre>
 *
 * <p>They hold for doors that everybody uses; local codes govern, and which edition. Sources: each
 * rule its own.
 */
public final class HandleRule {
  /** Height of door hardware: at least 34 in, at most 48 in; 2010 ADA Standards. */
  public static final HandleRule ADA_HEIGHT =
      new HandleRule(
          "height of door hardware",
          Measures.inches(34),
          Measures.inches(48),
          Source.read("2010 ADA Standards", "404.2.7"));

  /** Height of door hardware: at most 48 in; 1991 ADA Standards. */
  public static final HandleRule ADA_1991_HEIGHT =
      new HandleRule(
          "height of door hardware",
          null,
          Measures.inches(48),
          Source.read("1991 ADA Standards", "4.13.9"));

  /**
   * Room behind a thumb latch or finger pull: at least 1.5 in; Accessibility guidance to the ADA
   * Standards.
   */
  public static final HandleRule FINGER_PULL =
      new HandleRule(
          "room behind a thumb latch or finger pull",
          Measures.inches(1.5),
          null,
          Source.read(
              "Accessibility guidance to the ADA Standards", "advice, not the text of 404.2.7"));

  /** Height of a pull handle's lower fixing: at least 700 mm, at most 1000 mm; BS 8300:2009. */
  public static final HandleRule BS_8300_PULL_BOTTOM =
      new HandleRule(
          "height of a pull handle's lower fixing",
          Measures.millimetres(700),
          Measures.millimetres(1000),
          Source.read("BS 8300:2009", "as two guidance pages print it"));

  /** Height of a pull handle's upper fixing: at least 1300 mm; BS 8300:2009. */
  public static final HandleRule BS_8300_PULL_TOP =
      new HandleRule(
          "height of a pull handle's upper fixing",
          Measures.millimetres(1300),
          null,
          Source.read("BS 8300:2009", "as two guidance pages print it"));

  /** Diameter of a pull handle: at least 19 mm, at most 35 mm; BS 8300. */
  public static final HandleRule BS_8300_PULL_SECTION =
      new HandleRule(
          "diameter of a pull handle",
          Measures.millimetres(19),
          Measures.millimetres(35),
          Source.read("BS 8300", "as guidance pages print it"));

  /** Diameter of a lever: at least 19 mm; BS 8300. */
  public static final HandleRule BS_8300_LEVER_SECTION =
      new HandleRule(
          "diameter of a lever",
          Measures.millimetres(19),
          null,
          Source.read("BS 8300", "as guidance pages print it"));

  /** Room behind a grip: at least 45 mm; BS 8300. */
  public static final HandleRule BS_8300_BEHIND_GRIP =
      new HandleRule(
          "room behind a grip",
          Measures.millimetres(45),
          null,
          Source.read("BS 8300", "as guidance pages print it"));

  /** Clear length of a lever: at least 95 mm; BS 8300. */
  public static final HandleRule BS_8300_LEVER_GRIP =
      new HandleRule(
          "clear length of a lever",
          Measures.millimetres(95),
          null,
          Source.read("BS 8300", "as guidance pages print it"));

  /** Height of a lever: at least 800 mm, at most 1050 mm; BS 8300. */
  public static final HandleRule BS_8300_LEVER_HEIGHT =
      new HandleRule(
          "height of a lever",
          Measures.millimetres(800),
          Measures.millimetres(1050),
          Source.read("BS 8300", "as guidance pages print it"));

  /** Backset from the edge: at least 54 mm; BS 8300. */
  public static final HandleRule BS_8300_BACKSET =
      new HandleRule(
          "backset from the edge",
          Measures.millimetres(54),
          null,
          Source.read("BS 8300", "as guidance pages print it"));

  /** Length of a pull handle: at least 400 mm; BS 8300:2001. */
  public static final HandleRule BS_8300_PULL_LENGTH =
      new HandleRule(
          "length of a pull handle",
          Measures.millimetres(400),
          null,
          Source.read("BS 8300:2001", "drawing"));

  /** Offset of a cranked pull from the edge: at least 50 mm; BS 8300. */
  public static final HandleRule BS_8300_CRANKED_OFFSET =
      new HandleRule(
          "offset of a cranked pull from the edge",
          Measures.millimetres(50),
          null,
          Source.read("BS 8300", "as guidance pages print it"));

  /** Height of a lever: at least 900 mm, at most 1100 mm; Australian access practice. */
  public static final HandleRule AUSTRALIAN_LEVER_HEIGHT =
      new HandleRule(
          "height of a lever",
          Measures.millimetres(900),
          Measures.millimetres(1100),
          Source.read("Australian access practice", "access page"));

  /** Room behind a grip: at least 35 mm, at most 45 mm; Australian access practice. */
  public static final HandleRule AUSTRALIAN_BEHIND_GRIP =
      new HandleRule(
          "room behind a grip",
          Measures.millimetres(35),
          Measures.millimetres(45),
          Source.read("Australian access practice", "access page"));

  /** Diameter of a grip: at least 20 mm; Australian access practice. */
  public static final HandleRule AUSTRALIAN_GRIP_SECTION =
      new HandleRule(
          "diameter of a grip",
          Measures.millimetres(20),
          null,
          Source.read("Australian access practice", "access page"));

  /** Length of a grab handle: at least 12 in; 29 CFR 1910. */
  public static final HandleRule CFR_GRAB_HANDLE_LENGTH =
      new HandleRule(
          "length of a grab handle",
          Measures.inches(12),
          null,
          Source.read("29 CFR 1910", "28 and 29"));

  /** Height of a door handle: at least 800 mm, at most 1100 mm; ISO 21542. */
  public static final HandleRule ISO_21542_HEIGHT =
      new HandleRule(
          "height of a door handle",
          Measures.millimetres(800),
          Measures.millimetres(1100),
          Source.fromMemory("ISO 21542", "door handles"));

  private static final List<HandleRule> ALL =
      List.of(
          ADA_HEIGHT,
          ADA_1991_HEIGHT,
          FINGER_PULL,
          BS_8300_PULL_BOTTOM,
          BS_8300_PULL_TOP,
          BS_8300_PULL_SECTION,
          BS_8300_LEVER_SECTION,
          BS_8300_BEHIND_GRIP,
          BS_8300_LEVER_GRIP,
          BS_8300_LEVER_HEIGHT,
          BS_8300_BACKSET,
          BS_8300_PULL_LENGTH,
          BS_8300_CRANKED_OFFSET,
          AUSTRALIAN_LEVER_HEIGHT,
          AUSTRALIAN_BEHIND_GRIP,
          AUSTRALIAN_GRIP_SECTION,
          CFR_GRAB_HANDLE_LENGTH,
          ISO_21542_HEIGHT);

  private final String item;
  private final @Nullable Measure<Length> least;
  private final @Nullable Measure<Length> most;
  private final Source source;

  private HandleRule(
      String item, @Nullable Measure<Length> least, @Nullable Measure<Length> most, Source source) {
    this.item = item;
    this.least = least;
    this.most = most;
    this.source = source;
  }

  /** {@return all of them} */
  public static List<HandleRule> all() {
    return ALL;
  }

  /** {@return the most force that operates door hardware; 2010 ADA Standards, 309.4} */
  public static Measure<Force> adaMostForce() {
    return Measures.poundsForce(5);
  }

  /** {@return what is ruled} */
  public String item() {
    return item;
  }

  /** {@return where it is printed} */
  public Source source() {
    return source;
  }

  /**
   * The least that is allowed.
   *
   * @return the length as printed; zero if no least is
   */
  public Measure<Length> least() {
    if (least != null) {
      return least;
    }
    return most == null ? Measures.millimetres(0) : most.withValue(0);
  }

  /**
   * The most that is allowed.
   *
   * @return the length as printed
   * @throws IllegalArgumentException if no most is printed, see {@link #hasMost}
   */
  public Measure<Length> most() {
    if (most == null) {
      throw new IllegalArgumentException(
          "most must be printed to be asked for, was none for the " + item + "; ask the least");
    }
    return most;
  }

  /** {@return whether a most is printed} */
  public boolean hasMost() {
    return most != null;
  }

  /**
   * Whether a length keeps the rule.
   *
   * @param length what there is, not negative
   * @return whether it lies from the least to the most
   * @throws IllegalArgumentException if it is negative
   */
  public boolean allows(Quantity<Length> length) {
    Measure<Length> there = Arguments.notNegative("length", length);
    return !there.isLessThan(least()) && (most == null || !there.isGreaterThan(most));
  }

  /** Item and bounds. */
  @Override
  public String toString() {
    if (most == null) {
      return item + " at least " + least;
    }
    return least == null ? item + " at most " + most : item + " from " + least + " to " + most;
  }
}
