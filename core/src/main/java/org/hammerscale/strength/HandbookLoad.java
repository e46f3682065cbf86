package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * What old handbooks, field manuals and a standard let hang from hooks, shackles and chain of a
 * diameter, side by side: k d². Other names: {@index "safe working load"}, {@index "breaking
 * load"}. They are for comparing sizes: a hand-forged part has no rating, and its weld cannot be
 * computed.
 *
 * <pre>{@code
 * HandbookLoad.HOOK_FIELD.load(inches("1 1/8"))       // 2531.25 lb   D² short tons
 * HandbookLoad.CHAIN_EIGHTHS.load(inches(1))          // 14336 lb  (eighths)² / 10 long tons
 * HandbookLoad.CHAIN_FIELD.load(inches(1))            // 16000 lb  8 D² short tons
 * HandbookLoad.GRADE_4_LIMIT.load(millimetres(13))    // 2650 kg   of a made and marked chain
 * }</pre>
 *
 * <p>Tons are long (2240 lb) in British books, short (2000 lb) in American manuals, metric (1000
 * kg) elsewhere; answers are in pounds for a diameter in inches, else in kilograms. Rules of hooks
 * take the thickness where the curve begins.
 */
public enum HandbookLoad {
  /** Hook: D² short tons. */
  HOOK_FIELD("hook, D² short tons", 1, Ton.SHORT, Kind.WORKING),
  /** Hook: 2/3 D² short tons, of a second manual. */
  HOOK_TWO_THIRDS("hook, 2/3 D² short tons", 2 / 3d, Ton.SHORT, Kind.WORKING),
  /** Shackle: 3 D² short tons. */
  SHACKLE_FIELD("shackle, 3 D² short tons", 3, Ton.SHORT, Kind.WORKING),
  /** Shackle: 0.417 D² tonnes, D in centimetres. */
  SHACKLE_METRIC("shackle, 0.417 D² t, D in cm", 0.417 * 2.54 * 2.54, Ton.METRIC, Kind.WORKING),
  /** Chain: the square of its diameter in eighths of an inch, ÷ 10, long tons: 6.4 d². */
  CHAIN_EIGHTHS("chain, (eighths)² / 10 long tons", 6.4, Ton.LONG, Kind.WORKING),
  /** Chain: two sections at 4 long tons on the square inch, 6.28 d². */
  CHAIN_TWO_SECTIONS(
      "chain, two sections at 4 tons, 6.28 d² long tons", 6.28, Ton.LONG, Kind.WORKING),
  /** Chain: 8 D² short tons. */
  CHAIN_FIELD("chain, 8 D² short tons", 8, Ton.SHORT, Kind.WORKING),
  /** Chain: 240 d² hundredweight, about double the others and nearer a proof load. */
  CHAIN_ARTILLERY("chain, 240 d² hundredweight", 12, Ton.LONG, Kind.PROOF),
  /** Chain, open links: breaks at about 24 d² long tons. */
  CHAIN_BREAKING("open links break at 24 d² long tons", 24, Ton.LONG, Kind.BREAKING),
  /** Chain: breaks at 30 D² / 600 tonnes, D in millimetres. */
  CHAIN_BREAKING_METRIC(
      "chain breaks at 30 D² / 600 t, D in mm", 0.05 * 25.4 * 25.4, Ton.METRIC, Kind.BREAKING),
  /** Chain of grade 4, EN 818-3: breaks at 400 N/mm² on both its sections, what hangs there. */
  GRADE_4_BREAKING("grade 4 chain breaks at 400 N/mm²", stress(400), Ton.METRIC, Kind.BREAKING),
  /** Chain of grade 4: a quarter of its breaking load, down to a preferred number. */
  GRADE_4_LIMIT("grade 4 chain, a quarter", stress(100), Ton.METRIC, Kind.LIMIT),
  /** Chain of grade 6 (S): breaks at 630 N/mm². */
  GRADE_6_BREAKING("grade 6 chain breaks at 630 N/mm²", stress(630), Ton.METRIC, Kind.BREAKING),
  /** Chain of grade 8 (T): breaks at 800 N/mm². */
  GRADE_8_BREAKING("grade 8 chain breaks at 800 N/mm²", stress(800), Ton.METRIC, Kind.BREAKING);

  /** What its load is. */
  private enum Kind {
    WORKING,
    PROOF,
    BREAKING,
    LIMIT
  }

  private enum Ton {
    LONG(2240),
    SHORT(2000),
    METRIC(1000 / 0.45359237);

    private final double pounds;

    Ton(double pounds) {
      this.pounds = pounds;
    }
  }

  /** The preferred numbers of series R 40, from 1 to 10. */
  private static final double[] PREFERRED = {
    1, 1.06, 1.12, 1.18, 1.25, 1.32, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 2.12, 2.24, 2.36, 2.5, 2.65,
    2.8, 3, 3.15, 3.35, 3.55, 3.75, 4, 4.25, 4.5, 4.75, 5, 5.3, 5.6, 6, 6.3, 6.7, 7.1, 7.5, 8, 8.5,
    9, 9.5, 10
  };

  private final String words;
  private final double constant;
  private final Ton ton;
  private final Kind kind;

  HandbookLoad(String words, double constant, Ton ton, Kind kind) {
    this.words = words;
    this.constant = constant;
    this.ton = ton;
    this.kind = kind;
  }

  /** Tonnes on a square inch of d², for a stress on two round sections in N/mm². */
  private static double stress(double newtons) {
    return newtons * Math.PI / 2 * 25.4 * 25.4 / 9806.65;
  }

  /**
   * The mass that may hang, or that breaks it: k d².
   *
   * @param diameter of hook, shackle or chain bar, more than zero
   * @return the mass, as the rule has it; in pounds for inches, else in kilograms
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public Measure<Mass> load(Quantity<Length> diameter) {
    Measure<Length> d = Arguments.positive("diameter", diameter);
    Measure<Mass> load = Measure.of(load(Notes.NONE, d), ShopUnits.POUND);
    return isCustomary(d) ? load : load.to(ShopUnits.KILOGRAM);
  }

  /** {@return whether it is a load that breaks, and none that may hang} */
  public boolean isBreaking() {
    return kind == Kind.BREAKING;
  }

  /** {@return that it rates nothing hand-forged, and is not for lifting} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(List.of(CarryingHook.NO_LIFTING));
    cautions.add(
        Caution.danger(
            "a forge weld's strength cannot be computed: proof-test the part itself. In the old"
                + " practice proof was half of breaking, working half of proof"));
    if (kind == Kind.PROOF) {
      cautions.add(
          Caution.limit("printed as a working strain, it is twice the other rules", source()));
    }
    cautions.add(LoadCautions.NOT_CERTIFIED);
    return List.copyOf(cautions);
  }

  /**
   * How the load was found.
   *
   * @param diameter of hook, shackle or chain bar, more than zero
   * @return the working of {@link #load}, in inches and pounds
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public Working working(Quantity<Length> diameter) {
    Measure<Length> d = Arguments.positive("diameter", diameter);
    return Notes.taken(words, ShopUnits.INCH, n -> load(n, d))
        .withSource(source())
        .withCautions(cautions());
  }

  /** {@return where the rule was found} */
  public Source source() {
    return switch (this) {
      case HOOK_FIELD, SHACKLE_FIELD, CHAIN_FIELD ->
          Source.read("US Navy steelworker manual and rigging pages", "field rules");
      case HOOK_TWO_THIRDS -> Source.fromMemory("a second field manual", "hooks, 2/3 D²");
      case SHACKLE_METRIC -> Source.read("rigging guidance page", "shackles, 0.417 D² t");
      case CHAIN_EIGHTHS, CHAIN_TWO_SECTIONS ->
          Source.read("Lineham, A Text-Book of Mechanical Engineering", "p. 397, crane chain");
      case CHAIN_ARTILLERY -> Source.read("Dyer, Handbook for Light Artillery", "ropes and chains");
      case CHAIN_BREAKING ->
          Source.read("Anderson, The Strength of Materials and Structures, 1884", "chains");
      case CHAIN_BREAKING_METRIC -> Source.read("a rule of seamanship, on a page", "30 D² / 600");
      case GRADE_4_BREAKING, GRADE_4_LIMIT -> Source.read("EN 818-3:1999", "table of loads");
      case GRADE_6_BREAKING ->
          Source.read("chain maker's table after the short link standard", "grade S(6)");
      case GRADE_8_BREAKING -> Source.read("short link standard", "grade T(8), 800 N/mm²");
    };
  }

  private double load(Notes n, Measure<Length> diameter) {
    double d = n.given("d", "diameter", diameter.in(ShopUnits.INCH));
    double k = n.number("k", "tons on a square inch of d²", "", constant);
    double t = n.value("t", "a ton", "", ton.pounds, ShopUnits.POUND);
    if (kind != Kind.LIMIT) {
      return n.value("W", "load by the rule", "k t d²", k * t * (d * d), ShopUnits.POUND);
    }
    double tonnes = n.number("w", "tonnes, a quarter of breaking", "k d²", k * (d * d));
    double down = n.number("r", "the preferred number below", "", preferred(tonnes));
    return n.value("W", "working load limit", "r t", down * t, ShopUnits.POUND);
  }

  private static double preferred(double tonnes) {
    double decade = Math.pow(10, Math.floor(Math.log10(tonnes)));
    double best = PREFERRED[0];
    for (double number : PREFERRED) {
      best = number <= tonnes / decade * (1 + 1e-9) ? number : best;
    }
    return best * decade;
  }

  private static boolean isCustomary(Measure<Length> diameter) {
    double thousandths = Measure.of(1, diameter.getUnit()).in(ShopUnits.INCH) * 1000;
    return Math.abs(thousandths - Math.rint(thousandths)) < 1e-6;
  }

  /** The rule in words. */
  @Override
  public String toString() {
    return words;
  }
}
