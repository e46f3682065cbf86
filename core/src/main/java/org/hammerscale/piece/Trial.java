package org.hammerscale.piece;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * What one finished piece took: how long it was cut, where its reference mark was punched, and how
 * much was cut off at each end, measured as the cut-off piece lies on the bench. What was cut off a
 * drawn-out tip is turned back into bar by the {@link TrialLog} that it is written into. Other
 * names: {@index "first trial"}, {@index "test piece"}.
 *
 * <pre>{@code
 * Trial.cut(inches("14 7/8")).marked(inches("2 3/8")).off(PieceEnd.LAST, inches("5/16"))   // cut 14 7/8 in, marked at 2 3/8 in; 5/16 in off at the last end
 * }</pre>
 */
public final class Trial {
  private record Off(Measure<Length> length, @Nullable Section section) {
    @Override
    public String toString() {
      return length + (section == null ? "" : " of " + section);
    }
  }

  private final Measure<Length> cut;
  private final @Nullable Measure<Length> reference;
  private final Map<PieceEnd, Off> offs;

  private Trial(Measure<Length> cut, @Nullable Measure<Length> reference, Map<PieceEnd, Off> offs) {
    this.cut = cut;
    this.reference = reference;
    this.offs = offs;
  }

  /**
   * A piece that was cut to a length.
   *
   * @param cutLength the length sawn off the bar, more than zero
   * @return the trial, nothing said yet of what was cut off it
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public static Trial cut(Quantity<Length> cutLength) {
    return new Trial(
        Arguments.positive("cutLength", cutLength), null, new EnumMap<>(PieceEnd.class));
  }

  /**
   * A piece that was cut and marked as planned.
   *
   * @param planned the bar on the bench
   * @return the trial, nothing said yet of what was cut off it
   */
  public static Trial of(MarkedBar planned) {
    Measure<Length> length = Objects.requireNonNull(planned, "planned").cutLength();
    return new Trial(length, planned.reference(), new EnumMap<>(PieceEnd.class));
  }

  /**
   * The same with its reference mark where it was punched. Needed if the piece has features on both
   * sides of it, since the bar is then shared between the two.
   *
   * @param fromFirstEnd how far from the first end of the cut bar, zero to the cut length
   * @return the trial
   * @throws IllegalArgumentException if it does not lie on the bar
   */
  public Trial marked(Quantity<Length> fromFirstEnd) {
    Measure<Length> mark = Arguments.notNegative("fromFirstEnd", fromFirstEnd);
    return new Trial(
        cut,
        Arguments.atMost("fromFirstEnd", mark, "the cut length", cut, "measure from the first end"),
        offs);
  }

  /**
   * The same with what was cut off at an end, in the section that the finished end has: what the
   * {@link Trim} of the plan foretells.
   *
   * @param end the end
   * @param length how long the cut-off piece is, zero if there was nothing to cut off
   * @return the trial
   * @throws IllegalArgumentException if the length is negative
   */
  public Trial off(PieceEnd end, Quantity<Length> length) {
    return off(end, new Off(Arguments.notNegative("length", length), null));
  }

  /**
   * The same with what was cut off at an end, in a section of its own.
   *
   * @param end the end
   * @param length how long the cut-off piece is, zero if there was nothing to cut off
   * @param section the section that it has
   * @return the trial
   * @throws IllegalArgumentException if the length is negative or the section has no area
   */
  public Trial off(PieceEnd end, Quantity<Length> length, Section section) {
    Measure<Length> measured = Arguments.notNegative("length", length);
    return off(end, new Off(measured, Section.requireArea("section", section)));
  }

  private Trial off(PieceEnd end, Off off) {
    Map<PieceEnd, Off> told = new EnumMap<>(offs);
    told.put(Objects.requireNonNull(end, "end"), off);
    return new Trial(cut, reference, told);
  }

  /** {@return the length that was sawn off the bar} */
  public Measure<Length> cutLength() {
    return cut;
  }

  /** {@return where its reference mark was punched, from the first end; empty if not told} */
  public Optional<Measure<Length>> reference() {
    return Optional.ofNullable(reference);
  }

  /**
   * What was cut off at an end.
   *
   * @param end the end
   * @return how long the cut-off piece was; empty if not told
   */
  public Optional<Measure<Length>> off(PieceEnd end) {
    return Optional.ofNullable(offs.get(Objects.requireNonNull(end, "end"))).map(Off::length);
  }

  /**
   * The section of what was cut off at an end.
   *
   * @param end the end
   * @return the section; empty if it is that of the finished end, or nothing was told
   */
  public Optional<Section> sectionOff(PieceEnd end) {
    return Optional.ofNullable(offs.get(Objects.requireNonNull(end, "end"))).map(Off::section);
  }

  /**
   * The bar that the features on one side of the reference mark took; empty if it is not told what
   * was cut off there.
   *
   * @throws IllegalArgumentException if it does not fit the piece
   */
  Optional<Measure<Length>> taken(PieceEnd end, Piece piece, Section section) {
    Off off = offs.get(end);
    if (off == null) {
      return Optional.empty();
    }
    Section bar = piece.bar().section();
    Section there = off.section == null ? section : off.section;
    Measure<Length> inBar = there.lengthAs(bar, off.length).to(bar.width().getUnit());
    Measure<Length> first = reference(piece).to(bar.width().getUnit());
    Measure<Length> side =
        end == PieceEnd.FIRST ? first : cut.to(bar.width().getUnit()).subtract(first);
    if (inBar.isGreaterThan(side)) {
      throw new IllegalArgumentException(
          "trial must have less cut off at the "
              + end
              + " than the "
              + side
              + " of bar on that side, was "
              + inBar
              + " of bar; write down how long the cut-off piece is, and its section");
    }
    return Optional.of(side.subtract(inBar));
  }

  private Measure<Length> reference(Piece piece) {
    int before = piece.featuresBeforeReference();
    if (before == 0) {
      return cut.withValue(0);
    } else if (before == piece.features().size()) {
      return cut;
    } else if (reference == null) {
      throw new IllegalArgumentException(
          "trial must tell where its reference mark was, was "
              + this
              + "; a single total cannot be shared out to the two sides of the mark, so give it"
              + " with marked(…)");
    }
    return reference;
  }

  /** Cut, mark and what was cut off. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("cut ").append(cut);
    if (reference != null) {
      text.append(", marked at ").append(reference);
    }
    offs.forEach((end, off) -> text.append("; ").append(off).append(" off at the ").append(end));
    return text.toString();
  }
}
