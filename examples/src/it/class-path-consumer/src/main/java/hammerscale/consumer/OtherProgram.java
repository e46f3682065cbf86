package hammerscale.consumer;

/** A program of somebody's own, with bare numbers: what the checks of the jar are for. */
final class OtherProgram {
  private OtherProgram() {}

  /** The length of strap that a barrel uses up, in whatever unit the sizes are. */
  static double fullTurn(double bore, double thickness) {
    return Math.PI * (bore + thickness);
  }
}
