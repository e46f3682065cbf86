/**
 * Quantities, shop lengths, rulers and estimates: everything a length is before it becomes iron.
 */
module org.hammerscale.units {
  requires transitive java.measure;
  requires tech.units.indriya;
  requires commons.math3;
  requires static org.jspecify;

  exports org.hammerscale.units;
}
