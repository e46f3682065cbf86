// On the class path of the Java that builds, and of a Java 25 if one is at hand: beside this one, or where JAVA_25_HOME is.
def expected = ['2.3562 in', 'sent and read: 2.3562 in', 'Swing of hinges']
def printed = new File(basedir, 'target/printed.txt').readLines()
assert printed.containsAll(expected) : "the consumer printed $printed"

def report = new File(basedir, 'target/surefire-reports/TEST-hammerscale.consumer.OtherProgramTest.xml').text
def tests = (report =~ /tests="(\d+)"/)[0][1] as int
assert tests >= 5 : "$tests values of the jar were checked"

def isJava25 = { File home ->
  def release = new File(home, 'release')
  release.isFile() && release.text.contains('JAVA_VERSION="25')
}
def beside = new File(System.getProperty('java.home')).canonicalFile.parentFile.listFiles() as List
def named = System.getenv('JAVA_25_HOME')
def home = ((named ? [new File(named)] : []) + beside).find(isJava25)
if (home == null) {
  println 'no Java 25 at hand: not run on it'
  return
}
def run = { List<String> arguments ->
  def process = ([new File(home, 'bin/java').path] + arguments).execute(null, basedir)
  def out = new StringBuffer(), err = new StringBuffer()
  process.waitForProcessOutput(out, err)
  assert process.exitValue() == 0 : "on Java 25: $err"
  out.toString().readLines()
}
def jars = new File(basedir, 'target/lib').list().findAll { it.endsWith('.jar') }.collect { "target/lib/$it" }
def onClassPath = run(['-classpath', (['target/classes'] + jars).join(File.pathSeparator), 'hammerscale.consumer.Main'])
assert onClassPath == expected : "on Java 25 the consumer printed $onClassPath"

// The same jars as named modules, called from the class path.
def asModules = run(['--module-path', 'target/lib', '--add-modules', 'org.hammerscale.core',
    '-classpath', 'target/classes', 'hammerscale.consumer.Main'])
assert asModules == expected : "as modules on Java 25 the consumer printed $asModules"
println "run on ${home.name} too, on the class path and as modules"
