package org.hammerscale.validation;

import static org.hammerscale.units.Measures.inches;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javax.measure.quantity.Length;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.hammerscale.checking.ScoredFile;
import org.hammerscale.forging.HandAllowance;
import org.hammerscale.forging.Taper;
import org.hammerscale.stock.Feature;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.ShopUnits;

/** The printed pieces as a caller would ask for them, their intervals and the score of these. */
final class PrintedPieces {
  static final Map<String, HandAllowance> KINDS = kinds();

  /** From low to high, and how many of the pieces lie there if each is left out of the fit. */
  record Fit(String kind, int pieces, double low, double likely, double high, int insideLeftOut) {}

  /** One piece: what is printed, and what the library says. */
  record Asked(ScoredFile.Row row, double printed, Estimate<Length> bar) {
    double low() {
      return bar.low().in(ShopUnits.INCH);
    }

    double likely() {
      return bar.likely().in(ShopUnits.INCH);
    }

    double high() {
      return bar.high().in(ShopUnits.INCH);
    }

    boolean inside() {
      return bar.covers(inches(printed));
    }

    double error() {
      return Math.abs(likely() / printed - 1);
    }

    double width() {
      return (high() - low()) / printed;
    }
  }

  private PrintedPieces() {}

  private static Map<String, HandAllowance> kinds() {
    Map<String, HandAllowance> kinds = new LinkedHashMap<>();
    kinds.put("bent", HandAllowance.BENT);
    kinds.put("drawn", HandAllowance.DRAWN);
    kinds.put("set down", HandAllowance.SET_DOWN);
    kinds.put("upset", HandAllowance.UPSET);
    return kinds;
  }

  static List<ScoredFile.Row> rows() {
    return ScoredFile.read("printed_pieces.csv");
  }

  /** Every piece with the allowance of its kind. */
  static List<Asked> asked() {
    return rows().stream()
        .map(
            row ->
                new Asked(
                    row,
                    printed(row),
                    PrintedShapes.of(row.text("piece")).bar(f -> hand(row.text("kind"), f))))
        .toList();
  }

  /** Of a piece of two kinds the tapers are drawn, the rest is bent. */
  private static HandAllowance hand(String kind, Feature feature) {
    String of = feature instanceof Taper ? "drawn" : "bent";
    return Objects.requireNonNull(KINDS.get(kind.equals("bent and drawn") ? of : kind), kind);
  }

  /** Bar over the ideal of geometry, of those pieces of a kind that it is fitted to. */
  static double[] ratios(String kind) {
    return rows().stream()
        .filter(row -> row.text("kind").equals(kind) && row.text("fitted").equals("yes"))
        .mapToDouble(
            row ->
                printed(row)
                    / PrintedShapes.of(row.text("piece"))
                        .bar(f -> HandAllowance.NONE)
                        .likely()
                        .in(ShopUnits.INCH))
        .toArray();
  }

  /** The prediction interval of logarithms, and each piece against that of the others. */
  static Fit fit(String kind) {
    double[] ratios = ratios(kind);
    int inside = 0;
    for (int left = 0; left < ratios.length; left++) {
      List<Double> others = new ArrayList<>();
      for (int i = 0; i < ratios.length; i++) {
        if (i != left) {
          others.add(ratios[i]);
        }
      }
      double[] told = interval(others.stream().mapToDouble(Double::doubleValue).toArray());
      inside += told[0] <= ratios[left] && ratios[left] <= told[2] ? 1 : 0;
    }
    double[] all = interval(ratios);
    return new Fit(kind, ratios.length, all[0], all[1], all[2], inside);
  }

  private static double[] interval(double[] ratios) {
    double[] logs = Arrays.stream(ratios).map(Math::log).toArray();
    int n = logs.length;
    double mean = StatUtils.mean(logs);
    double t = new TDistribution(null, n - 1).inverseCumulativeProbability(0.95);
    double reach = t * Math.sqrt(StatUtils.variance(logs) * (1 + 1d / n));
    return new double[] {Math.exp(mean - reach), Math.exp(mean), Math.exp(mean + reach)};
  }

  private static double printed(ScoredFile.Row row) {
    return Double.parseDouble(row.text("printed"));
  }

  /** Table and score for the page. */
  static String page() {
    StringBuilder page = new StringBuilder("\n## Printed pieces\n\n");
    ScoredFile.remarks("printed_pieces.csv").forEach(r -> page.append(r).append("\n"));
    page.append(
            "\n| piece | kind | printed, in | low | likely | high | inside | fitted | source |\n")
        .append("|---|---|--:|--:|--:|--:|---|---|---|\n");
    List<Asked> all = asked();
    for (Asked piece : all) {
      page.append(
          String.format(
              Locale.ROOT,
              "| %s | %s | %s | %.3f | %.3f | %.3f | %s | %s | %s, %s |%n",
              piece.row().text("piece"),
              piece.row().text("kind"),
              piece.row().text("printed"),
              piece.low(),
              piece.likely(),
              piece.high(),
              piece.inside() ? "yes" : "**no**",
              piece.row().text("fitted"),
              piece.row().text("source"),
              piece.row().text("locator")));
    }
    page.append(
        String.format(
            Locale.ROOT,
            "%nScore: %d of %d inside; likely misses by %.1f %% in the median; an interval is"
                + " %.0f %% of the printed stock wide on the average.%n",
            inside(all),
            all.size(),
            100 * medianError(all),
            100 * meanWidth(all)));
    page.append("\n| kind | pieces | low | likely | high | inside, each left out of the fit |\n")
        .append("|---|--:|--:|--:|--:|--:|\n");
    for (String kind : KINDS.keySet()) {
      Fit fit = fit(kind);
      page.append(
          String.format(
              Locale.ROOT,
              "| %s | %d | %.3f | %.3f | %.3f | %d |%n",
              kind,
              fit.pieces(),
              fit.low(),
              fit.likely(),
              fit.high(),
              fit.insideLeftOut()));
    }
    page.append("\nNotes:\n\n");
    for (ScoredFile.Row row : rows()) {
      if (!row.text("note").isEmpty()) {
        page.append("- *").append(row.text("piece")).append("*: ").append(row.text("note"));
        page.append("\n");
      }
    }
    return page.toString();
  }

  static int inside(List<Asked> pieces) {
    return (int) pieces.stream().filter(Asked::inside).count();
  }

  static double medianError(List<Asked> pieces) {
    return StatUtils.percentile(pieces.stream().mapToDouble(Asked::error).toArray(), 50);
  }

  static double meanWidth(List<Asked> pieces) {
    return StatUtils.mean(pieces.stream().mapToDouble(Asked::width).toArray());
  }
}
