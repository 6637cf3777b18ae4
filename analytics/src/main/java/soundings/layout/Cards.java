package soundings.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Names;
import soundings.sheet.Cell;
import soundings.sheet.Value;

/**
 * Records one below the other, each a card of labels and values: {@code Tank | Lagoon}, {@code Date | 3 May}, {@code Alk | 8.2 | dKH}. A
 * card begins where the first label comes again; every card has one day and at least two tests.
 */
final class Cards {
    static final String BECAUSE = "cards of labels and values, one below the other";

    private static final int MOST_COLUMNS = 4;
    private static final int FEWEST = 2;
    private static final double MOST = 0.8;
    private static final double SOME = 0.15;

    private final Area area;
    private final Words words;
    private final int labels;

    private Cards(Area area, Words words, int labels) {
        this.area = area;
        this.words = words;
        this.labels = labels;
    }

    /** A table for each card, its titles the day and the tank; empty where the area holds no cards. */
    static List<Table> of(Area area, Words words) {
        List<Integer> columns = area.usedColumns();
        if (columns.size() < 2 || columns.size() > MOST_COLUMNS) {
            return List.of();
        }
        Cards cards = new Cards(area, words, columns.get(0));
        List<List<Line>> blocks = cards.blocks();
        List<List<Line>> whole = blocks.stream().filter(cards::card).toList();
        boolean most = whole.size() >= FEWEST && whole.size() >= MOST * blocks.size() && !cards.sideBySide(columns);
        return most ? whole.stream().map(cards::table).toList() : List.of();
    }

    /** Whether more than one column holds values, as where tanks stand side by side. */
    private boolean sideBySide(List<Integer> columns) {
        return columns.stream()
                        .skip(1)
                        .filter(c -> area.lines().stream()
                                        .flatMap(l -> l.at(c).stream())
                                        .filter(v -> words.kind(v) == Kind.NUMBER)
                                        .count()
                                >= SOME * area.lines().size())
                        .count()
                > 1;
    }

    /** From each line that begins as the first that begins so more than once; lines above stay out. */
    private List<List<Line>> blocks() {
        Map<String, Integer> times = new HashMap<>();
        area.lines().forEach(l -> label(l).ifPresent(t -> times.merge(t, 1, Integer::sum)));
        Optional<String> first = area.lines().stream()
                .flatMap(l -> label(l).stream())
                .filter(t -> times.getOrDefault(t, 0) >= FEWEST)
                .findFirst();
        List<List<Line>> blocks = new ArrayList<>();
        for (Line line : area.lines()) {
            if (first.isPresent() && label(line).equals(first)) {
                blocks.add(new ArrayList<>());
            }
            if (!blocks.isEmpty()) {
                blocks.get(blocks.size() - 1).add(line);
            }
        }
        return blocks;
    }

    private Optional<String> label(Line line) {
        return line.at(labels).filter(c -> c.value() instanceof Value.Text).map(c -> Names.fold(c.shown()));
    }

    private Role role(Line line) {
        return line.at(labels).map(c -> words.inCompany(c.shown()).role()).orElse(Role.UNKNOWN);
    }

    private boolean card(List<Line> block) {
        List<Line> dates = block.stream().filter(l -> role(l).dates()).toList();
        boolean oneDay = dates.size() == 1
                && dates.get(0).cells().stream()
                                .filter(c -> words.kind(c) == Kind.DATE)
                                .count()
                        == 1
                && dates.get(0).cells().size() == 2;
        return oneDay && block.stream().filter(l -> role(l) == Role.READING).count() >= 2;
    }

    private Table table(List<Line> block) {
        List<Line> titles = new ArrayList<>();
        List<Line> body = new ArrayList<>();
        List<Line> rest = new ArrayList<>();
        for (Line line : block) {
            Role role = role(line);
            boolean says = role.dates() || role == Role.TANK;
            boolean aside =
                    role == Role.IGNORED || role == Role.METHOD || line.cells().size() == 1;
            (says ? titles : aside ? rest : body).add(line);
        }
        return new Table(area, titles, List.of(), rest, body);
    }

    /** The columns of a card's table. */
    static List<Field> fields(Table table, Words words) {
        List<Integer> columns = table.usedColumns();
        List<Field> fields = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            Role role = i == 0
                    ? Role.TEST
                    : i == 1 ? Role.RESULT : units(table, columns.get(i), words) ? Role.UNIT : Role.NOTE;
            fields.add(new Field(columns.get(i), List.of(), "", Label.of(role, 0.9), Set.of(), BECAUSE));
        }
        return fields;
    }

    private static boolean units(Table table, int column, Words words) {
        List<Cell> cells =
                table.body().stream().flatMap(l -> l.at(column).stream()).toList();
        long units = cells.stream()
                .filter(c -> words.kind(c) == Kind.UNIT
                        || words.rated(c.shown())
                        || words.volume(c.shown()).isPresent())
                .count();
        return units * 2 >= cells.size();
    }
}
