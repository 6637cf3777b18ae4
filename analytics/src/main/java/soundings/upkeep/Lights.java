package soundings.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.chemistry.Alias;
import soundings.chemistry.Names;
import soundings.chemistry.Reference;
import soundings.history.History;
import soundings.log.AsWritten;
import soundings.log.BlockReading;
import soundings.log.ColumnReading;
import soundings.log.Log;
import soundings.log.LogEntry;
import soundings.log.Reading;
import soundings.setup.OtherSheet;

/** PAR readings sorted by the place they were taken at: the word in a column's heading, in the note, or in the setup workbook. */
final class Lights {
    private static final String PAR = "par";
    private static final Pattern NOTE = Pattern.compile("(?iu)\\b(?:par|ppfd)\\b[\\s:=]*(.*)", Pattern.DOTALL);
    private static final Pattern CLAUSES = Pattern.compile("[,;|\\n]|\\.(?!\\d)|\\band\\b|\\bund\\b|\\bet\\b|\\s/\\s");
    private static final Pattern ASIDE = Pattern.compile("\\([^()]*\\)");
    private static final Pattern NUMBER = Pattern.compile("[1-9]\\d{0,3}");

    /** Words that may stand beside a number and a place. */
    private static final Set<String> IN_BETWEEN =
            Set.of("on", "the", "at", "in", "is", "of", "umol", "umol/m2/s", "m2", "s", "par", "ppfd");

    private final History history;
    private final Lexicon places;
    private final List<Row> stated;
    private final Map<List<String>, List<Light.Measured>> found = new LinkedHashMap<>();
    private final Map<List<String>, String> names = new LinkedHashMap<>();

    private Lights(History history, Reference reference, List<Row> stated) {
        this.history = history;
        this.places = Lexicon.of(reference, Alias.Kind.PLACE, means -> false);
        this.stated = stated;
    }

    /** A row of the sheet Light; no tank: all tanks. */
    record Row(String tank, String place, OptionalDouble low, OptionalDouble high, OptionalDouble hours, String cell) {
        static Row of(OtherSheet.Line line) {
            return new Row(
                    line.text("Tank"),
                    line.text("Place"),
                    line.positive("PAR low"),
                    line.positive("PAR high"),
                    line.positive("Hours a day"),
                    line.place("Place"));
        }

        private Row in(String tank) {
            return new Row(tank, place, low, high, hours, cell);
        }
    }

    static List<Light> of(Log log, History history, List<Row> rows, Reference reference) {
        List<Row> stated = rows.stream()
                .map(r -> r.in(r.tank().isEmpty() ? "" : Jobs.tank(r.tank(), history)))
                .toList();
        Lights lights = new Lights(history, reference, stated);
        stated.forEach(s -> lights.places(s.tank(), s.place()));
        lights.read(log);
        return lights.found.keySet().stream().map(lights::light).toList();
    }

    private void read(Log log) {
        Set<AsWritten> notes = new HashSet<>();
        for (LogEntry entry : log.entries()) {
            boolean known = !entry.date().isAfter(history.asOf());
            Optional<Reading> reading = entry.match(
                    Optional::of,
                    d -> Optional.empty(),
                    o -> Optional.empty(),
                    w -> Optional.empty(),
                    m -> Optional.<Reading>empty());
            boolean words = entry.match(r -> isPar(r) && isNote(r), d -> false, o -> false, w -> false, m -> true);
            if (known && words && notes.add(entry.at())) {
                note(entry);
            } else if (known && !words) {
                reading.filter(Lights::isPar).filter(r -> r.refused().isEmpty()).ifPresent(r -> number(r, log));
            }
        }
    }

    private static boolean isPar(Reading reading) {
        return reading.parameter().id().equals(PAR);
    }

    private static boolean isNote(Reading reading) {
        return NOTE.matcher(reading.at().text()).find();
    }

    private void number(Reading reading, Log log) {
        OptionalDouble par = reading.amount()
                .match(
                        e -> OptionalDouble.of(e.value()),
                        b -> OptionalDouble.empty(),
                        a -> OptionalDouble.empty(),
                        b -> OptionalDouble.empty());
        String place = written(reading, log);
        par.ifPresent(value -> measured(reading.tank(), place, reading.date(), value, reading.at()));
    }

    /** A place of the setup workbook; else all that the column beside it says, or all that its heading says beyond light and units. */
    private String written(Reading reading, Log log) {
        String heading = heading(reading, log);
        return Stream.of(reading.method(), heading)
                .flatMap(words -> stated(reading.tank(), Lexicon.words(words)).stream())
                .findFirst()
                .or(() -> Optional.of(reading.method().strip()).filter(m -> !m.isEmpty()))
                .orElseGet(() -> beyondLight(heading));
    }

    private String beyondLight(String heading) {
        List<String> spoken = Lexicon.words(heading);
        return places.find(spoken).isEmpty()
                ? ""
                : spoken.stream().filter(w -> !IN_BETWEEN.contains(w)).collect(Collectors.joining(" "));
    }

    /** The heading of the column the reading stands in. */
    private static String heading(Reading reading, Log log) {
        String column = reading.at().cell().toString().replaceAll("\\d+", "");
        return log.blocks().stream()
                .filter(b -> b.sheet().equals(reading.at().sheet()))
                .map(BlockReading::columns)
                .flatMap(List::stream)
                .filter(c -> c.meaning().equals(PAR))
                .filter(c -> c.headerCell().replaceAll("\\d+", "").equals(column))
                .map(ColumnReading::header)
                .findFirst()
                .orElse("");
    }

    /** Every clause behind the word PAR that is a number and a place and nothing else; whatever says more may mean something else. */
    private void note(LogEntry entry) {
        Matcher note = NOTE.matcher(entry.at().text());
        if (note.find()) {
            CLAUSES.splitAsStream(ASIDE.matcher(note.group(1)).replaceAll(" "))
                    .forEach(clause -> clause(entry, clause));
        }
    }

    private void clause(LogEntry entry, String clause) {
        List<String> spoken = Lexicon.words(clause);
        List<String> numbers = spoken.stream().filter(NUMBER.asMatchPredicate()).toList();
        String place = place(entry.tank(), clause);
        List<String> known = Lexicon.words(place);
        boolean nothingElse =
                spoken.stream().allMatch(w -> numbers.contains(w) || known.contains(w) || IN_BETWEEN.contains(w));
        boolean otherUnit = clause.indexOf('%') >= 0 || clause.indexOf('\u00b0') >= 0;
        if (numbers.size() == 1 && nothingElse && !otherUnit && !place.isEmpty()) {
            measured(entry.tank(), place, entry.date(), Double.parseDouble(numbers.get(0)), entry.at());
        }
    }

    /** A place of the setup workbook named in the words, else the known words for places among them. */
    private String place(String tank, String words) {
        List<String> spoken = Lexicon.words(words);
        return stated(tank, spoken)
                .orElseGet(() -> String.join(
                        " ",
                        places.find(spoken).stream()
                                .map(h -> String.join(" ", spoken.subList(h.from(), h.to())))
                                .toList()));
    }

    private Optional<String> stated(String tank, List<String> spoken) {
        return stated.stream()
                .filter(s -> s.tank().isEmpty() || s.tank().equals(tank))
                .map(Row::place)
                .filter(p -> !Lexicon.words(p).isEmpty() && spoken.containsAll(Lexicon.words(p)))
                .max(Comparator.comparingInt(String::length));
    }

    private List<Light.Measured> places(String tank, String place) {
        List<String> key = List.of(tank, Names.fold(place));
        names.putIfAbsent(key, place);
        return found.computeIfAbsent(key, k -> new ArrayList<>());
    }

    private void measured(String tank, String place, LocalDate on, double par, AsWritten at) {
        places(Jobs.tank(tank, history), place).add(new Light.Measured(on, par, at.place()));
    }

    private Light light(List<String> key) {
        Optional<Row> row = stated.stream()
                .filter(s -> Names.fold(s.place()).equals(key.get(1)))
                .filter(s -> s.tank().equals(key.get(0)) || s.tank().isEmpty())
                .max(Comparator.comparing(s -> s.tank().length()));
        return new Light(
                key.get(0),
                names.getOrDefault(key, key.get(1)),
                found.getOrDefault(key, List.of()).stream()
                        .sorted(Comparator.comparing(Light.Measured::on))
                        .toList(),
                row.map(Row::low).orElse(OptionalDouble.empty()),
                row.map(Row::high).orElse(OptionalDouble.empty()),
                row.map(Row::hours).orElse(OptionalDouble.empty()),
                row.map(Row::cell));
    }
}
