package org.hammerscale.units;

import javax.measure.Quantity;

/**
 * Mass per volume, which JSR 385 has no type for. SI unit: kg/m³.
 *
 * <p>Source: ISO 80000-4, item 4-2 (from memory).
 */
public interface Density extends Quantity<Density> {}
