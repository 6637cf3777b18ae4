package soundings.layout;

import java.util.List;
import soundings.chemistry.Reference;
import soundings.log.Log;
import soundings.setup.Settings;
import soundings.setup.Setup;
import soundings.sheet.Book;

/** Every layout this program reads, and the way in: from a workbook's cells to what they say. */
public final class Layouts {
    /** The first that fits is the table's; all are read row by row in the same way. */
    static final List<Layout> ALL = List.of(
            new Layout("no log", s -> !s.dated(), "no column of dates"),
            new Layout(
                    "nothing to read",
                    s -> s.fields().stream().noneMatch(f -> f.role().gives()),
                    "no column that is understood"),
            new Layout(
                    "one result a row",
                    s -> s.has(Role.TEST) && s.has(Role.RESULT),
                    "a column names the test, another holds the result"),
            new Layout(
                    "tests down, dates across",
                    s -> s.table().area().turned() && s.has(Role.READING),
                    "dates stand side by side"),
            new Layout(
                    "month sheet",
                    s -> s.topic().month().isPresent() && s.has(Role.READING),
                    "the name or title is a month"),
            new Layout("tank column", s -> s.has(Role.TANK) && s.has(Role.READING), "a column names the tank"),
            new Layout("a row a day", s -> s.has(Role.READING), "a column of dates and a column a test"),
            new Layout("doses", s -> s.has(Role.DOSE), "a column of doses and no tests"),
            new Layout("water changes", s -> s.has(Role.WATER_CHANGE), "a column of water changes and no tests"),
            new Layout("diary", s -> s.has(Role.NOTE), "dates with text beside them"));

    private Layouts() {}

    static Layout of(Shape shape) {
        return ALL.stream().filter(l -> l.fits().test(shape)).findFirst().orElse(ALL.get(0));
    }

    /** Reads a whole workbook; never throws for what a keeper may have written. */
    public static Log interpret(Book book, Reference reference, Setup setup, Settings settings) {
        return Interpretation.of(book, reference, setup, settings);
    }
}
