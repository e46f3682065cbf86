package org.hammerscale.validation;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Density;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;

/** What is checked against other people's values: a file of cases, and how we answer them. */
@SuppressWarnings("ImmutableEnumChecker") // the functions hold nothing
enum ValidationTopic {
  BARRELS("Eyes, rings and barrels", "barrels.csv", ValidationTopic::barrel),
  TAPERS("Tapers", "tapers.csv", ValidationTopic::taper),
  SECTIONS("Areas and circumferences", "sections.csv", ValidationTopic::section),
  BAR_WEIGHTS("Weights of bars", "bar_weights.csv", ValidationTopic::weight);

  private static final Map<String, Unit<Length>> LENGTHS =
      Map.of("in", ShopUnits.INCH, "mm", ShopUnits.MILLIMETRE);
  private static final Map<String, Unit<Volume>> VOLUMES =
      Map.of("in³", ShopUnits.CUBIC_INCH, "mm³", ShopUnits.CUBIC_MILLIMETRE);

  final String title;
  final String file;
  final ToDoubleFunction<ValidationCase> answer;

  ValidationTopic(String title, String file, ToDoubleFunction<ValidationCase> answer) {
    this.title = title;
    this.file = file;
    this.answer = answer;
  }

  List<ValidationCase> cases() {
    return ValidationFile.read(file);
  }

  private static double barrel(ValidationCase c) {
    Barrel barrel = Barrel.around(c.length("bore"), Section.square(c.length("thickness")));
    Measure<Length> length =
        switch (c.text("quantity")) {
          case "mean diameter" -> barrel.meanDiameter();
          case "outside diameter" -> barrel.outsideDiameter();
          case "developed length" -> barrel.developedLength();
          case "developed length up to 1/8 in" -> barrel.developedLength().upTo(Graduation.EIGHTH);
          case "bench length" -> barrel.benchLength();
          default -> throw new IllegalArgumentException(c.text("quantity"));
        };
    return length.in(LENGTHS.get(c.text("unit")));
  }

  private static double taper(ValidationCase c) {
    Taper taper = Taper.between(c.section("from"), c.section("to"), c.length("length"));
    return taper.metalKept().likely().in(VOLUMES.get(c.text("unit")));
  }

  private static double section(ValidationCase c) {
    Section section = c.section("section");
    Unit<Area> square = ShopUnits.SQUARE_INCH;
    return c.text("quantity").equals("area")
        ? section.area().in(square)
        : section.perimeter().in(ShopUnits.INCH);
  }

  private static double weight(ValidationCase c) {
    Material material =
        Material.of("metal", density(c.text("density")), Source.computed("as the table says"));
    Bar bar = Bar.of(c.section("section"), material);
    return switch (c.text("unit")) {
      case "lb/ft" -> bar.massPerLength().in(ShopUnits.POUND_PER_FOOT);
      case "kg/m" -> bar.massPerLength().in(ShopUnits.KILOGRAM_PER_METRE);
      case "lb" -> bar.mass(c.length("length")).in(ShopUnits.POUND);
      default -> throw new IllegalArgumentException(c.text("unit"));
    };
  }

  private static Measure<Density> density(String text) {
    String[] words = text.split(" ", 2);
    double value = Double.parseDouble(words[0]);
    return words[1].equals("lb/ft³")
        ? Measures.poundsPerCubicFoot(value)
        : Measures.kilogramsPerCubicMetre(value);
  }
}
