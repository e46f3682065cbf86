// A batch: the same strap from every bar that the merchant has, lightest first. What does each take, and what does it weigh?
List<Section> rack = new ArrayList<>()
for (double width : new double[] {25, 30, 40, 50}) {
  for (double thickness : new double[] {4, 5, 6, 8}) {
    rack.add(Section.flat(millimetres(width), millimetres(thickness)));
  }
}
record Row(Bar bar, Measure<Length> turn, Measure<Length> outside, Measure<Mass> mass) {}
Row row(Section section) {
  Bar bar = Bar.of(section, Material.MILD_STEEL);
  Barrel eye = Barrel.around(millimetres(12.5), section);
  Layout layout = Piece.of(bar, eye, Plain.of(section, millimetres(300))).layout();
  return new Row(bar, eye.developedLength(), eye.outsideDiameter(), layout.mass());
}
System.out.printf("%-22s %10s %10s %10s%n", "bar", "full turn", "outside", "mass")
rack.stream().map(section -> row(section)).sorted(Comparator.comparing(Row::mass)).forEach(r -> System.out.printf("%-22s %10s %10s %10s%n", r.bar().section(), r.turn(), r.outside(), r.mass()))
