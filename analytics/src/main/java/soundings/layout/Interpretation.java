package soundings.layout;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Reference;
import soundings.log.BlockReading;
import soundings.log.Issue;
import soundings.log.Log;
import soundings.log.LogEntry;
import soundings.setup.Settings;
import soundings.setup.Setup;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.Grid;
import soundings.sheet.Value;
import soundings.wording.Dates;
import soundings.wording.DecimalMark;
import soundings.wording.DecimalMarks;
import soundings.wording.Named;

/** Reads a workbook in two passes: first what its tables hold, then, with all dates and names known, what its cells say. */
final class Interpretation {
    private final Book book;
    private final Reference reference;
    private final Setup setup;
    private final Settings settings;
    private Words words;

    private Interpretation(Book book, Reference reference, Setup setup, Settings settings) {
        this.book = book;
        this.reference = reference;
        this.setup = setup;
        this.settings = settings;
        this.words = Words.of(reference, setup).withMonths(sheetMonths(book, settings));
    }

    /** Sheets named by a month alone get their year from their order. */
    private static Map<String, YearMonth> sheetMonths(Book book, Settings settings) {
        List<Optional<MonthYears.Named>> months = book.grids().stream()
                .map(g -> Dates.month(g.name()).map(m -> new MonthYears.Named(m.year(), m.month())))
                .toList();
        Map<String, YearMonth> byName = new HashMap<>();
        MonthYears.of(months, settings.today())
                .forEach((i, month) -> byName.put(book.grids().get(i).name(), month));
        return byName;
    }

    static Log of(Book book, Reference reference, Setup setup, Settings settings) {
        return new Interpretation(book, reference, setup, settings).log();
    }

    private Log log() {
        Tanks setUp = Tanks.of(setup);
        Map<Grid, List<Shape>> shapes = shapes(setUp);
        Tanks met = setUp.with(MetTanks.in(all(shapes)));
        if (headed(all(shapes), met)) {
            words = words.knowing(met);
            shapes = shapes(met);
        }
        List<Shape> all = all(shapes);
        ToldTanks told = ToldTanks.in(met.all().isEmpty() ? all : List.of(), words, mark());
        Context context = context(met.with(told.names()), dates(all));
        Owner owner = new Owner(context.tanks(), words, book.name(), shapes.values());
        Tanks named = context.tanks().with(owner.ofTables(shapes.values()));
        shapes.replaceAll((grid, own) ->
                own.stream().map(s -> Roles.tanksByValue(s, words, named)).toList());
        words.learn(
                MetAdditives.in(all, words, context.mark()),
                named.all().stream().map(t -> new Named(t, List.of())).toList());
        words.learn(ToldBucket.in(book, mark(), words.running()));
        List<SheetReading.Read> read = new ArrayList<>();
        Owner known = new Owner(named, words, book.name(), shapes.values());
        shapes.forEach((grid, own) -> read.add(SheetReading.read(context, grid, own, known)));
        return log(read, told);
    }

    private Map<Grid, List<Shape>> shapes(Tanks tanks) {
        Shapes finder = new Shapes(words, tanks, new Corrections(setup, reference, words));
        Map<Grid, List<Shape>> shapes = new LinkedHashMap<>();
        book.grids().forEach(grid -> shapes.put(grid, finder.of(grid)));
        return shapes;
    }

    private static List<Shape> all(Map<Grid, List<Shape>> shapes) {
        return shapes.values().stream().flatMap(List::stream).toList();
    }

    /** Whether a tank that only the log names stands in a heading that was read without knowing it. */
    private static boolean headed(List<Shape> shapes, Tanks met) {
        return shapes.stream()
                .flatMap(s -> s.fields().stream())
                .filter(f -> f.label().tank().isEmpty())
                .flatMap(f -> f.labels().stream())
                .anyMatch(c -> met.findIn(c.shown())
                        .filter(t -> !met.setUp().contains(t))
                        .isPresent());
    }

    private Context context(Tanks tanks, DateOrders orders) {
        return new Context(words, reference, setup, settings, tanks, orders, mark(), Epoch.shift(book));
    }

    private DateOrders dates(List<Shape> shapes) {
        long shift = Epoch.shift(book);
        List<DateColumn> columns =
                shapes.stream().map(s -> DateColumn.of(s, words, shift)).toList();
        return DateOrders.decide(columns, Context.preference(setup, "date order"), settings.today());
    }

    /** The decimal mark most of the workbook's texts show. */
    private DecimalMark mark() {
        DecimalMark told = Context.preference(setup, "decimal mark")
                .map(p ->
                        p.contains(",") || p.toLowerCase(java.util.Locale.ROOT).contains("comma")
                                ? DecimalMark.COMMA
                                : DecimalMark.POINT)
                .orElse(DecimalMark.UNDECIDED);
        return told != DecimalMark.UNDECIDED
                ? told
                : DecimalMarks.decide(amounts()).mark();
    }

    private List<String> amounts() {
        return book.grids().stream()
                .flatMap(g -> g.cells().stream())
                .filter(c -> c.value() instanceof Value.Text && words.kind(c) == Kind.NUMBER)
                .map(Cell::shown)
                .toList();
    }

    private Log log(List<SheetReading.Read> read, ToldTanks told) {
        List<LogEntry> entries = new ArrayList<>();
        List<BlockReading> blocks = new ArrayList<>();
        List<soundings.log.AsWritten> labels = new ArrayList<>();
        List<Issue> issues = new ArrayList<>();
        for (SheetReading.Read sheet : read) {
            entries.addAll(sheet.ledger().entries());
            labels.addAll(sheet.ledger().labels());
            issues.addAll(sheet.ledger().issues());
            blocks.addAll(sheet.blocks());
        }
        told.issue().ifPresent(issues::add);
        AllTanks.Shared shared = AllTanks.share(
                entries, setup.tanks().stream().map(Setup.Tank::name).toList());
        issues.addAll(shared.issues());
        AdditiveNames.Named named = AdditiveNames.of(shared.entries(), setup, words.running());
        issues.addAll(named.issues());
        Set<String> tanks = new LinkedHashSet<>();
        setup.tanks().forEach(t -> tanks.add(t.name()));
        shared.entries().forEach(e -> tanks.add(e.tank()));
        return new Log(List.copyOf(tanks), named.entries(), blocks, labels, issues);
    }
}
