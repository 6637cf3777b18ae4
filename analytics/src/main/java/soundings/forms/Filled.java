package soundings.forms;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.chemistry.Names;

/**
 * A row of a form as the program would fill it in.
 *
 * @param cells texts by header
 * @param names what the row is told apart by; one that stands under any of these is there already
 */
record Filled(Map<String, String> cells, List<String> names) {
    Filled {
        cells = Map.copyOf(cells);
        names = List.copyOf(names);
    }

    static Filled of(Form form, Map<String, String> cells) {
        return new Filled(cells, List.of(name(form, cells)));
    }

    /** The names a row goes under: its key, the same with each of its other spellings, and its first field alone. */
    static List<String> namesIn(Form form, Map<String, String> cells) {
        String first = form.fields().get(0).header();
        Stream<String> others = Arrays.stream(
                        cells.getOrDefault("Written as", "").split(";"))
                .map(String::strip)
                .filter(s -> !s.isEmpty())
                .map(other -> name(form, Map.of(first, other)));
        Stream<String> any = Stream.of(name(form, Map.of(first, cells.getOrDefault(first, ""))));
        return Stream.of(Stream.of(name(form, cells)), others, any)
                .flatMap(s -> s)
                .filter(name -> !name.isBlank())
                .toList();
    }

    private static String name(Form form, Map<String, String> cells) {
        return form.keys().stream()
                .map(f -> part(f, cells.getOrDefault(f.header(), "")))
                .collect(Collectors.joining("\n"));
    }

    /** A table grows from one month to the next; where it begins tells which one it is. */
    private static String part(Field field, String text) {
        return Names.fold(field.header().equals("Block") ? text.replaceAll(":.*", "") : text);
    }
}
