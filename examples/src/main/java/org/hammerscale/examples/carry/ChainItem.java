package org.hammerscale.examples.carry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Chain;
import org.hammerscale.bending.Link;
import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Reading;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.units.Measure;

/** What an order file says of a chain alone. */
public final class ChainItem {
  public static final OrderItem LINK_LENGTH = OrderItem.of("link length", Texts.inside("40 mm"));
  public static final OrderItem LINK_WIDTH = OrderItem.of("link width", Texts.inside("14 mm"));
  public static final OrderItem LENGTH = OrderItem.of("length", Texts.REACH);
  public static final OrderItem WELD = OrderItem.of("weld", Reading.oneOf(Texts.welds()));

  /** How long a chain is to be: over all at least, or of so many links. */
  record Reach(Optional<Measure<Length>> length, int links) {
    private static final String LINKS = "links";

    static Reach parse(String text) {
      if (!text.endsWith(LINKS)) {
        return new Reach(Optional.of(Reading.LENGTH.reader().apply(text)), 0);
      }
      String number = text.substring(0, text.length() - LINKS.length()).strip();
      return new Reach(Optional.empty(), Reading.count(1, 9999).reader().apply(number));
    }

    Chain of(Link link) {
      return length.map(each -> Chain.reaching(each, link)).orElseGet(() -> Chain.of(link, links));
    }
  }

  private static final class Texts {
    static final Reading<Reach> REACH =
        new Reading<>(
            "a length over all such as 24 in or 800 mm, or a count such as 30 links",
            Reach::parse,
            Reach.parse("30 links"));

    static Reading<?> inside(String example) {
      return Reading.lengthOr(
          "short link",
          "a size inside the link such as " + example + ", or short link for that of its pattern");
    }

    static Map<String, WeldAllowance> welds() {
      Map<String, WeldAllowance> welds = new LinkedHashMap<>();
      welds.put("one thickness", WeldAllowance.ONE_THICKNESS);
      welds.put("three eighths", WeldAllowance.THREE_EIGHTHS);
      welds.put("chain ring", WeldAllowance.CHAIN_RING);
      welds.put("customary", WeldAllowance.CUSTOMARY);
      welds.put("part of the length", WeldAllowance.LINK);
      return welds;
    }
  }

  /** All that a job says, in the order of the work. */
  public static final List<OrderItem> ALL =
      List.of(
          SetItem.NAME,
          SetItem.COUNT,
          SetItem.BAR,
          LINK_LENGTH,
          LINK_WIDTH,
          LENGTH,
          WELD,
          SetItem.HEAT,
          SetItem.KERF,
          SetItem.GRADUATION);

  private ChainItem() {}
}
