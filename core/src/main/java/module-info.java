/** The calculations of hand-forged hardware. */
module org.hammerscale.core {
  requires transitive org.hammerscale.units;
  requires commons.math3;
  requires java.xml;
  requires static org.jspecify;

  exports org.hammerscale.bending;
  exports org.hammerscale.checking;
  exports org.hammerscale.cutting;
  exports org.hammerscale.drawing;
  exports org.hammerscale.fastening;
  exports org.hammerscale.forging;
  exports org.hammerscale.heat;
  exports org.hammerscale.hinge;
  exports org.hammerscale.holding;
  exports org.hammerscale.latch;
  exports org.hammerscale.piece;
  exports org.hammerscale.punching;
  exports org.hammerscale.scale;
  exports org.hammerscale.spacing;
  exports org.hammerscale.stock;
  exports org.hammerscale.strength;
  exports org.hammerscale.working;
}
