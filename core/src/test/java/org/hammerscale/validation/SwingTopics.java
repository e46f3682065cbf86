package org.hammerscale.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.hinge.Contact;
import org.hammerscale.hinge.LeafProfile;
import org.hammerscale.hinge.Swing;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** How far hinges open. */
final class SwingTopics {
  private SwingTopics() {}

  static List<ValidationTopic> all() {
    return List.of(new ValidationTopic("hinge/swing", SwingTopics::answer));
  }

  private static double answer(ValidationCase c) {
    LeafProfile uncut = uncut(c);
    LeafProfile leaf =
        c.text("notch").isEmpty() ? uncut : uncut.notchedBehindPin(c.length("notch"));
    return switch (c.question()) {
      case "opening" -> opening(c, swing(c, leaf));
      case "back swing" -> swing(c, leaf).backSwing().in(ShopUnits.DEGREE);
      case "barrel notch" -> {
        assertThrows(IllegalArgumentException.class, () -> swing(c, leaf), c::toString);
        yield swing(c, uncut).barrelNotch().in(c.lengthUnit());
      }
      case "least notch" -> leastNotch(c, swing(c, leaf)).in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double opening(ValidationCase c, Swing swing) {
    if (!c.text("contact").isEmpty()) {
      assertEquals(c.text("contact"), swing.contact().toString(), c::toString);
    }
    return swing.opening().in(ShopUnits.DEGREE);
  }

  private static Measure<Length> leastNotch(ValidationCase c, Swing swing) {
    Measure<Angle> wanted = c.angle("angle");
    if (!c.text("contact").isEmpty()) {
      boolean barrel = swing.leastNotchContact(wanted) == Contact.BARREL;
      assertEquals(c.text("contact").equals("barrel"), barrel, c::toString);
    }
    return swing.leastNotch(wanted);
  }

  private static LeafProfile uncut(ValidationCase c) {
    Measure<Length> t = c.length("thickness");
    Barrel barrel = Barrel.around(c.length("bore"), Section.flat(t.multiply(6), t));
    LeafProfile leaf =
        switch (c.text("leaf")) {
          case "tangent" -> LeafProfile.tangent(barrel);
          case "centred" -> LeafProfile.centred(barrel);
          default -> throw new IllegalArgumentException(c.text("leaf"));
        };
    return leaf.reaching(c.length("length"));
  }

  private static Swing swing(ValidationCase c, LeafProfile leaf) {
    Swing free = Swing.of(leaf);
    Measure<Length> gap = c.length("gap");
    return gap.getValue() > 0 ? free.withGap(gap) : free;
  }
}
