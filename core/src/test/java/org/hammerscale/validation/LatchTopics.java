package org.hammerscale.validation;

import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.hammerscale.latch.DoorMovement;
import org.hammerscale.latch.SlideBolt;
import org.hammerscale.latch.SlideBoltBuilder;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.SlideBoltLoad;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What closes: bolts, hooks, hasps and latches. */
final class LatchTopics {
  private LatchTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Slide bolts", "slide_bolts.csv", LatchTopics::bolt),
        new ValidationTopic("Doors that move", "door_movement.csv", LatchTopics::movement));
  }

  /** Inputs written as {@code T=40 g=4}. */
  private record Inputs(Map<String, Double> values) {
    static Inputs of(ValidationCase c) {
      Map<String, Double> values = new HashMap<>();
      for (String pair : c.text("inputs").split(" ", -1)) {
        String[] sides = pair.split("=", 2);
        values.put(sides[0], Double.valueOf(sides[1]));
      }
      return new Inputs(values);
    }

    double number(String name) {
      Double value = values.get(name);
      if (value == null) {
        throw new IllegalArgumentException("no input " + name + " in " + values);
      }
      return value;
    }

    Measure<Length> mm(String name) {
      return millimetres(number(name));
    }
  }

  private static double bolt(ValidationCase c) {
    Inputs in = Inputs.of(c);
    return switch (c.text("quantity")) {
      case "engagement in the keeper" ->
          round(12, in.number("T"))
              .across(in.mm("g"))
              .setBack(in.mm("b"))
              .bolt()
              .engagement()
              .in(ShopUnits.MILLIMETRE);
      case "largest tilt of the bolt in its staples" ->
          cocked(in).stapledApart(in.mm("s")).bolt().tilt().in(ShopUnits.DEGREE);
      case "largest shift of the bolt centre at the tip" ->
          cocked(in)
              .stapledApart(in.mm("s"))
              .fromEdge(in.mm("o").subtract(millimetres(10)))
              .bolt()
              .tipShift()
              .in(ShopUnits.MILLIMETRE);
      case "least guide length against jamming" ->
          round(10, 10)
              .withKnob(millimetres(4), in.mm("a"))
              .bolt()
              .leastApart(in.number("mu"))
              .in(ShopUnits.MILLIMETRE);
      case "pull on the outer staple" ->
          loaded(in, flat(20, 5), in.number("s")).outerStaple().in(ShopUnits.NEWTON);
      case "opposite force at the inner staple" ->
          loaded(in, flat(20, 5), in.number("s")).innerStaple().in(ShopUnits.NEWTON);
      case "mean shear stress, round bolt, one plane" ->
          SlideBoltLoad.of(round(in.number("d"), 10).bolt(), newtons(in.number("F")))
              .shear()
              .in(ShopUnits.MEGAPASCAL);
      case "bending stress, flat bolt, force across the thickness" ->
          loaded(in, flat(in.number("b"), in.number("t")), 100).bending().in(ShopUnits.MEGAPASCAL);
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static Bar flat(double width, double thickness) {
    return steel(Section.flat(millimetres(width), millimetres(thickness)));
  }

  private static Bar steel(Section section) {
    return Bar.of(section, Material.MILD_STEEL);
  }

  private static SlideBoltBuilder round(double diameter, double travel) {
    Bar bar = steel(Section.round(millimetres(diameter)));
    return SlideBolt.thrown(millimetres(travel), bar)
        .inStaplesOf(steel(Section.round(millimetres(4))), millimetres(30));
  }

  private static SlideBoltBuilder cocked(Inputs in) {
    return round(in.number("d"), 10).clearing(in.mm("c"));
  }

  /** A bolt whose keeper's middle stands as far out as is told: half of it in the keeper's wire. */
  private static SlideBoltLoad loaded(Inputs in, Bar bar, double apart) {
    SlideBolt bolt =
        SlideBolt.thrown(millimetres(10), bar)
            .inStaplesOf(steel(Section.round(millimetres(4))), millimetres(30))
            .across(millimetres(2))
            .fromEdge(in.mm("o").subtract(millimetres(4)))
            .stapledApart(millimetres(apart))
            .bolt();
    return SlideBoltLoad.of(bolt, newtons(in.number("F")));
  }

  private static double movement(ValidationCase c) {
    Inputs in = Inputs.of(c);
    DoorMovement door = DoorMovement.of(in.mm("w"));
    return switch (c.text("quantity")) {
      case "door drop" -> door.drop(in.mm("p"), in.mm("h")).in(ShopUnits.MILLIMETRE);
      case "door width change" ->
          door.widthChange(in.number("k"), in.number("m")).in(ShopUnits.MILLIMETRE);
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }
}
