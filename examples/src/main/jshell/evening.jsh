// An evening's questions: a strap for a walled-garden gate, from the bar in the rack to the screw holes.
Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL)
Section tip = Section.flat(inches("3/4"), inches("1/8"))

// How much bar does it take, and where does the centre punch go?
Barrel eye = Barrel.around(Bore.forPin(inches("1/2")).clearing(inches("1/64")), strap.section())
Taper taper = Taper.between(strap.section(), tip, inches(6))
Layout layout = Piece.of(strap, eye, Plain.of(strap.section(), inches(9)), taper).layout()
MarkedBar bar = layout.on(SIXTEENTH)
System.out.println("cut " + bar.cutLength() + ", enough 19 times in 20")
bar.marks().forEach(mark -> System.out.println("  " + mark))
System.out.println("it weighs " + layout.mass().to(ShopUnits.OUNCE))

// Which drift leaves room for the pin, if the barrel is trued at a bright red?
Drift drift = Drift.leaving(eye.insideDiameter(), Contraction.from(celsius(900), Material.MILD_STEEL))
System.out.println("drift " + drift.diameter() + " for a bore of " + eye.insideDiameter())

// How long is there to work, and in how many heats?
Cooling air = Cooling.from(celsius(1150), strap).to(celsius(800))
System.out.println("from 1150 to 800 °C in air: " + air.time())

// Where do three screws go, if the boards meet 8 in from the pin?
HoleRow row = HoleRow.along(inches(15)).holes(3).startingFrom(inches(2)).endingBefore(inches(1))
HoleLayout holes = row.missing(ClosedStretch.seamAt(inches(8)).wide(inches("1/4")).forHole(inches("1/4"))).layout()
System.out.println("holes at " + holes.on(SIXTEENTH).positions())

// And how was the length of the barrel found?
System.out.println(eye.closing().stripWorking())
