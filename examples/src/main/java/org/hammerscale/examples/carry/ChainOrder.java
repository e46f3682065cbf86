package org.hammerscale.examples.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Chain;
import org.hammerscale.bending.ChainPattern;
import org.hammerscale.bending.Link;
import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.drawing.ChainDrawing;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.LoadText;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.HandbookLoad;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many chains of links of round bar, each link forge-welded. */
public final class ChainOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of("length", ChainItem.LINK_LENGTH, "width", ChainItem.LINK_WIDTH);

  private static final List<HandbookLoad> RULES =
      List.of(
          HandbookLoad.CHAIN_EIGHTHS,
          HandbookLoad.CHAIN_TWO_SECTIONS,
          HandbookLoad.CHAIN_FIELD,
          HandbookLoad.CHAIN_ARTILLERY,
          HandbookLoad.CHAIN_BREAKING,
          HandbookLoad.CHAIN_BREAKING_METRIC);

  private static final Caution SPITS =
      Caution.danger(
          "at a welding heat flux and burning scale fly: wear eye protection, keep others back");

  private final Chain chain;
  private final Optional<Measure<Length>> wanted;
  private final Part link;

  private ChainOrder(OrderColumn job, Chain chain) {
    super(job, "chain", "chains");
    this.chain = chain;
    this.wanted = job.as(ChainItem.Reach.class, ChainItem.LENGTH).length();
    Piece piece = Piece.of(job.bar(SetItem.BAR), chain.link());
    this.link = Part.of("link", piece, chain.links() * count(), graduation());
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if its links do not go through one another
   */
  public static ChainOrder from(OrderColumn job) {
    checkHeat(job, SetItem.BAR);
    Link link = Blame.by(ITEMS, SetItem.BAR, () -> link(job));
    ChainItem.Reach reach = job.as(ChainItem.Reach.class, ChainItem.LENGTH);
    return new ChainOrder(job, Blame.on(ChainItem.LENGTH, () -> reach.of(link)));
  }

  private static Link link(OrderColumn job) {
    Bar bar = job.bar(SetItem.BAR);
    Section rod = bar.section();
    if (!rod.isRound() || rod.isTube()) {
      throw new IllegalArgumentException("bar must be round, was " + rod + "; take a rod");
    }
    Link usual = ChainPattern.SHORT_LINK.link(rod.width());
    Measure<Length> length =
        job.lengthIfAny(ChainItem.LINK_LENGTH).orElse(onMark(job, usual.insideLength()));
    Measure<Length> width =
        job.lengthIfAny(ChainItem.LINK_WIDTH).orElse(onMark(job, usual.insideWidth()));
    Link link = Link.inside(length, width, rod).welded(job.as(WeldAllowance.class, ChainItem.WELD));
    return Chain.of(link, 1).link(); // refused if the next does not go through it
  }

  /** Down, since the pattern's sizes are the most; a size of less than a mark stays. */
  private static Measure<Length> onMark(OrderColumn job, Measure<Length> size) {
    Measure<Length> down = job.graduation().downTo(size);
    return down.getValue() > 0 ? down : size;
  }

  @Override
  protected List<Part> parts() {
    return List.of(link);
  }

  @Override
  protected void work(SheetText sheet) {
    Measure<Length> wide = chain.link().insideWidth();
    sheet.entry("Links", "%s", chain.links() + (count() == 1 ? "" : " in each chain") + overAll());
    sheet.entry(
        "Trial",
        "weld one first; twice what it comes out too long inside is cut off the other rods, likely"
            + " about %s",
        told(link.length().subtract(chain.link().cutLength().likely())));
    sheet.entry(
        "Bend",
        "the middle of each rod half round a mandrel of %s, both legs alike",
        toolSteps().upTo(wide));
    sheet.entry(
        "Weld",
        "scarf both ends on opposite sides, bend them together to lap; flux, and weld at a"
            + " white heat that is even all through; dress it to the rod's own thickness");
    sheet.entry(
        "Check",
        "each %s × %s inside, %s × %s outside; the next has %s to spare in it",
        told(chain.pitch()),
        told(wide),
        told(chain.link().reach()),
        told(chain.outsideWidth()),
        calliper(chain.clearance()));
    sheet.entry("Join", "%s", joining(chain.links()));
    sheet.entry(
        "Chain",
        "pulled straight %s over all, %s from link to link; its end links lie %s",
        told(chain.length()),
        told(chain.pitch()),
        chain.links() % 2 == 1 ? "alike" : "square to each other");
  }

  /** How much more than asked the links reach, and what one fewer would. */
  private String overAll() {
    Measure<Length> all = chain.length();
    return wanted
        .map(
            length ->
                ", "
                    + told(all.subtract(length.to(all.getUnit())))
                    + " longer than asked; with one fewer it is "
                    + told(all.subtract(chain.pitch())))
        .orElse(", as asked");
  }

  /** In what order they are welded: every second link alone, the others once they are hung. */
  static String joining(int links) {
    String hang = " in the bend of an open link and weld it";
    if (links < 3) {
      return links == 1 ? "a single link, welded" : "weld one link; hang it" + hang;
    }
    int alone = (links + 1) / 2;
    int threes = (links + 1) / 4;
    boolean isOneLeft = alone > 2 * threes;
    int joints = threes - 1 + (isOneLeft ? 1 : 0);
    StringBuilder text = new StringBuilder();
    text.append("weld ").append(alone).append(" links each by itself; hang two of them");
    text.append(hang).append(threes == 1 ? ": a three" : ": " + threes + " such threes");
    if (joints > 0) {
      text.append("; hang these ").append(isOneLeft ? "and the one left " : "");
      text.append("together with ").append(joints).append(" more in the same way");
    }
    return text.append(links % 2 == 0 ? "; the last hangs in one link only" : "").toString();
  }

  @Override
  protected void more(SheetText sheet) {
    Section rod = chain.link().section();
    List<String> loads = new ArrayList<>();
    for (HandbookLoad rule : RULES) {
      loads.add(
          rule.toString().replace("chain, ", "")
              + ": "
              + LoadText.down(LoadText.weightOf(rule.load(rod.width()))));
    }
    sheet.entry(
        "Rules",
        "old handbooks of other chain of %s, to compare sizes and no rating of this one: %s",
        rod,
        String.join("; ", loads));
  }

  @Override
  protected List<Working> workings() {
    List<Working> workings = new ArrayList<>();
    workings.add(chain.working());
    workings.add(chain.link().cutWorking());
    RULES.forEach(rule -> workings.add(rule.working(chain.link().section().width())));
    return workings;
  }

  @Override
  protected List<Caution> warnings() {
    List<Caution> rules = HandbookLoad.CHAIN_ARTILLERY.cautions();
    List<Caution> all = new ArrayList<>(rules.subList(0, 2));
    all.add(SPITS);
    all.addAll(chain.cautions());
    all.addAll(rules);
    return all;
  }

  /** Only the first link teaches the others; each chain is measured. */
  @Override
  public List<String> blanks() {
    List<String> blanks = new ArrayList<>();
    blanks.add("first link: cut ________ inside ________ so cut the others ________");
    for (int number = 1; number <= count(); number++) {
      blanks.add("chain" + (count() == 1 ? "" : " " + number) + ": pulled straight ________");
    }
    return blanks;
  }

  @Override
  protected Drawing drawing(int reduction) {
    return ChainDrawing.of(chain).reducedTo(reduction).drawing();
  }
}
