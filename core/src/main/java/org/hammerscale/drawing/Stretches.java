package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * The features of a finished piece laid one behind the other, in millimetres on the paper: from the
 * pin's centre if the first is a barrel, which is drawn by itself, else from the first end.
 */
final class Stretches {
  /** A feature: where it ends, and where it lies on the paper. */
  record Stretch(Feature feature, Measure<Length> end, double from, double to) {}

  /** What sums of lengths in one unit and another differ by. */
  private static final double NOISE = 1e-9;

  private final Optional<Barrel> barrel;
  private final Scale scale;
  private final List<Stretch> all = new ArrayList<>();
  private final List<List<double[]>> rims = new ArrayList<>();
  private final List<double[]> openings = new ArrayList<>();
  private final List<double[]> edges = new ArrayList<>();

  Stretches(Piece piece, Scale scale) {
    this.scale = scale;
    List<Feature> features = piece.features();
    this.barrel = features.get(0) instanceof Barrel rolled ? Optional.of(rolled) : Optional.empty();
    Measure<Length> at =
        barrel.map(Barrel::leafStart).orElseGet(() -> features.get(0).reach().withValue(0));
    for (Feature feature : features.subList(barrel.isPresent() ? 1 : 0, features.size())) {
      scale.sizeOrNone("reach of the " + Words.name(feature.name()), feature.reach());
      Measure<Length> end = at.add(feature.reach());
      double from = scale.of(at);
      all.add(new Stretch(feature, end, from, scale.of(end)));
      Silhouette look = Silhouette.of(feature);
      rims.add(look.rims(ShopUnits.MILLIMETRE).stream().map(rim -> placed(rim, from)).toList());
      look.openings(ShopUnits.MILLIMETRE).forEach(rim -> openings.add(placed(rim, from)));
      edges.add(placed(look.edge(ShopUnits.MILLIMETRE), from));
      at = end;
    }
    scale.sizeOrNone("length of the piece", at);
  }

  /** A line on the paper, moved along. */
  private double[] placed(double[] line, double from) {
    double[] numbers = new double[line.length];
    for (int i = 0; i < line.length; i += 2) {
      numbers[i] = from + line[i] / scale.reduction();
      numbers[i + 1] = line[i + 1] / scale.reduction();
    }
    return numbers;
  }

  Optional<Barrel> barrel() {
    return barrel;
  }

  List<Stretch> all() {
    return all;
  }

  /** Of each stretch its closed lines, the first along one side and back along the other. */
  List<List<double[]>> rims() {
    return rims;
  }

  List<double[]> openings() {
    return openings;
  }

  /** Of each stretch its thickness by place. */
  List<double[]> edges() {
    return edges;
  }

  double end() {
    return all.isEmpty() ? 0 : all.get(all.size() - 1).to();
  }

  /** The greatest width of all stretches. */
  double widest() {
    double widest = 0;
    for (List<double[]> each : rims) {
      widest = Math.max(widest, widest(each));
    }
    return widest;
  }

  /** The greatest width of the last stretch. */
  double widestAtTheEnd() {
    return rims.isEmpty() ? 0 : widest(rims.get(rims.size() - 1));
  }

  private static double widest(List<double[]> lines) {
    double widest = 0;
    for (double[] rim : lines) {
      for (int i = 1; i < rim.length; i += 2) {
        widest = Math.max(widest, 2 * Math.abs(rim[i]));
      }
    }
    return widest;
  }

  /** The greatest thickness of all stretches. */
  double thickest() {
    double thickest = 0;
    for (double[] edge : edges) {
      for (int i = 1; i < edge.length; i += 2) {
        thickest = Math.max(thickest, edge[i]);
      }
    }
    return thickest;
  }

  /** Whether it is worked about its middle: a rod, or what is thicker than where it begins. */
  boolean isAboutItsMiddle() {
    if (edges.isEmpty()) {
      return false;
    }
    double thick = edges.get(0)[1];
    double wide = 2 * rims.get(0).get(0)[1];
    return Math.abs(wide - thick) < NOISE || thickest() > thick + NOISE;
  }

  /** A distance on the paper as the size that it stands for, in the unit of the bar. */
  Measure<Length> measure(double paper, Unit<Length> unit) {
    return Measure.of(paper * scale.reduction(), ShopUnits.MILLIMETRE).to(unit);
  }

  /** How thick it is at a place. */
  double thicknessAt(double x) {
    double thickness = 0;
    for (double[] edge : edges) {
      for (int i = 2; i < edge.length; i += 2) {
        if (x >= edge[i - 2] && x <= edge[i] + NOISE) {
          double run = edge[i] - edge[i - 2];
          double share = run == 0 ? 1 : (x - edge[i - 2]) / run;
          thickness = edge[i - 1] + share * (edge[i + 1] - edge[i - 1]);
        }
      }
    }
    return thickness;
  }
}
