// The mean circumference of a half-inch bore in quarter-inch strap: pi times 3/4 inch.
def printed = new File(basedir, 'target/printed.txt').readLines()
assert '2.3562 in' in printed : "no line '2.3562 in' among what the consumer printed: $printed"
