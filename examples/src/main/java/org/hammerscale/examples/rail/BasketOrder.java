package org.hammerscale.examples.rail;

import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Basket;
import org.hammerscale.drawing.BasketDrawing;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many baskets, each of four rods. */
public final class BasketOrder extends PartsOrder {
  private static final int RODS = 4;
  private static final Map<String, OrderItem> ITEMS =
      Map.of("height", BasketItem.HEIGHT, "turns", BasketItem.TURNS, "bulge", BasketItem.BULGE);

  private final Basket basket;
  private final Measure<Length> bulge;
  private final Measure<Length> weld;
  private final Part rod;

  private BasketOrder(OrderColumn job, Basket basket, Measure<Length> between) {
    super(job, "basket", "baskets");
    this.basket = basket;
    this.bulge = job.length(BasketItem.BULGE);
    this.weld = job.length(BasketItem.WELD);
    Bar bar = job.bar(SetItem.BAR);
    Measure<Length> whole = between.add(weld.multiply(2));
    this.rod =
        Part.of("rod", Piece.of(bar, Plain.of(bar.section(), whole)), RODS * count(), graduation());
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if rods cannot be opened so
   */
  public static BasketOrder from(OrderColumn job) {
    return Blame.by(
        ITEMS,
        SetItem.BAR,
        () -> {
          Basket basket =
              Basket.ofFour(
                  job.bar(SetItem.BAR).section(),
                  job.length(BasketItem.HEIGHT),
                  job.as(Double.class, BasketItem.TURNS));
          return new BasketOrder(job, basket, basket.rodLength(job.length(BasketItem.BULGE)));
        });
  }

  @Override
  protected List<Part> parts() {
    return List.of(rod);
  }

  @Override
  protected void work(SheetText sheet) {
    sheet.entry("Mark", "%s from either end of each rod, where the weld ends", told(weld));
    sheet.entry("Weld", "four rods laid together, at either end up to the marks");
    sheet.entry(
        "Twist",
        "tight, then back until %s left and the belly opens",
        basket.turns() == 1
            ? "1 turn is"
            : Measure.of(basket.turns(), ShopUnits.ONE) + " turns are");
    sheet.entry(
        "Check",
        "%s from weld to weld, %s over the belly; %s clear between two rods there",
        told(basket.height()),
        told(bulge.multiply(2).add(basket.rod().width())),
        down(basket.opening(bulge)));
    sheet.entry("", "each rod %s between its marks", told(rod.length().subtract(weld.multiply(2))));
  }

  @Override
  protected List<Working> workings() {
    return List.of(basket.working(bulge));
  }

  @Override
  protected List<Caution> warnings() {
    return basket.cautions();
  }

  @Override
  protected Drawing drawing(int reduction) {
    return BasketDrawing.of(basket, bulge).reducedTo(reduction).drawing();
  }
}
