package soundings.reference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.chemistry.Alias;
import soundings.chemistry.Names;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;

/** The three tables of words: what a parameter, a unit, a column's role and so on may be called. */
final class AliasRows {
    private final Map<String, Parameter> parameters;
    private final Map<String, List<Scale>> scalesById;

    AliasRows(Map<String, Parameter> parameters, List<Scale> scales) {
        this.parameters = parameters;
        this.scalesById = scales.stream().collect(Collectors.groupingBy(Scale::id));
    }

    List<Alias> aliases(BiFunction<String, List<String>, Table> table) {
        return Stream.of(
                        rows(table.apply("parameter-names.csv", List.of("means", "written_as")), this::parameterNames),
                        rows(
                                table.apply("unit-spellings.csv", List.of("means", "parameter", "written_as")),
                                this::units),
                        rows(table.apply("words.csv", List.of("kind", "means", "written_as")), AliasRows::words))
                .flatMap(List::stream)
                .toList();
    }

    private List<Alias> parameterNames(Row row) {
        String parameter = row.oneOf("means", parameters).id();
        return each(row, text -> new Alias(text, Alias.Kind.PARAMETER, parameter, ""));
    }

    private List<Alias> units(Row row) {
        String scope = row.textOrNone("parameter");
        boolean known = row.oneOf("means", scalesById).stream()
                .anyMatch(s -> scope.isEmpty() || s.parameter().id().equals(scope));
        if (!known) {
            throw row.broken(scope + " has no scale '" + row.text("means") + "'");
        }
        return each(row, text -> new Alias(text, Alias.Kind.UNIT, row.text("means"), scope));
    }

    private static List<Alias> words(Row row) {
        Alias.Kind kind = row.constant("kind", Alias.Kind.class);
        return each(row, text -> new Alias(text, kind, row.text("means"), ""));
    }

    private static List<Alias> each(Row row, Function<String, Alias> alias) {
        return row.words("written_as").stream()
                .map(Names::fold)
                .distinct()
                .map(alias)
                .toList();
    }

    /** A word has one meaning in its kind and scope: {@code Härte} and {@code HARTE} are the same word. */
    private static List<Alias> rows(Table table, Function<Row, List<Alias>> read) {
        List<Alias> all = new ArrayList<>();
        Map<String, String> meanings = new HashMap<>();
        for (Row row : table.rows()) {
            for (Alias alias : read.apply(row)) {
                String before = meanings.putIfAbsent(alias.kind() + alias.scope() + "\n" + alias.text(), alias.means());
                if (before != null) {
                    throw row.broken("'" + alias.text() + "' stands for " + before + " already");
                }
                all.add(alias);
            }
        }
        return all;
    }
}
