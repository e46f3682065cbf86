// What if the notch were deeper, or the strap thicker? How far two leaves rolled to one face open, and what stops them.
Section strap(double thickness) {
  return Section.flat(millimetres(40), millimetres(thickness));
}
Swing swing(double thickness, Measure<Length> notch) {
  LeafProfile leaf = LeafProfile.tangent(Barrel.around(millimetres(12.5), strap(thickness))).reaching(millimetres(300));
  return Swing.of(leaf.notchedBehindPin(notch));
}
for (double thickness : new double[] {5, 6, 8}) {
  Measure<Length> least = Swing.of(LeafProfile.tangent(Barrel.around(millimetres(12.5), strap(thickness)))).barrelNotch();
  System.out.println(strap(thickness) + ", least notch " + least);
  for (double more : new double[] {0, 1, 2, 4, 8}) {
    Swing swing = swing(thickness, least.add(millimetres(more)));
    System.out.println("  " + millimetres(more) + " deeper: opens " + swing.opening() + " past flat, then the " + swing.contact());
  }
}
