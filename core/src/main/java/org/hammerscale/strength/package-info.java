/**
 * What iron bears: the loads of doors, gates and lids, and what pins, hooks, barrels and drilled
 * straps do under them.
 */
@NullMarked
package org.hammerscale.strength;

import org.jspecify.annotations.NullMarked;
