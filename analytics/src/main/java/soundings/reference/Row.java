package soundings.reference;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** One line of a fact table. */
record Row(String file, long line, List<String> columns, List<String> fields) {
    String text(String column) {
        return fields.get(columns.indexOf(column));
    }

    /** A dash is nothing. */
    String textOrNone(String column) {
        String text = text(column);
        return text.equals("-") ? "" : text;
    }

    double number(String column) {
        return reading(column, "a number with a decimal point", Double::valueOf);
    }

    int count(String column) {
        return reading(column, "a whole number", Integer::valueOf);
    }

    boolean yes(String column) {
        return oneOf(column, Map.of("yes", true, "no", false));
    }

    <E extends Enum<E>> E constant(String column, Class<E> type) {
        return oneOf(
                column,
                Arrays.stream(type.getEnumConstants()).collect(Collectors.toMap(Enum::name, Function.identity())));
    }

    /** Looked up; the message names the valid words. */
    <T> T oneOf(String column, Map<String, T> known) {
        T value = known.get(text(column));
        if (value == null) {
            throw broken("'" + column + "' is '" + text(column) + "'; known are "
                    + known.keySet().stream().sorted().collect(Collectors.joining(", ")));
        }
        return value;
    }

    <T> T reading(String column, String expected, Function<String, T> read) {
        try {
            return read.apply(text(column));
        } catch (IllegalArgumentException e) {
            throw broken(
                    "'" + column + "' should be " + expected + ", not '" + text(column) + "' (" + e.getMessage() + ")");
        }
    }

    /** Several words in a cell, {@code ;} between. */
    List<String> words(String column) {
        return Arrays.stream(text(column).split(";"))
                .map(String::strip)
                .filter(w -> !w.isEmpty())
                .toList();
    }

    List<String> wordsOrNone(String column) {
        return text(column).equals("-") ? List.of() : words(column);
    }

    BrokenTable broken(String message) {
        return new BrokenTable(file, line, message);
    }
}
