package org.hammerscale.units;

import javax.measure.Quantity;

/**
 * Mass per length, as bar tables print it: lb/ft or kg/m. JSR 385 has no type for it.
 *
 * <p>Source: ISO 80000-4, item 4-6, "linear density" (from memory).
 */
public interface LinearDensity extends Quantity<LinearDensity> {}
