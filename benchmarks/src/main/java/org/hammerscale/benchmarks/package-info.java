/**
 * What unit safety costs, beside bare doubles and beside the reference implementation of JSR 385.
 */
package org.hammerscale.benchmarks;
