package org.hammerscale.punching;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Outlined;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A bar split lengthwise into two or more tines: {@index fork}, {@index branch}, the two halves of
 * a {@index "ram's head"}. The widths of the tines and the kerfs of the cuts between them make up
 * the bar. Each tine is then a feature of its own, plain until it is {@linkplain #worked worked} to
 * something else; the split is as long as the tine that uses most, and what the others do not use
 * is trimmed.
 *
 * <pre>{@code
 * Section bar = Section.flat(inches("1 1/4"), inches("1/4"));
 * HotCut cut = HotCut.ofKerf(inches("1/16"), bar);
 * Split fork = Split.over(inches(4), cut, inches("3/4"), inches("7/16"));
 * fork.tineSections().get(1)  // 7/16 in × 1/4 in flat  what the second tine is forged from
 * fork.metalLost()            // hot cut 0.0625 in³  what the chisel takes
 * fork.stock(bar)             // 4 in  bar to mark off, until the tines are worked to something else
 * }</pre>
 *
 * <p>Exact as geometry; the kerf of a hot cut is an allowance, see {@link HotCut}. If a worked tine
 * is an estimate, so is the split.
 *
 * <p>Source: conservation of volume.
 */
public final class Split implements Feature, Outlined {
  private static final int MOST = 100;
  private static final double SLACK = 1e-9;

  private final HotCut cut;
  private final Measure<Length> length;
  private final List<Section> sections;
  private final List<Feature> tines;

  private Split(HotCut cut, Measure<Length> length, List<Section> sections, List<Feature> tines) {
    this.cut = cut;
    this.length = length;
    this.sections = sections;
    this.tines = tines;
  }

  /**
   * A split into tines of given widths.
   *
   * @param length how far the bar is split, more than zero
   * @param cut the chisel, and the bar that is split: flat or square
   * @param widths the width of each tine, 2 to 100, in order across the bar
   * @return the split
   * @throws IllegalArgumentException if a size is not more than zero, their count is out of range,
   *     the widths and kerfs do not add up to the bar, or the bar is not flat or square
   */
  @SafeVarargs
  public static Split over(Quantity<Length> length, HotCut cut, Quantity<Length>... widths) {
    Objects.requireNonNull(widths, "widths");
    Objects.requireNonNull(cut, "cut");
    Measure<Length> far = Arguments.positive("length", length);
    Section bar = Cheeks.flat(cut.section());
    List<Measure<Length>> tines = new ArrayList<>();
    for (Quantity<Length> width : widths) {
      tines.add(Arguments.positive("width of a tine", width));
    }
    checkCount(tines.size());
    Measure<Length> sum = cut.kerf().multiply(tines.size() - 1).to(bar.width().getUnit());
    for (Measure<Length> tine : tines) {
      sum = sum.add(tine);
    }
    if (Math.abs(sum.ratio(bar.width()) - 1) > SLACK) {
      throw new IllegalArgumentException(refusal(tines, cut, sum));
    }
    return of(cut, far, tines.stream().map(width -> strip(width, bar)).toList());
  }

  /**
   * A split into tines of one width: (w − (n − 1) k)/n.
   *
   * @param length how far the bar is split, more than zero
   * @param cut the chisel, and the bar that is split: flat or square
   * @param count how many tines, 2 to 100
   * @return the split
   * @throws IllegalArgumentException if the length is not more than zero, their count is out of
   *     range, the kerfs leave nothing of the bar, or the bar is not flat or square
   */
  public static Split evenly(Quantity<Length> length, HotCut cut, int count) {
    Objects.requireNonNull(cut, "cut");
    Measure<Length> far = Arguments.positive("length", length);
    Section bar = Cheeks.flat(cut.section());
    checkCount(count);
    Measure<Length> left = bar.width().subtract(cut.kerf().multiply(count - 1));
    if (!(left.ratio(bar.width()) > SLACK)) {
      throw new IllegalArgumentException(
          "count must leave metal between the kerfs of "
              + cut.kerf()
              + " in a bar of "
              + bar.width()
              + ", was "
              + count
              + "; take fewer tines, a keener chisel or a wider bar");
    }
    Section tine = strip(left.divide(count), bar);
    return of(cut, far, Collections.nCopies(count, tine));
  }

  private static Split of(HotCut cut, Measure<Length> length, List<Section> sections) {
    List<Feature> tines =
        sections.stream().<Feature>map(section -> Plain.of(section, length)).toList();
    return new Split(cut, length, sections, tines);
  }

  private static void checkCount(int count) {
    Arguments.count("count of tines", count, 2, MOST, "a bar that is not split is a Plain stretch");
  }

  private static Section strip(Measure<Length> width, Section bar) {
    return width.isLessThan(bar.thickness())
        ? Section.onEdge(width, bar.thickness())
        : Section.flat(width, bar.thickness());
  }

  private static String refusal(List<Measure<Length>> tines, HotCut cut, Measure<Length> sum) {
    String widths = tines.stream().map(Measure::toString).collect(Collectors.joining(" + "));
    return "widths of the tines must add up with their cuts to the bar of "
        + cut.section().width()
        + ", was "
        + widths
        + " and "
        + (tines.size() - 1)
        + " × "
        + cut.kerf()
        + " of kerf, together "
        + sum
        + "; change a tine by the difference";
  }

  /**
   * The same split with each tine worked to a feature of its own: drawn to a point, turned to an
   * eye. Its length follows: the tine that uses most of its strip decides, the others are trimmed.
   *
   * @param features what becomes of each tine, in order, each beginning with its tine's section
   * @return the split, as long as its tines ask for
   * @throws IllegalArgumentException if there are not as many features as tines, one does not begin
   *     with its tine's section, or none uses any bar
   */
  public Split worked(Feature... features) {
    Objects.requireNonNull(features, "features");
    if (features.length != sections.size()) {
      throw new IllegalArgumentException(
          "features must be as many as the "
              + sections.size()
              + " tines, was "
              + features.length
              + "; leave a tine as it is with a Plain stretch of its section");
    }
    Measure<Length> longest = length.withValue(0);
    for (int i = 0; i < features.length; i++) {
      if (!features[i].start().meets(sections.get(i))) {
        throw new IllegalArgumentException(
            "feature "
                + (i + 1)
                + " must begin with its tine, "
                + sections.get(i)
                + ", was a "
                + features[i].name()
                + " from "
                + features[i].start()
                + "; change the widths of the tines, or work it from this section");
      }
      Measure<Length> used = features[i].stock(sections.get(i)).likely().to(length.getUnit());
      longest = used.isGreaterThan(longest) ? used : longest;
    }
    return new Split(cut, Arguments.positive("length", longest), sections, List.of(features));
  }

  /** {@return how far the bar is split, before the tines are worked} */
  public Measure<Length> length() {
    return length;
  }

  /** {@return the sections of the tines in order across the bar, before they are worked} */
  public List<Section> tineSections() {
    return sections;
  }

  /** {@return the tines in order across the bar, each a feature of its own section} */
  public List<Feature> tines() {
    return tines;
  }

  /** {@return {@code split}} */
  @Override
  public String name() {
    return "split";
  }

  @Override
  public Section start() {
    return cut.section();
  }

  /** {@return the metal of all tines, in the cube of the length's unit; exact if they are} */
  @Override
  public Estimate<Volume> metalKept() {
    Estimate<Volume> kept = tines.get(0).metalKept().to(volumeUnit());
    for (Feature tine : tines.subList(1, tines.size())) {
      kept = kept.addDependent(tine.metalKept());
    }
    return kept;
  }

  /** {@return the hot cuts, what the tines lose, and what is trimmed off those that use less} */
  @Override
  public Losses metalLost() {
    Measure<Volume> cuts = cut.metalAlong(length).multiply(tines.size() - 1);
    Losses losses =
        cuts.getValue() > 0 ? Losses.NONE.and("hot cut", Estimate.exact(cuts)) : Losses.NONE;
    for (int i = 0; i < tines.size(); i++) {
      Losses own = tines.get(i).metalLost();
      losses = own.isNone() ? losses : losses.and("tine " + (i + 1), own.total());
      Measure<Length> spare = length.subtract(tines.get(i).stock(sections.get(i)).likely());
      if (spare.ratio(length) > SLACK) {
        Measure<Volume> trim = Measures.volume(spare, sections.get(i).area());
        losses = losses.and("trim", Estimate.exact(trim));
      }
    }
    return losses;
  }

  /** {@return the reach of the tine that reaches farthest} */
  @Override
  public Measure<Length> reach() {
    Measure<Length> farthest = tines.get(0).reach();
    for (Feature tine : tines) {
      farthest = tine.reach().isGreaterThan(farthest) ? tine.reach() : farthest;
    }
    return farthest;
  }

  /**
   * The length of parent bar it uses: that of the split itself if the parent is the bar and the
   * tines are exact.
   *
   * @param parent the section of the bar it is forged from
   * @return the length, with the spread of its tines
   */
  @Override
  public Estimate<Length> stock(Section parent) {
    Section.requireArea("parent", parent);
    return cut.section().equals(parent) && metalKept().isExact() && metalLost().total().isExact()
        ? Estimate.exact(length)
        : Feature.super.stock(parent);
  }

  /** {@return the tines side by side, the kerf between two} */
  @Override
  public Silhouette outline() {
    Silhouette look = Silhouette.from(cut.section());
    Measure<Length> edge = cut.section().width().divide(2).negate();
    for (int i = 0; i < tines.size(); i++) {
      Measure<Length> width = sections.get(i).width();
      look = look.beside(Silhouette.of(tines.get(i)), edge.add(width.divide(2)));
      edge = edge.add(width).add(cut.kerf());
    }
    return look;
  }

  /** {@return those of the chisel and of the tines} */
  @Override
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(cut.cautions());
    tines.forEach(tine -> cautions.addAll(tine.cautions()));
    return cautions.stream().distinct().toList();
  }

  /** {@return how the metal kept was added up from the tines} */
  @Override
  public Working working() {
    return Notes.taken("split into " + tines.size() + " tines", length.getUnit(), this::metal)
        .withSource(Source.computed("conservation of volume"))
        .withCautions(cautions());
  }

  private double metal(Notes n) {
    double total = 0;
    StringBuilder formula = new StringBuilder();
    for (int i = 0; i < tines.size(); i++) {
      String symbol = "v" + subscript(i + 1);
      double own = tines.get(i).metalKept().likely().in(volumeUnit());
      total += n.volume(symbol, "metal of the " + tines.get(i).name(), "", own);
      formula.append(i == 0 ? "" : " + ").append(symbol);
    }
    return n.volume("V", "metal kept", formula.toString(), total);
  }

  private Unit<Volume> volumeUnit() {
    return Slug.cubic(1, length.getUnit()).getUnit();
  }

  private static String subscript(int number) {
    StringBuilder digits = new StringBuilder();
    for (char digit : Integer.toString(number).toCharArray()) {
      digits.append((char) ('₀' + digit - '0'));
    }
    return digits.toString();
  }

  /** Length, tines and bar. */
  @Override
  public String toString() {
    return length
        + " split of "
        + cut.section()
        + " into "
        + sections.stream().map(s -> s.width().toString()).collect(Collectors.joining(", "));
  }
}
