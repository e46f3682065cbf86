package org.hammerscale.examples.service;

import static org.hammerscale.examples.service.Flat.given;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.hinge.Bore;
import org.hammerscale.piece.Layout;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/** {@code POST /leaf}: what to cut for a strap with a barrel, and where to mark it. */
record Leaf(
    @Nullable Flat bar,
    @Nullable Measure<Length> pin,
    @Nullable Measure<Length> clearance,
    @Nullable Measure<Length> plain,
    @Nullable Measure<Length> taper,
    @Nullable Flat tip) {
  Object answer() {
    Bar strap = Flat.bar("bar", bar);
    Section section = strap.section();
    Bore bore = Flat.bore(pin, clearance);
    Barrel barrel = Refused.in("pin", () -> Barrel.around(bore.diameter(), section));
    List<Feature> features = new ArrayList<>(List.of(barrel));
    Measure<Length> stretch = given("plain", plain);
    features.add(Refused.in("plain", () -> Plain.of(section, stretch)));
    if (tip != null || taper != null) {
      Section end = Flat.section("tip", tip);
      Measure<Length> length = given("taper", taper);
      features.add(Refused.in("taper", () -> Taper.between(section, end, length)));
    }
    Layout layout =
        Refused.in("", () -> Piece.of(strap, features.toArray(Feature[]::new)).layout());
    return Questions.object("layout", layout, "barrel", barrel.closing().stripWorking());
  }
}
