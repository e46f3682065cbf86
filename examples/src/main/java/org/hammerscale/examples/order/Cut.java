package org.hammerscale.examples.order;

import javax.measure.quantity.Length;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;

/**
 * Pieces to cut, all alike.
 *
 * @param bar what they are cut from
 * @param name what they are
 * @param length of each
 * @param count how many
 * @param kerf what the saw takes for each
 * @param rule what their marks are chalked by
 */
public record Cut(
    Bar bar,
    String name,
    Measure<Length> length,
    int count,
    Measure<Length> kerf,
    Graduation<Length> rule) {}
