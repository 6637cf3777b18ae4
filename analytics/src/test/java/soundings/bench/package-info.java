/** Measurements of the estimates that take too long for the tests; each class has a main method and prints a table. */
package soundings.bench;
