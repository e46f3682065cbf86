package org.hammerscale.examples.service;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Bore;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/** A flat bar of mild steel, as requests have it. */
record Flat(@Nullable Measure<Length> width, @Nullable Measure<Length> thickness) {
  /** Its section; {@code field} is where in the request it stands. */
  static Section section(String field, @Nullable Flat flat) {
    Flat given = given(field, flat);
    Measure<Length> wide = given(field + ".width", given.width);
    Measure<Length> thick = given(field + ".thickness", given.thickness);
    return Refused.in(field, () -> Section.flat(wide, thick), "width", "thickness");
  }

  static Bar bar(String field, @Nullable Flat flat) {
    return Bar.of(section(field, flat), Material.MILD_STEEL);
  }

  /** The bore for a pin. */
  static Bore bore(@Nullable Measure<Length> pin, @Nullable Quantity<Length> clearance) {
    Measure<Length> thick = given("pin", pin);
    Bore tight = Refused.in("pin", () -> Bore.forPin(thick));
    return clearance == null ? tight : Refused.in("clearance", () -> tight.clearing(clearance));
  }

  /** What must be in a request. */
  static <T> T given(String field, @Nullable T value) {
    if (value == null) {
      String name = field.substring(field.lastIndexOf('.') + 1);
      throw new Refused(422, field, name + " must be given; see /openapi.yaml");
    }
    return value;
  }
}
