package org.hammerscale.drawing;

/** A word or a size that belongs to a place: where its line begins, and what it says. */
record Callout(double x, double y, String text) {}
