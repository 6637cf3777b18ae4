package soundings.layout;

import java.util.function.Predicate;

/** A way keepers lay out a log. {@code because} says by what it is known, for the keeper. */
record Layout(String name, Predicate<Shape> fits, String because) {}
