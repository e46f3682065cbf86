/** A program that uses Hammerscale as a named module. */
module hammerscale.consumer {
  requires org.hammerscale.core;
}
