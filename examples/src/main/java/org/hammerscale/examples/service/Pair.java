package org.hammerscale.examples.service;

import static org.hammerscale.examples.service.Flat.given;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Bore;
import org.hammerscale.hinge.Hanging;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.HingePairBuilder;
import org.hammerscale.hinge.KnuckleSlot;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/** {@code POST /pair}: two leaves that fit. */
record Pair(
    @Nullable Flat bar,
    @Nullable Measure<Length> pin,
    @Nullable Measure<Length> clearance,
    @Nullable Measure<Length> leaf,
    @Nullable Measure<Angle> opening,
    @Nullable Hanging hanging) {
  Object answer() {
    Bar strap = Flat.bar("bar", bar);
    Bore bore = Flat.bore(pin, clearance);
    HingePairBuilder asked = HingePair.of(strap, bore);
    Measure<Length> length = given("leaf", leaf);
    Refused.in("leaf", () -> asked.leaves(Plain.of(strap.section(), length)));
    if (opening != null || hanging != null) {
      Measure<Angle> wanted = given("opening", opening);
      Hanging how = given("hanging", hanging);
      Refused.in("opening", () -> asked.opening(wanted, how));
    }
    HingePair pair = Refused.in("", asked::pair);
    return Questions.object(
        "notchDepth", pair.notchDepth(),
        "opening", pair.opening(),
        "runningGap", pair.runningGap(),
        "first", half(pair, Leaf.FIRST),
        "second", half(pair, Leaf.SECOND),
        "cautions", pair.cautions());
  }

  private static Map<String, Object> half(HingePair pair, Leaf which) {
    Stream<KnuckleSlot> slots = pair.slotsOf(which).stream();
    List<Map<String, Object>> told =
        slots.map(slot -> Questions.object("start", slot.start(), "width", slot.width())).toList();
    return Questions.object("layout", pair.leaf(which).layout(), "slots", told);
  }
}
