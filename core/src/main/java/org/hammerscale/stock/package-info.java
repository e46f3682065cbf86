/**
 * The bar before it is worked: its section, its material, its mass, the sizes to choose from, and
 * the {@link org.hammerscale.stock.Feature} by which every worked stretch says how much of it it
 * uses.
 */
@NullMarked
package org.hammerscale.stock;

import org.jspecify.annotations.NullMarked;
