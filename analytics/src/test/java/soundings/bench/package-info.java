/**
 * Measurements of the estimates that take too long for the tests; each class has a main method and prints a table. From the
 * project's root, after {@code mvn -Dquick test-compile}:
 *
 * <pre>
 * mvn -q -Dquick -pl analytics exec:java -Dexec.classpathScope=test -Dexec.mainClass=soundings.bench.EstimateBench -Dexec.args="250 1"
 * mvn -q -Dquick -pl analytics exec:java -Dexec.classpathScope=test -Dexec.mainClass=soundings.bench.EstimateTiming
 * mvn -q -Dquick -pl analytics exec:java -Dexec.classpathScope=test -Dexec.mainClass=soundings.bench.CorpusBench -Dexec.args="FOLDER"
 * mvn -q -Dquick -pl analytics exec:java -Dexec.classpathScope=test -Dexec.mainClass=soundings.bench.TypicalLog -Dexec.args="FILE.xlsx"
 * </pre>
 */
package soundings.bench;
