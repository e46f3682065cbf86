package org.hammerscale.piece;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hammerscale.internal.Subscripts;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A piece laid out on its cold bar: what to cut off, and where the centre punch goes, measured from
 * one end. Lengths are in the unit of the bar's width. The errors of estimated features add up
 * along the bar as if they all went the same way.
 *
 * <p>Neither scale nor saw kerf is counted. Source: conservation of volume.
 */
public final class Layout {
  private final Piece piece;
  private final List<Estimate<Length>> stocks;
  private final List<Mark> marks;

  private Layout(Piece piece, List<Estimate<Length>> stocks, List<Mark> marks) {
    this.piece = piece;
    this.stocks = stocks;
    this.marks = marks;
  }

  static Layout of(Piece piece) {
    List<Feature> features = piece.features();
    List<Estimate<Length>> stocks = new ArrayList<>(features.size());
    List<Mark> marks = new ArrayList<>(features.size());
    Estimate<Length> position = Estimate.exact(zero(piece.bar()));
    for (int i = 0; i < features.size(); i++) {
      Estimate<Length> stock = features.get(i).stock(piece.bar().section());
      position = position.addDependent(stock);
      stocks.add(stock);
      marks.add(
          new Mark(
              position, features.get(i), i + 1 < features.size() ? features.get(i + 1) : null));
    }
    return new Layout(piece, stocks, List.copyOf(marks));
  }

  /** {@return the piece that is laid out} */
  public Piece piece() {
    return piece;
  }

  /** {@return the length of bar it uses; exact if all its features are} */
  public Estimate<Length> cutLength() {
    return marks.get(marks.size() - 1).position();
  }

  /** {@return the marks in order from the measured end; the last one is the cut} */
  public List<Mark> marks() {
    return marks;
  }

  /**
   * The finished length over all: the reaches of the features added up.
   *
   * @return the length, in the unit of the bar's width
   */
  public Measure<Length> finishedLength() {
    Measure<Length> length = zero(piece.bar());
    for (Feature feature : piece.features()) {
      length = length.add(feature.reach());
    }
    return length;
  }

  /** {@return the likely mass of the bar cut for it, before the fire takes its scale} */
  public Measure<Mass> mass() {
    return piece.bar().mass(cutLength().likely());
  }

  /**
   * What the features warn of, and where neighbours do not meet in section.
   *
   * @return the cautions, each once
   */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    List<Feature> features = piece.features();
    for (int i = 0; i < features.size(); i++) {
      features.get(i).cautions().stream()
          .filter(caution -> !cautions.contains(caution))
          .forEach(cautions::add);
      if (i > 0 && !features.get(i - 1).end().meets(features.get(i).start())) {
        cautions.add(step(features.get(i - 1), features.get(i)));
      }
    }
    return List.copyOf(cautions);
  }

  /** {@return how the cut length was added up} */
  public Working working() {
    return Notes.taken("length of bar for the piece", unit(piece.bar()), this::sum)
        .withSource(
            Source.computed("conservation of volume: metal of a feature ÷ section of the bar"))
        .withCautions(cautions());
  }

  private double sum(Notes n) {
    double total = 0;
    StringBuilder formula = new StringBuilder();
    for (int i = 0; i < stocks.size(); i++) {
      String symbol = "s" + Subscripts.of(i + 1);
      String meaning = "bar used by the " + piece.features().get(i).name();
      total += n.given(symbol, meaning, stocks.get(i).likely().in(unit(piece.bar())));
      formula.append(i == 0 ? "" : " + ").append(symbol);
    }
    return n.length("C", "cut length", formula.toString(), total);
  }

  private static Caution step(Feature before, Feature after) {
    return Caution.limit(
        "the "
            + before.name()
            + " ends in "
            + before.end()
            + " but the "
            + after.name()
            + " begins with "
            + after.start()
            + ": put a taper or a shoulder between, or make the sections meet",
        Source.computed("conservation of volume counts no metal for a sudden step"));
  }

  private static Measure<Length> zero(Bar bar) {
    return bar.section().width().withValue(0);
  }

  private static Unit<Length> unit(Bar bar) {
    return bar.section().width().getUnit();
  }

  /** Cut length and marks. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("cut ").append(cutLength()).append(", marks at ");
    for (int i = 0; i < marks.size(); i++) {
      text.append(i == 0 ? "" : ", ").append(marks.get(i).position());
    }
    return text.toString();
  }
}
