package soundings.layout;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The tank a table speaks of when its rows do not say: its title's, its sheet's, the only one there is, the file's name. */
final class Owner {
    private final Tanks tanks;
    private final TankTitles titles;
    private final String file;
    private final int sheets;
    private final boolean bare;
    /** The one tank that samples sent to a laboratory were of. */
    private final Optional<String> sampled;
    /** The one tank that the sheets without a log are about. */
    private final Optional<String> described;

    /** @param logs the tables of each sheet of the workbook */
    Owner(Tanks tanks, Words words, String file, Collection<List<Shape>> logs) {
        this.tanks = tanks;
        this.titles = new TankTitles(words);
        this.file = file;
        List<List<Shape>> dated = logs.stream().filter(Owner::holdsLog).toList();
        this.sheets = (int) dated.stream()
                .filter(own -> own.stream().anyMatch(s -> s.dated() && s.has(Role.READING)))
                .count();
        this.described = described(logs.stream().filter(l -> !holdsLog(l)).toList());
        this.sampled = described(dated.stream()
                .map(l -> l.stream().filter(s -> s.topic().laboratory()).toList())
                .toList());
        this.bare = dated.stream().allMatch(this::entitled)
                || dated.stream()
                                .flatMap(List::stream)
                                .flatMap(s -> named(s.table(), true).stream())
                                .map(Tanks::key)
                                .distinct()
                                .count()
                        == 1;
    }

    private Optional<String> described(List<List<Shape>> others) {
        Set<String> names = others.stream()
                .flatMap(List::stream)
                .flatMap(s -> titles.labelled(s.table().lines()).stream())
                .collect(Collectors.toSet());
        return names.stream().filter(n -> names.size() == 1).findFirst();
    }

    private static boolean holdsLog(List<Shape> sheet) {
        return sheet.stream()
                .anyMatch(s ->
                        s.dated() && s.fields().stream().anyMatch(f -> f.role().gives()));
    }

    /** Whether a sheet says in its title or by its name whose water it is about. */
    private boolean entitled(List<Shape> sheet) {
        return sheet.stream()
                .map(Shape::table)
                .anyMatch(t ->
                        named(t, true).isPresent() || !titles.general(t.area().sheet()));
    }

    /** The name in a table's titles, or behind a word for a tank among its headings. */
    private Optional<String> named(Table table, boolean bareToo) {
        return titles.name(table.titles(), bareToo).or(() -> titles.labelled(table.band()));
    }

    String of(Table table, boolean shared) {
        String sheet = table.area().sheet();
        return titled(table, shared)
                .or(() -> tanks.findKnown(sheet))
                .or(() -> tanks.findIn(sheet))
                .or(() -> sheets == 1 || titles.general(sheet) ? only() : Optional.empty())
                .or(() -> sampled(table))
                .or(() -> titles.general(sheet) || !titles.nameLike(sheet)
                        ? Optional.empty()
                        : Optional.of(titles.unlogged(sheet)))
                .or(this::only)
                .or(() -> described)
                .orElseGet(() -> stem(file));
    }

    private Optional<String> sampled(Table table) {
        return titles.general(table.area().sheet())
                        && tanks.setUp().isEmpty()
                        && tanks.all().isEmpty()
                ? sampled
                : Optional.empty();
    }

    /** The tank that a table without a log describes. */
    String described(Table table, boolean shared) {
        return titles.labelled(table.lines()).or(() -> described).orElseGet(() -> of(table, shared));
    }

    /** The names of the tanks whose results stand in tables of their own, with how many such tables. */
    Map<String, Integer> ofTables(Collection<List<Shape>> sheets) {
        Map<String, Integer> names = new HashMap<>();
        for (List<Shape> shapes : sheets) {
            shapes.stream()
                    .filter(s -> s.dated() && s.has(Role.READING) && !s.has(Role.TANK))
                    .forEach(s -> names.merge(of(s.table(), shapes.size() > 1), 1, Integer::sum));
        }
        return names;
    }

    private Optional<String> only() {
        List<String> setUp = tanks.setUp();
        List<String> all = setUp.isEmpty() ? tanks.all() : setUp;
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    /** @param shared whether the sheet holds other tables too, so that a bare title may well be a tank's name */
    private Optional<String> titled(Table table, boolean shared) {
        List<String> texts = table.titleTexts();
        Optional<String> known = Stream.iterate(texts.size() - 1, i -> i >= 0, i -> i - 1)
                .flatMap(i -> tanks.findIn(texts.get(i)).stream())
                .findFirst();
        String sheet = table.area().sheet();
        boolean own = shared || bare && titles.general(sheet);
        boolean says = !titles.general(sheet) && texts.stream().anyMatch(t -> Tanks.standsIn(sheet, t));
        if (known.isEmpty() && says) {
            return Optional.of(sheet.strip());
        }
        return known.or(() -> tanks.setUp().isEmpty() ? named(table, own) : Optional.empty())
                .map(name -> Tanks.key(name).equals(Tanks.key(sheet)) ? sheet.strip() : name);
    }

    /** Whether a table's owner is its sheet's name with a letter or sign changed, or told by laboratory sheets only. */
    boolean nearly(Table table, boolean shared) {
        String sheet = table.area().sheet();
        boolean changed =
                tanks.findNamed(sheet).isEmpty() && tanks.findKnown(sheet).isPresent();
        boolean told = titles.general(sheet)
                && tanks.setUp().isEmpty()
                && sampled.filter(of(table, shared)::equals).isPresent();
        return titled(table, shared).isEmpty() && (changed || told);
    }

    static String stem(String file) {
        String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
