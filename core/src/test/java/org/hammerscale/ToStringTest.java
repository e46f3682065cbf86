package org.hammerscale;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.hammerscale.bending.Bend;
import org.hammerscale.bending.Coil;
import org.hammerscale.bending.Course;
import org.hammerscale.bending.Eye;
import org.hammerscale.bending.Hook;
import org.hammerscale.bending.Joggle;
import org.hammerscale.bending.Link;
import org.hammerscale.bending.NeutralLine;
import org.hammerscale.bending.Oval;
import org.hammerscale.bending.Ring;
import org.hammerscale.bending.Scroll;
import org.hammerscale.bending.SquareCorner;
import org.hammerscale.bending.Twist;
import org.hammerscale.bending.UBend;
import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.forging.BoltHead;
import org.hammerscale.forging.DrawOut;
import org.hammerscale.forging.End;
import org.hammerscale.forging.HandAllowance;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.RivetBlank;
import org.hammerscale.forging.Shoulder;
import org.hammerscale.forging.Spread;
import org.hammerscale.forging.SpreadLaw;
import org.hammerscale.forging.Taper;
import org.hammerscale.heat.Contraction;
import org.hammerscale.heat.HotMetal;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.hinge.BarrelOpening;
import org.hammerscale.hinge.DoorLoad;
import org.hammerscale.hinge.Drift;
import org.hammerscale.hinge.Fork;
import org.hammerscale.hinge.HingeCount;
import org.hammerscale.hinge.HingeGrade;
import org.hammerscale.hinge.HingeHook;
import org.hammerscale.hinge.LidLoad;
import org.hammerscale.hinge.PermissibleStress;
import org.hammerscale.hinge.Pin;
import org.hammerscale.hinge.PinLoad;
import org.hammerscale.hinge.PinSize;
import org.hammerscale.hinge.StrapRule;
import org.hammerscale.hinge.Swage;
import org.hammerscale.piece.Piece;
import org.hammerscale.punching.DriftedHole;
import org.hammerscale.punching.FlatEye;
import org.hammerscale.punching.Hole;
import org.hammerscale.punching.HotCut;
import org.hammerscale.punching.PunchedHole;
import org.hammerscale.punching.Slit;
import org.hammerscale.punching.Slot;
import org.hammerscale.punching.Split;
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
            Hole.oval(inches(1), inches("1/2")).turned(),
            Slit.of(inches(1)),
            DriftedHole.through(section, Hole.round(inches("3/8"))),
            PunchedHole.through(section, Hole.round(inches("3/8"))),
            HotCut.bevelled(degrees(30), section),
            Split.evenly(inches(2), HotCut.ofKerf(inches(0), section), 2),
            Slot.through(section, Hole.mortise(inches(1), inches("1/4")), inches("1/16")),
            FlatEye.drifted(section, inches(1), inches("1/4"), Hole.round(inches("3/8"))),
            Taper.toPoint(section, inches(1)),
            DrawOut.edging(section, inches("3/4")),
            Shoulder.between(section, Section.round(inches("1/4")), inches(1)),
            HandAllowance.SMALL_WORK,
            HandAllowance.SMALL_WORK.on(Taper.toPoint(section, inches(1))),
            SpreadLaw.NONE,
            End.penny(section, inches(2)),
            End.penny(section, inches(2)).reversed(),
            Head.snap(Section.round(inches(1))),
            BoltHead.HALF_WIDTH,
            BoltHead.HALF_WIDTH.square(Section.round(inches(1))),
            RivetBlank.through(inches(1), Head.snap(Section.round(inches(1)))),
            RivetBlank.Rule.FILLED_HOLE,
            Spread.thinning(section, inches("3/16"), SpreadLaw.measured(0.4)),
            HotMetal.of(Material.MILD_STEEL),
            HotMetal.of(Material.COPPER),
            Contraction.from(celsius(900), Material.MILD_STEEL),
            Pin.of(inches("3/8")).withWashers(2, inches("1/16")),
            Pin.Head.LOW_PEEN,
            Fork.around(inches(1)),
            PermissibleStress.of(Material.WROUGHT_IRON, 3),
            PinLoad.on(Pin.of(inches("3/8")), poundsForce(100)),
            PinLoad.Shear.DOUBLE,
            PinSize.inSingleShear(poundsForce(100), PermissibleStress.of(Material.MILD_STEEL, 3)),
            HingeHook.of(Pin.of(inches("1/2")), inches(2), Section.round(inches("1/2")), inches(1)),
            BarrelOpening.of(barrel),
            BarrelOpening.Direction.PULL,
            Drift.leaving(inches("1/2"), Contraction.from(celsius(900), Material.MILD_STEEL)),
            Swage.truing(inches(1), Contraction.from(celsius(900), Material.MILD_STEEL)),
            piece,
            piece.layout(),
            piece.layout().marks().get(0),
            piece.layout().working(),
            piece.layout().working().steps().get(0),
            Notes.NONE,
            Source.computed("x"),
            Source.Kind.READ,
            Caution.danger("x"),
            DoorLoad.weighing(kilograms(40), metres(1)).hungAt(metres(0), metres(1)),
            LidLoad.weighing(kilograms(9), metres(1)).onStay(inches(9), degrees(45)),
            HingeCount.forHeight(metres(2)),
            StrapRule.AT_LEAST_A_THIRD,
            HingeGrade.of(3),
            NeutralLine.DIN_6935,
            NeutralLine.kFactor(0.4),
            WeldAllowance.LINK,
            Bend.of(degrees(90), inches(1), section),
            SquareCorner.of(section),
            UBend.inside(inches(1), section),
            Ring.inside(inches(1), section),
            Eye.turned(inches(1), section),
            Link.inside(inches(2), inches(1), section),
            Oval.inside(inches(2), inches(1), section),
            Hook.open(inches(1), section),
            Joggle.by(inches(1), degrees(30), inches(1), section),
            Coil.around(inches(1), 2, inches(1), section),
            Scroll.involute(inches(1), 2, section),
            Course.from(inches(1), inches(2), section),
            Twist.of(1, inches(6), section));
    for (Object thing : all) {
      String text = thing.toString();
      assertFalse(text.contains("@") || text.contains("["), text);
    }
  }
}
