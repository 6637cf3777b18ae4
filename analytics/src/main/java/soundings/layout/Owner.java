package soundings.layout;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.wording.VolumeText;

/** The tank a table speaks of when its rows do not say: its title's, its sheet's, the only one there is, the file's name. */
final class Owner {
    /** Words of sheet names and titles that name no tank. */
    private static final Set<String> GENERAL = Set.of(
            "log",
            "logs",
            "logbook",
            "sheet",
            "test",
            "tests",
            "testing",
            "result",
            "results",
            "data",
            "water",
            "chemistry",
            "parameter",
            "parameters",
            "params",
            "record",
            "records",
            "reading",
            "readings",
            "all",
            "both",
            "every",
            "tank",
            "tanks",
            "aquarium",
            "aquariums",
            "journal",
            "diary",
            "notes",
            "note",
            "dosing",
            "doses",
            "dose",
            "dosage",
            "changes",
            "change",
            "and",
            "of",
            "the",
            "for",
            "my",
            "our",
            "lab",
            "laboratory",
            "laboratories",
            "overview",
            "daily",
            "weekly",
            "monthly",
            "month",
            "week",
            "beginning",
            "starting",
            "commencing",
            "ending",
            "year",
            "history",
            "analysis",
            "report",
            "sample",
            "samples",
            "sampled",
            "taken",
            "icp",
            "date",
            "table",
            "values",
            "measurements",
            "measurement",
            "quality",
            "wc",
            "wcs",
            "additives",
            "supplements",
            "main",
            "tabelle",
            "blad",
            "feuil",
            "feuille",
            "hoja",
            "foglio",
            "tabelle1",
            "werte",
            "messwerte",
            "protokoll",
            "wasserwerte",
            "wasser",
            "do",
            "not",
            "delete",
            "new",
            "old",
            "copy",
            "final",
            "from",
            "to",
            "per",
            "reef",
            "marine",
            "club",
            "calendar",
            "kalender");

    /** Words for what a sheet keeps of a tank. */
    private static final Set<String> KEPT = Set.of(
            "log",
            "logs",
            "logbook",
            "diary",
            "journal",
            "tests",
            "testing",
            "results",
            "readings",
            "records",
            "dosing",
            "doses");

    /** Words of sentences about a log, which names of tanks do without. */
    private static final Set<String> SENTENCE_WORDS = Set.of(
            "kept",
            "by",
            "is",
            "are",
            "was",
            "were",
            "be",
            "has",
            "have",
            "with",
            "without",
            "since",
            "please",
            "see",
            "this",
            "that",
            "these",
            "here",
            "written",
            "updated",
            "printed",
            "started",
            "made",
            "copied",
            "filled",
            "use",
            "used",
            "using",
            "only",
            "if",
            "when",
            "you",
            "your",
            "we",
            "i",
            "von",
            "par",
            "por",
            "door",
            "gefuhrt",
            "tenu",
            "bijgehouden",
            "responsible",
            "contact",
            "page",
            "version",
            "unless",
            "otherwise");

    private static final int LONGEST = 40;
    private static final int MOST_WORDS = 6;

    private final Tanks tanks;
    private final Words words;
    private final String file;
    private final int sheets;

    /** @param sheets how many sheets of the workbook hold a log */
    Owner(Tanks tanks, Words words, String file, int sheets) {
        this.tanks = tanks;
        this.words = words;
        this.file = file;
        this.sheets = sheets;
    }

    String of(Table table, boolean shared) {
        String sheet = table.area().sheet();
        return titled(table, shared)
                .or(() -> tanks.findKnown(sheet))
                .or(() -> tanks.findIn(sheet))
                .or(() -> sheets == 1 || general(sheet) ? only() : Optional.empty())
                .or(() -> general(sheet) || !nameLike(sheet) ? Optional.empty() : Optional.of(unlogged(sheet)))
                .or(this::only)
                .orElseGet(() -> stem(file));
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
        List<String> titles = table.titleTexts();
        Optional<String> known = Stream.iterate(titles.size() - 1, i -> i >= 0, i -> i - 1)
                .flatMap(i -> tanks.findIn(titles.get(i)).stream())
                .findFirst();
        return known.or(() -> Stream.iterate(titles.size() - 1, i -> i >= 0, i -> i - 1)
                .map(titles::get)
                .filter(t -> tanks.setUp().isEmpty() && nameLike(t))
                .filter(t -> shared || saysTank(t))
                .map(this::bare)
                .filter(t -> !t.isEmpty() && t.length() <= LONGEST)
                .findFirst());
    }

    /** Whether a table's owner is its sheet's name with a letter or sign changed. */
    boolean nearly(Table table, boolean shared) {
        String sheet = table.area().sheet();
        return titled(table, shared).isEmpty()
                && tanks.findNamed(sheet).isEmpty()
                && tanks.findKnown(sheet).isPresent();
    }

    /** A few words side by side; a text that says something about the sheet has a verb or another small word in it. */
    private static boolean nameLike(String text) {
        List<String> said = Stream.of(Names.fold(text).split("[^\\p{L}\\p{N}']+"))
                .filter(w -> !w.isEmpty())
                .toList();
        boolean sentence = text.strip().matches(".*[;!?].*|.*\\.\\s.*");
        return !sentence && said.size() <= MOST_WORDS && said.stream().noneMatch(SENTENCE_WORDS::contains);
    }

    private static boolean saysTank(String title) {
        String folded = Names.fold(title);
        return folded.contains("tank") || folded.contains("aquarium") || folded.contains("becken");
    }

    /** The title without its general words, months and years. */
    private String bare(String title) {
        return Stream.of(VolumeText.without(title).strip().split("[^\\p{L}\\p{N}']+"))
                .filter(w -> !says(w))
                .collect(Collectors.joining(" "));
    }

    /** {@code Reef log}, {@code Reef doses}: the sheet's name without the words for what is kept on it. */
    private static String unlogged(String sheet) {
        String name = Stream.of(sheet.strip().split("\\s+"))
                .filter(w -> !KEPT.contains(Names.fold(w)))
                .collect(Collectors.joining(" "));
        return name.chars().noneMatch(Character::isLetter) ? sheet.strip() : name;
    }

    private boolean general(String sheet) {
        boolean numbered = saysTank(sheet) && sheet.chars().anyMatch(Character::isDigit);
        boolean said = Stream.of(sheet.strip().split("[^\\p{L}]+")).allMatch(this::says);
        return (said && !numbered) || words.month(sheet).isPresent();
    }

    private boolean says(String word) {
        String folded = word.toLowerCase(Locale.ROOT);
        return folded.isEmpty()
                || GENERAL.contains(folded)
                || folded.chars().allMatch(Character::isDigit)
                || words.monthName(folded)
                || words.label(word).known();
    }

    static String stem(String file) {
        String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
