package org.hammerscale;

import static org.hammerscale.units.Measures.inches;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.piece.Piece;
import org.hammerscale.punching.DriftedHole;
import org.hammerscale.punching.FlatEye;
import org.hammerscale.punching.Hole;
import org.hammerscale.punching.PunchedHole;
import org.hammerscale.punching.Slit;
import org.hammerscale.stock.Bar;
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
            Material.MILD_STEEL,
            Losses.NONE,
            barrel,
            Plain.of(section, inches(1)),
            Taper.between(section, section, inches(1)),
            Hole.oval(inches(1), inches("1/2")).turned(),
            Slit.of(inches(1)),
            DriftedHole.through(section, Hole.round(inches("3/8"))),
            PunchedHole.through(section, Hole.round(inches("3/8"))),
            FlatEye.drifted(section, inches(1), inches("1/4"), Hole.round(inches("3/8"))),
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
