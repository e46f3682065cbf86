package org.hammerscale.examples;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.latch.CabinHook;
import org.hammerscale.latch.Hasp;
import org.hammerscale.latch.SlideBolt;
import org.hammerscale.latch.Staple;
import org.hammerscale.latch.ThumbLatch;
import org.hammerscale.piece.Piece;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;

/** One sheet of text for each thing that closes: what to cut, what to check, where it goes. */
public final class LatchSheet {
  private static final int WIDTH = 72;
  private static final double ODDS = 0.95;

  private final SheetText sheet = new SheetText(WIDTH);
  private final LengthFormat format;
  private final Graduation<Length> rule;

  private LatchSheet(Graduation<Length> rule) {
    this.rule = rule;
    this.format = LengthFormat.to(rule);
  }

  /**
   * The sheet of a slide bolt.
   *
   * @param name what it is for
   * @param bolt the bolt
   * @param rule what the smith marks by
   * @return the sheet, lines of at most 72 characters
   */
  public static String of(String name, SlideBolt bolt, Graduation<Length> rule) {
    LatchSheet sheet = new LatchSheet(rule);
    sheet.begin(name, "slide bolt of " + bolt.bar());
    sheet.cut(
        List.of("bolt", bolt.hasTail() ? "staple" : "knob", "staple", "staple", "keeper"),
        bolt.pieces());
    sheet.size("throw", bolt.travel());
    sheet.size("in keeper", bolt.engagement());
    sheet.staple("staples", bolt.staple());
    sheet.staple("keeper", bolt.keeper());
    sheet.sheet.entry(
        "places",
        "staples %s and %s from the door's edge to their middles; keeper %s beyond it",
        sheet.told(bolt.places().get(0)),
        sheet.told(bolt.places().get(1)),
        sheet.told(bolt.places().get(2).negate()));
    if (!bolt.hasTail()) {
      sheet.size("knob hole", bolt.knobPlace());
    }
    return sheet.end(bolt.cautions());
  }

  /**
   * The sheet of a thumb latch.
   *
   * @param name what it is for
   * @param latch the latch
   * @param rule what the smith marks by
   * @return the sheet
   */
  public static String of(String name, ThumbLatch latch, Graduation<Length> rule) {
    LatchSheet sheet = new LatchSheet(rule);
    sheet.begin(name, latch.toString());
    sheet.cut(List.of("bar", "thumb", "handle", "guide", "catch", "plate"), latch.pieces());
    sheet.staple("guide", latch.guide());
    sheet.size("slot high", latch.slotHeight());
    sheet.sheet.entry(
        "along bar",
        "from its pivot %s to the lever, %s to the guide, %s to the catch; %s",
        sheet.told(absolute(latch.places().get(0))),
        sheet.told(absolute(latch.places().get(1))),
        sheet.told(absolute(latch.places().get(2))),
        latch.closing());
    sheet.size("nose", latch.nose().nose());
    sheet.size("floor", latch.nose().clearance());
    return sheet.end(latch.cautions());
  }

  /**
   * The sheet of a cabin hook.
   *
   * @param name what it is for
   * @param hook the hook
   * @param rule what the smith marks by
   * @return the sheet
   */
  public static String of(String name, CabinHook hook, Graduation<Length> rule) {
    LatchSheet sheet = new LatchSheet(rule);
    sheet.begin(name, hook.toString());
    sheet.cut(List.of("hook", "eye", "eye"), hook.pieces());
    sheet.size("inside", hook.insideLength());
    sheet.size("eyes", hook.eyeInside());
    sheet.size("shank", hook.seatToShank());
    return sheet.end(hook.cautions());
  }

  /**
   * The sheet of a hasp and its staple.
   *
   * @param name what it is for
   * @param hasp the hasp
   * @param rule what the smith marks by
   * @return the sheet
   */
  public static String of(String name, Hasp hasp, Graduation<Length> rule) {
    LatchSheet sheet = new LatchSheet(rule);
    sheet.begin(name, "hasp and staple");
    sheet.cut(List.of("hasp", "staple"), hasp.pieces());
    sheet.sheet.entry(
        "slot",
        "%s to %s from the pin, %s wide",
        sheet.told(hasp.slotFrom()),
        sheet.told(hasp.slotTo()),
        sheet.told(hasp.slotWidth()));
    sheet.staple("staple", hasp.staple());
    return sheet.end(hasp.cautions());
  }

  private static Measure<Length> absolute(Measure<Length> place) {
    return place.getValue() < 0 ? place.negate() : place;
  }

  private void begin(String name, String what) {
    sheet.rule('=');
    sheet.entry("job", "%s", name);
    sheet.entry("what", "%s", what);
  }

  private void cut(List<String> names, List<Piece> pieces) {
    for (int i = 0; i < pieces.size(); i++) {
      Estimate<Length> length = pieces.get(i).layout().cutLength();
      Measure<Length> enough = length.isExact() ? length.likely() : length.bound(ODDS);
      sheet.entry(
          "cut",
          "%s of %s: %s",
          told(rule.upTo(enough)),
          pieces.get(i).bar().section(),
          names.get(i));
    }
  }

  private void size(String label, Measure<Length> length) {
    sheet.entry(label, "%s", told(length));
  }

  private void staple(String label, Staple staple) {
    sheet.entry(
        label,
        "%s wide and %s high inside; legs %s apart in the middle, %s in the wood",
        told(staple.insideWidth()),
        told(staple.insideHeight()),
        told(staple.legCentres()),
        told(staple.inWood()));
  }

  private String told(Measure<Length> length) {
    return format.format(length);
  }

  private String end(List<Caution> cautions) {
    sheet.blank();
    cautions.stream().limit(3).forEach(each -> sheet.caution(each.text()));
    return sheet.toString();
  }
}
