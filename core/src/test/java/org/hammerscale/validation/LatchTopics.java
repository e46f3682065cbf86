package org.hammerscale.validation;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.latch.CabinHook;
import org.hammerscale.latch.DoorMovement;
import org.hammerscale.latch.HandleRule;
import org.hammerscale.latch.Hasp;
import org.hammerscale.latch.HaspBuilder;
import org.hammerscale.latch.LatchCatch;
import org.hammerscale.latch.LatchSpring;
import org.hammerscale.latch.SlideBolt;
import org.hammerscale.latch.SlideBoltBuilder;
import org.hammerscale.latch.Staple;
import org.hammerscale.latch.ThumbLatch;
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
        new ValidationTopic("latch/latch_lifts", LatchTopics::lift),
        new ValidationTopic("latch/latch_catches", LatchTopics::caught),
        new ValidationTopic("latch/handles", LatchTopics::handle),
        new ValidationTopic("latch/slide_bolts", LatchTopics::bolt),
        new ValidationTopic("latch/cabin_hooks", LatchTopics::hook),
        new ValidationTopic("latch/hasp_slots", LatchTopics::hasp),
        new ValidationTopic("latch/hasp_shackles", LatchTopics::shackle),
        new ValidationTopic("latch/latch_springs", LatchTopics::spring),
        new ValidationTopic("latch/door_movement", LatchTopics::movement));
  }

  /** Inputs by their symbols, which the remarks of each topic name. */
  private record Inputs(ValidationCase row) {
    static Inputs of(ValidationCase row) {
      return new Inputs(row);
    }

    double number(String name) {
      return row.number(name);
    }

    boolean has(String name) {
      return row.value().has(name);
    }

    Measure<Length> mm(String name) {
      return row.length(name);
    }
  }

  private static double bolt(ValidationCase c) {
    Inputs in = Inputs.of(c);
    return switch (c.question()) {
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
      default -> throw new IllegalArgumentException(c.question());
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

  private static double lift(ValidationCase c) {
    Inputs in = Inputs.of(c);
    ThumbLatch latch = latch(in, in.number("u"), in.number("X"), in.number("s"));
    return switch (c.question()) {
      case "turn of the lever" -> latch.leverAngle().in(ShopUnits.DEGREE);
      case "lift at the contact" -> latch.liftAtContact().in(ShopUnits.MILLIMETRE);
      case "turn of the bar" -> latch.barAngle().in(ShopUnits.DEGREE);
      case "lift at the catch" -> latch.lift().in(ShopUnits.MILLIMETRE);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  /** A door as thick as leaves its lever so far from the far face of a bar of 6 mm. */
  private static ThumbLatch latch(Inputs in, double below, double at, double travel) {
    Bar bar = flat(24, 6);
    return ThumbLatch.through(in.mm("z").subtract(millimetres(6)), bar, millimetres(at + 10))
        .thumbAt(in.mm("a"), millimetres(travel))
        .lifting(in.mm("x"), millimetres(at))
        .pivotAboveEdge(millimetres(below))
        .into(LatchCatch.standing(millimetres(2)), millimetres(0))
        .latch();
  }

  private static double caught(ValidationCase c) {
    Inputs in = Inputs.of(c);
    return switch (c.question()) {
      case "engagement" ->
          LatchCatch.standing(in.mm("n"))
              .under(in.mm("c"))
              .engagement(in.mm("s"))
              .in(ShopUnits.MILLIMETRE);
      case "thumb force" ->
          latch(in, 6, in.number("x") + 50, 4)
              .thumbForce(newtons(in.number("W")), in.mm("X"))
              .in(ShopUnits.NEWTON);
      case "closing force" ->
          LatchCatch.standing(millimetres(10))
              .closingForce(newtons(in.number("N")), degrees(in.number("ramp")), in.number("mu"))
              .in(ShopUnits.NEWTON);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double handle(ValidationCase c) {
    if (c.question().equals("force")) {
      return HandleRule.adaMostForce().in(ShopUnits.POUND_FORCE);
    }
    try {
      HandleRule rule = (HandleRule) HandleRule.class.getField(c.constantName("rule")).get(null);
      return (c.text("bound").equals("least") ? rule.least() : rule.most()).in(c.lengthUnit());
    } catch (ReflectiveOperationException e) {
      throw new IllegalArgumentException(c.text("rule"), e);
    }
  }

  private static double hook(ValidationCase c) {
    Inputs in = Inputs.of(c);
    Bar rod = steel(Section.round(millimetres(8)));
    CabinHook hook =
        CabinHook.betweenEyes(in.mm("r"), in.mm("x"), rod)
            .off(in.mm("n"), in.mm("y"))
            .heldOpen(degrees(in.number("angle")))
            .hook();
    return switch (c.question()) {
      case "length" -> hook.length().in(ShopUnits.MILLIMETRE);
      case "other opening" -> hook.otherOpening().in(ShopUnits.DEGREE);
      case "lever arm" -> hook.leverArm().in(ShopUnits.MILLIMETRE);
      case "swing for 1 mm of slack" -> hook.play(millimetres(1)).in(ShopUnits.DEGREE);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double hasp(ValidationCase c) {
    Inputs in = Inputs.of(c);
    boolean round = c.text("top").equals("round");
    double along = in.number("x2") - in.number("x1");
    // In line the legs are of 4 mm with what is between them; across, one leg is what the slot
    // sees.
    double wire = round ? 4 : along;
    Staple staple =
        Staple.inside(millimetres(round ? along - 8 : 12), steel(Section.round(millimetres(wire))))
            .standing(in.mm("H").subtract(millimetres(wire)));
    HaspBuilder asked =
        Hasp.of(steel(Section.flat(millimetres(60), in.mm("t"))), staple)
            .stapledAt(in.mm("x1"))
            .pinAbove(in.mm("u"));
    Hasp hasp = (round ? asked.inLine() : asked).hasp();
    return switch (c.question()) {
      case "from" -> hasp.slotFrom().in(ShopUnits.MILLIMETRE);
      case "to" -> hasp.slotTo().in(ShopUnits.MILLIMETRE);
      case "length" -> hasp.slotLength().in(ShopUnits.MILLIMETRE);
      case "longer than the staple" -> hasp.longerForSwing().in(ShopUnits.MILLIMETRE);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double shackle(ValidationCase c) {
    Inputs in = Inputs.of(c);
    if (c.question().equals("least height inside")) {
      return Hasp.leastInside(in.mm("t"), in.mm("d"), in.mm("c")).in(ShopUnits.MILLIMETRE);
    }
    Staple staple =
        Staple.inside(millimetres(14), steel(Section.round(millimetres(8)))).standing(in.mm("H"));
    return Hasp.of(steel(Section.flat(millimetres(60), in.mm("t"))), staple)
        .stapledAt(millimetres(80))
        .hasp()
        .play(in.mm("d"))
        .in(ShopUnits.MILLIMETRE);
  }

  private static double spring(ValidationCase c) {
    Inputs in = Inputs.of(c);
    if (c.question().equals("taper of a factor")) {
      return LatchSpring.taperOf(in.number("K"));
    } else if (c.question().equals("factor of a taper")) {
      return LatchSpring.of(millimetres(100), millimetres(10), millimetres(1))
          .taperedTo(in.number("tip"))
          .factor();
    } else if (c.question().equals("force at travel")) {
      // A strip of 4 N/mm: E b t³/(4 L³).
      LatchSpring leaf =
          LatchSpring.of(millimetres(100), millimetres(16), millimetres(10))
              .ofModulus(megapascals(in.number("rate") * 250));
      return leaf.forceAt(in.mm("travel"), in.mm("set")).in(ShopUnits.NEWTON);
    }
    LatchSpring leaf =
        LatchSpring.of(in.mm("L"), in.has("b") ? in.mm("b") : millimetres(10), in.mm("t"));
    return switch (c.question()) {
      case "root stress" -> leaf.stress(newtons(in.number("P"))).in(ShopUnits.MEGAPASCAL);
      case "deflection" ->
          leaf.taperedTo(in.number("tip"))
              .deflection(newtons(in.number("P")))
              .in(ShopUnits.MILLIMETRE);
      case "travel at a stress" ->
          leaf.taperedTo(in.number("tip"))
              .mostTravel(megapascals(in.number("S")))
              .in(ShopUnits.MILLIMETRE);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double movement(ValidationCase c) {
    Inputs in = Inputs.of(c);
    DoorMovement door = DoorMovement.of(in.mm("w"));
    return switch (c.question()) {
      case "door drop" -> door.drop(in.mm("p"), in.mm("h")).in(ShopUnits.MILLIMETRE);
      case "door width change" ->
          door.widthChange(in.number("k"), in.number("m")).in(ShopUnits.MILLIMETRE);
      default -> throw new IllegalArgumentException(c.question());
    };
  }
}
