package org.hammerscale;

import static org.hammerscale.units.Graduation.SIXTEENTH;
import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.hammerscale.units.Measures.pounds;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import org.hammerscale.bending.Basket;
import org.hammerscale.bending.Bend;
import org.hammerscale.bending.Chain;
import org.hammerscale.bending.ChainPattern;
import org.hammerscale.bending.Coil;
import org.hammerscale.bending.Collar;
import org.hammerscale.bending.Course;
import org.hammerscale.bending.Eye;
import org.hammerscale.bending.Hook;
import org.hammerscale.bending.HookProportions;
import org.hammerscale.bending.Joggle;
import org.hammerscale.bending.Link;
import org.hammerscale.bending.MeanLine;
import org.hammerscale.bending.NeutralLine;
import org.hammerscale.bending.Oval;
import org.hammerscale.bending.Ring;
import org.hammerscale.bending.Scroll;
import org.hammerscale.bending.SquareCorner;
import org.hammerscale.bending.Twist;
import org.hammerscale.bending.UBend;
import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.checking.CheckTopic;
import org.hammerscale.cutting.Aim;
import org.hammerscale.cutting.CutList;
import org.hammerscale.cutting.Rack;
import org.hammerscale.drawing.BarDrawing;
import org.hammerscale.drawing.BentDrawing;
import org.hammerscale.drawing.CurveDrawing;
import org.hammerscale.drawing.DrivenDrawing;
import org.hammerscale.drawing.HingeDrawing;
import org.hammerscale.drawing.HoleTemplate;
import org.hammerscale.drawing.LeafDrawing;
import org.hammerscale.drawing.Paper;
import org.hammerscale.fastening.CarriageBolt;
import org.hammerscale.fastening.ClenchedNail;
import org.hammerscale.fastening.Fastener;
import org.hammerscale.fastening.IronHole;
import org.hammerscale.fastening.IronHoleRule;
import org.hammerscale.fastening.LagScrew;
import org.hammerscale.fastening.MetricWoodScrew;
import org.hammerscale.fastening.OldBritishWoodScrew;
import org.hammerscale.fastening.OvenDryGravity;
import org.hammerscale.fastening.PilotHole;
import org.hammerscale.fastening.Rivet;
import org.hammerscale.fastening.SeamClearance;
import org.hammerscale.fastening.SpacingRule;
import org.hammerscale.fastening.Spike;
import org.hammerscale.fastening.TimberClass;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.fastening.WoodScrew;
import org.hammerscale.fastening.WoodSpacing;
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
import org.hammerscale.forging.Tenon;
import org.hammerscale.heat.Air;
import org.hammerscale.heat.Contraction;
import org.hammerscale.heat.Cooling;
import org.hammerscale.heat.Heats;
import org.hammerscale.heat.HotMetal;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.hinge.BarrelEnd;
import org.hammerscale.hinge.Board;
import org.hammerscale.hinge.Bore;
import org.hammerscale.hinge.Contact;
import org.hammerscale.hinge.DoorEdge;
import org.hammerscale.hinge.Drift;
import org.hammerscale.hinge.Hand;
import org.hammerscale.hinge.Hanging;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Knuckles;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.hinge.LeafProfile;
import org.hammerscale.hinge.Pin;
import org.hammerscale.hinge.PinStandOff;
import org.hammerscale.hinge.Swage;
import org.hammerscale.hinge.Swing;
import org.hammerscale.holding.AllowableLateral;
import org.hammerscale.holding.CharacteristicWithdrawal;
import org.hammerscale.holding.DriftBolt;
import org.hammerscale.holding.DrivenStaple;
import org.hammerscale.holding.FastenerGroup;
import org.hammerscale.holding.FastenerRow;
import org.hammerscale.holding.LateralHold;
import org.hammerscale.holding.PenetrationRule;
import org.hammerscale.holding.ReferenceWithdrawal;
import org.hammerscale.holding.ScrewChoice;
import org.hammerscale.holding.ScrewSeries;
import org.hammerscale.holding.StrapScrews;
import org.hammerscale.holding.UltimateWithdrawal;
import org.hammerscale.latch.Staple;
import org.hammerscale.latch.StaplePlate;
import org.hammerscale.piece.MatchedSet;
import org.hammerscale.piece.MatchedSize;
import org.hammerscale.piece.Piece;
import org.hammerscale.piece.PieceEnd;
import org.hammerscale.piece.Trial;
import org.hammerscale.piece.TrialBook;
import org.hammerscale.piece.TrialLog;
import org.hammerscale.punching.DriftedHole;
import org.hammerscale.punching.FlatEye;
import org.hammerscale.punching.Hole;
import org.hammerscale.punching.HotCut;
import org.hammerscale.punching.PunchedHole;
import org.hammerscale.punching.Slit;
import org.hammerscale.punching.Slot;
import org.hammerscale.punching.Split;
import org.hammerscale.scale.Atmosphere;
import org.hammerscale.scale.FireHistory;
import org.hammerscale.scale.HeatPlan;
import org.hammerscale.scale.ScaleLaw;
import org.hammerscale.scale.ScaleLoss;
import org.hammerscale.scale.ScaleRule;
import org.hammerscale.scale.Weighing;
import org.hammerscale.spacing.ClosedStretch;
import org.hammerscale.spacing.GuardCode;
import org.hammerscale.spacing.HoleRow;
import org.hammerscale.spacing.PicketRow;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.BarSizes;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.strength.AngleBracket;
import org.hammerscale.strength.BarrelOpening;
import org.hammerscale.strength.Bearing;
import org.hammerscale.strength.Bracket;
import org.hammerscale.strength.BracketArm;
import org.hammerscale.strength.CarryingHook;
import org.hammerscale.strength.DoorLoad;
import org.hammerscale.strength.Fork;
import org.hammerscale.strength.HandbookLoad;
import org.hammerscale.strength.HingeCount;
import org.hammerscale.strength.HingeGrade;
import org.hammerscale.strength.HingeHook;
import org.hammerscale.strength.HookPin;
import org.hammerscale.strength.HookSection;
import org.hammerscale.strength.LidLoad;
import org.hammerscale.strength.NetSection;
import org.hammerscale.strength.PermissibleStress;
import org.hammerscale.strength.PinLoad;
import org.hammerscale.strength.PinSize;
import org.hammerscale.strength.StayedArm;
import org.hammerscale.strength.StrapRule;
import org.hammerscale.units.Graduation;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.junit.jupiter.api.Test;

/** At a JShell prompt everything prints as words, nothing as a class name or an array. */
class ToStringTest {
  /** Of the screen that a prompt stands on. */
  private static final int COLUMNS = 80;

  private static final HoleRow HOLES =
      HoleRow.along(inches(12)).holes(3).startingFrom(inches(1)).endingBefore(inches(1));

  private static final CutList CUTS =
      CutList.of(Bar.of(Section.round(inches(1)), Material.MILD_STEEL), SIXTEENTH)
          .pieces("pin", inches(3), 2)
          .buying(metres(3));

  @Test
  void everythingPrintsForASmith() {
    Section section = Section.flat(inches(1), inches("1/4"));
    Bar bar = Bar.of(section, Material.WROUGHT_IRON);
    Barrel barrel = Barrel.around(inches("3/8"), section);
    Piece piece = Piece.of(bar, barrel, Plain.of(section, inches(4)));
    Fastener screw = Fastener.of(WoodFastener.Kind.WOOD_SCREW, inches(0.19));
    Wood oak = Wood.named("White oak");
    List<Object> all =
        List.of(
            section,
            bar,
            Section.roundTube(inches(1), inches("1/8")),
            Section.halfRound(inches(1)),
            BarSizes.of(section),
            Trial.cut(inches(9)),
            TrialBook.empty(),
            MatchedSize.of("length", inches(1)),
            MatchedSet.by(MatchedSize.of("length", inches(1))),
            TrialLog.of(piece.layout()),
            TrialLog.of(piece.layout()).at(PieceEnd.LAST),
            Material.MILD_STEEL,
            Material.Property.FORGING_RANGE,
            Losses.NONE,
            barrel,
            barrel.closing(),
            barrel.centred(),
            BarrelEnd.scarfedTo(inches("1/8")).over(inches(1)),
            Bore.forPin(inches("3/8")),
            Leaf.FIRST,
            Knuckles.across(inches(2)),
            Knuckles.across(inches(2)).all().get(0),
            Knuckles.across(inches(2)).slotsOf(Leaf.SECOND).get(0),
            LeafProfile.tangent(barrel),
            Swing.of(LeafProfile.centred(barrel)),
            Contact.TIPS,
            Hanging.JOINT,
            Board.of(inches(1)),
            DoorEdge.of(inches(1)),
            PinStandOff.past(inches(1)),
            HingePair.of(bar, Bore.forPin(inches("3/8"))),
            HingePair.of(bar, Bore.forPin(inches("3/8")))
                .leaves(Plain.of(section, inches(9)))
                .pair(),
            Hand.LEFT,
            Plain.of(section, inches(1)),
            Taper.between(section, section, inches(1)),
            Hole.oval(inches(1), inches("1/2")).turned(),
            Slit.of(inches(1)),
            DriftedHole.through(section, Hole.round(inches("3/8"))),
            PunchedHole.through(section, Hole.round(inches("3/8"))),
            HotCut.bevelled(degrees(30), section),
            Split.evenly(inches(2), HotCut.ofKerf(inches(0), section), 2),
            Slot.through(section, Hole.mortise(inches(1), inches("1/4")), inches("1/16")),
            FlatEye.drifted(inches(1), inches("1/4"), Hole.round(inches("3/8"))),
            Taper.toPoint(section, inches(1)),
            DrawOut.edging(section, inches("3/4")),
            Shoulder.between(section, Section.round(inches("1/4")), inches(1)),
            HandAllowance.BENT,
            HandAllowance.DRAWN.on(Taper.toPoint(section, inches(1))),
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
            ScaleLaw.MI,
            ScaleRule.FLAME_FURNACE,
            Atmosphere.FORGE_FIRE,
            FireHistory.soak(celsius(900), minutes(5)),
            HeatPlan.soaking(celsius(900), minutes(5)),
            ScaleLoss.of(bar, HeatPlan.soaking(celsius(900), minutes(5))),
            Weighing.of(
                bar, HeatPlan.soaking(celsius(900), minutes(5)), kilograms(1), kilograms(0.9)),
            Air.taking(10),
            Cooling.from(celsius(1100), bar),
            Cooling.from(celsius(1100), bar).curve(1).get(0),
            Heats.forWork(minutes(2), Cooling.from(celsius(1100), bar)),
            Pin.of(inches("3/8")).withWashers(2, inches("1/16")),
            Pin.Head.LOW_PEEN,
            Fork.around(inches(1)),
            PermissibleStress.of(Material.WROUGHT_IRON, 3),
            PinLoad.on(Pin.of(inches("3/8")), poundsForce(100)),
            PinLoad.Shear.DOUBLE,
            PinSize.inSingleShear(poundsForce(100), PermissibleStress.of(Material.MILD_STEEL, 3)),
            HookPin.of(Pin.of(inches("1/2")), inches(2)),
            HingeHook.of(
                HookPin.of(Pin.of(inches("1/2")), inches(2)),
                Section.round(inches("1/2")),
                inches(1)),
            BarrelOpening.of(barrel),
            BarrelOpening.Direction.PULL,
            Drift.leaving(inches("1/2"), Contraction.from(celsius(900), Material.MILD_STEEL)),
            Swage.truing(inches(1), Contraction.from(celsius(900), Material.MILD_STEEL)),
            piece,
            piece.layout(),
            piece.layout().marks().get(0),
            piece.layout().working(),
            piece.layout().working().steps().get(0),
            Rack.empty(),
            CUTS,
            CUTS.plan(),
            CUTS.plan().bars().get(0),
            CUTS.plan().bars().get(0).marks().get(0),
            CUTS.plan().reached(Aim.FEWEST_BARS),
            Notes.NONE,
            Source.computed("x"),
            Source.Kind.READ,
            Caution.danger("x"),
            DoorLoad.weighing(kilograms(40), metres(1)).hungAt(metres(0), metres(1)),
            DoorLoad.weighing(kilograms(40), metres(1)),
            LidLoad.weighing(kilograms(9), metres(1)),
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
            Twist.of(1, inches(6), section),
            Collar.around(section, inches("1/8")),
            Basket.ofFour(Section.round(inches("1/4")), inches(4), 1),
            ChainPattern.SHORT_LINK,
            Chain.of(ChainPattern.SHORT_LINK.link(inches(1)), 9),
            HookProportions.forCapacity(pounds(500)),
            HookProportions.Size.B,
            HookSection.of(section),
            CarryingHook.of(Hook.open(inches(1), section)),
            HandbookLoad.CHAIN_FIELD,
            Bracket.carrying(poundsForce(9), inches(9)),
            Bracket.carrying(poundsForce(9), inches(9)).screwedAt(inches(9)),
            BracketArm.of(section, inches(9)),
            StayedArm.carrying(poundsForce(9), inches(9)),
            StaplePlate.under(
                Staple.inside(
                    inches("1/2"), Bar.of(Section.round(inches("1/4")), Material.MILD_STEEL)),
                bar,
                inches("3/8")),
            AngleBracket.ofArmAndPlate(inches(9), inches(8), bar)
                .bracedOutAndDown(inches(7), inches(6)),
            StayedArm.carrying(poundsForce(9), inches(9)).heldAt(inches(9), degrees(40)),
            Tenon.between(section, section),
            Tenon.between(section, section)
                .through(inches(1), Head.dome(section, Section.round(inches(3)), inches(1))),
            OvenDryGravity.of(0.5),
            OvenDryGravity.of(0.5).at12Percent(),
            oak,
            SpacingRule.EC5_PRE_DRILLED,
            WoodSpacing.by(SpacingRule.EC5_PRE_DRILLED, inches("1/4")),
            SeamClearance.around(
                inches("1/4"), WoodSpacing.by(SpacingRule.EC5_UP_TO_420, inches("1/4"))),
            PilotHole.acrossLoad(screw, oak),
            PilotHole.Density.DENSE,
            ReferenceWithdrawal.of(screw, oak),
            UltimateWithdrawal.of(screw, oak),
            LateralHold.of(screw, oak),
            AllowableLateral.of(screw, AllowableLateral.Group.II),
            AllowableLateral.Group.II,
            FastenerRow.pulledOut(3),
            FastenerGroup.at(inches(1), inches(2)),
            ScrewSeries.LAG_SCREWS,
            Spike.of(Section.square(inches("1/2"))),
            Spike.of(Section.square(inches(1))).driven(inches(12)),
            DrivenDrawing.of(Spike.of(Section.round(inches(1))).driven(inches(12))),
            TimberClass.C24,
            DriftBolt.of(inches(1), oak),
            DrivenStaple.of(Spike.of(Section.round(inches("1/4"))), oak),
            CharacteristicWithdrawal.of(
                Spike.of(Section.round(inches("1/4"))), TimberClass.C24.meanDensity()),
            PenetrationRule.SIX_DIAMETERS,
            ScrewChoice.Limit.SCREW,
            StrapScrews.through(inches("1/4")),
            StrapScrews.through(inches("1/4")).into(inches(2), oak),
            StrapScrews.through(inches("1/4"))
                .into(inches(2), oak)
                .pulledOff(poundsForce(9))
                .bestOf(ScrewSeries.WOOD_SCREWS),
            ClosedStretch.seamAt(inches(6)),
            HOLES,
            HOLES.layout(),
            PicketRow.across(inches(40)).of(inches(1)),
            PicketRow.across(inches(40)).of(inches(1)).pickets(5).layout(),
            GuardCode.IRC_SPHERE,
            WoodScrew.number(8),
            OldBritishWoodScrew.number(8),
            MetricWoodScrew.din97(millimetres(5)),
            LagScrew.of(inches("1/2")),
            CarriageBolt.of(inches("1/2")),
            ClenchedNail.of(Section.square(inches("1/4"))),
            Rivet.of(inches("1/4")),
            WoodScrew.number(8).countersinkIn(inches("1/4")),
            IronHole.drilled(inches("1/4")),
            IronHole.Making.PUNCHED,
            IronHoleRule.AISC_360,
            CheckTopic.named("hinge/swing"),
            CheckTopic.named("hinge/swing").values().findFirst().orElseThrow(),
            NetSection.of(section, IronHole.drilled(inches("1/4"))),
            Bearing.towardsEnd(section, IronHole.drilled(inches("1/4")), inches(1)),
            Silhouette.of(Plain.of(section, inches(1))),
            MeanLine.straight(inches(1)),
            Paper.LETTER,
            BarDrawing.of(piece.layout().on(Graduation.SIXTEENTH)),
            LeafDrawing.of(piece),
            LeafDrawing.of(piece).drawing(),
            HingeDrawing.of(
                HingePair.of(bar, Bore.forPin(inches("3/8")))
                    .leaves(Plain.of(section, inches(9)))
                    .pair()),
            HoleTemplate.of(HOLES.layout(), inches(1)),
            BentDrawing.of(Ring.inside(inches(1), section)),
            CurveDrawing.of(Cooling.from(celsius(1100), bar)));
    List<String> wide = new ArrayList<>();
    for (Object thing : all) {
      String text = thing.toString();
      assertFalse(text.contains("@") || text.contains("["), text);
      // A working is a table of formulas, and as wide as they are.
      if (!(thing instanceof Working)) {
        text.lines().filter(line -> line.length() > COLUMNS).forEach(wide::add);
      }
    }
    assertEquals(List.of(), wide);
  }
}
