package org.hammerscale;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.inches;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.hammerscale.forging.Taper;
import org.hammerscale.heat.Contraction;
import org.hammerscale.heat.HotMetal;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.BarSizes;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.junit.jupiter.api.Test;

/** At a JShell prompt everything prints as words, nothing as a class name or an array. */
class ToStringTest {
  @Test
  void everythingPrintsForASmith() {
    Section section = Section.flat(inches(1), inches("1/4"));
    Bar bar = Bar.of(section, Material.WROUGHT_IRON);
    Barrel barrel = Barrel.around(inches("3/8"), section);
    Piece piece = Piece.of(bar, barrel, Plain.of(section, inches(4)));
    List<Object> all =
        List.of(
            section,
            bar,
            Section.roundTube(inches(1), inches("1/8")),
            Section.halfRound(inches(1)),
            BarSizes.of(section),
            Material.MILD_STEEL,
            Material.Property.FORGING_RANGE,
            Losses.NONE,
            barrel,
            Plain.of(section, inches(1)),
            Taper.between(section, section, inches(1)),
            HotMetal.of(Material.MILD_STEEL),
            HotMetal.of(Material.COPPER),
            Contraction.from(celsius(900), Material.MILD_STEEL),
            piece,
            piece.layout(),
            piece.layout().marks().get(0),
            piece.layout().working(),
            piece.layout().working().steps().get(0),
            Notes.NONE,
            Source.computed("x"),
            Source.Kind.READ,
            Caution.danger("x"));
    for (Object thing : all) {
      String text = thing.toString();
      assertFalse(text.contains("@") || text.contains("["), text);
    }
  }
}
