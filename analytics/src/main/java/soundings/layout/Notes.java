package soundings.layout;

import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Parameter;
import soundings.log.AsWritten;
import soundings.log.DoseRate;
import soundings.log.Issue;
import soundings.log.OneOffDose;
import soundings.log.ProbablyMeant;
import soundings.log.RateAssumed;
import soundings.log.Remark;
import soundings.log.UnreadText;
import soundings.sheet.Cell;
import soundings.wording.DoseSubject;
import soundings.wording.Lookalikes;
import soundings.wording.Phrase;
import soundings.wording.Phrases;
import soundings.wording.Said;
import soundings.wording.WrittenAmount;
import soundings.wording.WrittenDate;

/** Reads running text: results, doses, water changes and events in a note or a diary. */
final class Notes {
    /** A factor of 1.7, as a logarithm: less than from a day's dose to one of two a day. */
    private static final double LARGEST_CHANGE = 0.53;

    /** Of the dose before; a step beyond it may be the new setting itself. */
    private static final double LARGEST_STEP = 0.5;

    private final Context context;
    private final Area area;
    private final Ledger ledger;
    private final Results results;
    private final Doses doses;
    private final PresentDose present;
    private final DoseDoubts doubts;
    private String headed = "";

    Notes(Context context, Area area, Ledger ledger, Results results, Doses doses) {
        this.context = context;
        this.area = area;
        this.ledger = ledger;
        this.results = results;
        this.doses = doses;
        this.doubts = new DoseDoubts(ledger);
        this.present = new PresentDose(
                ledger, name -> DoseSubject.of(name, context.words().running()));
    }

    void read(Cell cell, Where where) {
        read(cell, cell.shown(), where);
    }

    /** A text under the heading of an additive: a dose in it needs no name. */
    void read(Cell cell, Where where, String additive) {
        headed = additive;
        read(cell, cell.shown(), where);
        headed = "";
    }

    /** @param text the part of the cell's text to read */
    void read(Cell cell, String text, Where where) {
        for (Phrase phrase : Phrases.read(text, context.mark(), context.words().running())) {
            Where there = where.in(phrase.tank());
            said(phrase.said(), there, cell);
        }
        ledger.label(area, cell);
    }

    /**
     * The note pinned to a cell: doses, changes and events. A result in it may be another reading of the cell's own, or an old one.
     *
     * @param changes whether changes of water stand nowhere else in the row
     */
    void pinned(Cell cell, Where where, boolean changes) {
        String text = cell.comment();
        AsWritten at = new AsWritten(area.written(cell).sheet(), area.place(cell), text);
        for (Phrase phrase : Phrases.read(text, context.mark(), context.words().running())) {
            Where there = where.in(phrase.tank());
            String written = text.substring(phrase.from(), phrase.to());
            phrase.said()
                    .match(
                            test -> remark(new Said.Remark("note", written), there, at),
                            rate -> rate(rate, there, at),
                            once -> once(once, there, at),
                            change -> changes
                                    ? change(change, there, at)
                                    : remark(new Said.Remark("waterChange", written), there, at),
                            remark -> remark(remark, there, at));
        }
    }

    private void said(Said said, Where where, Cell cell) {
        AsWritten at = area.written(cell);
        said.match(
                test -> result(test.parameter(), test.amount(), where, at),
                rate -> rate(rate, where, at),
                once -> once(once, where, at),
                change -> change(change, where, at),
                remark -> remark(remark, where, at));
    }

    private boolean result(Parameter parameter, WrittenAmount amount, Where where, AsWritten at) {
        Raw.Place place = new Raw.Place(where.tank(), where.date(), where.time(), where.row());
        Raw raw = new Raw(
                place,
                parameter,
                amount,
                amount.unit(),
                where.method(),
                amount.approximate(),
                new HashSet<>(where.inferred()),
                where.refused(),
                at);
        results.phrase(new Results.Test(parameter, "", "", ""), raw);
        return true;
    }

    private boolean rate(Said.Rate rate, Where where, AsWritten at) {
        LocalDate from = rate.from()
                .flatMap(d -> near(d, where.date()))
                .orElse(where.date().plusDays(rate.daysLater()));
        Optional<String> additive = named(rate.additive());
        if (rate.relative()) {
            return relative(rate, additive.orElse(""), where, from, at);
        }
        if (rate.assumed() && !goesOn(rate, additive.orElse(""), where)) {
            ledger.issue(new UnreadText(at, "a dose, how often is not written"));
            return true;
        }
        if (rate.told() == Said.Rate.Told.STILL && stands(rate, additive.orElse(""), where, from)) {
            return true;
        }
        additive.filter(a -> rate.assumed()).ifPresent(a -> ledger.issue(new RateAssumed(at, a)));
        additive.ifPresentOrElse(
                a -> ledger.entry(new DoseRate(where.tank(), from, a, rate.mlPerDay(), at)),
                () -> ledger.issue(new UnreadText(at, "a dose without the additive's name")));
        return true;
    }

    /**
     * Told by the dose before; what that is now is not known where none was written, or a later one was not understood. Where a dose
     * of the same day stands elsewhere, this only tells it once more.
     */
    private boolean relative(Said.Rate rate, String additive, Where where, LocalDate from, AsWritten at) {
        List<DoseRate> all = present.all(additive, where.tank()).stream()
                .filter(d -> !d.date().isAfter(from))
                .toList();
        List<DoseRate> before = all.stream()
                .filter(d -> d.date().isBefore(from) || d.at().cell().equals(at.cell()))
                .toList();
        String subject = DoseSubject.key(additive, context.words().running());
        Optional<DoseRate> basis = basis(rate, before).filter(d -> doubts.none(d, subject));
        Optional<Double> ml = rate.told() == Said.Rate.Told.EITHER && before.isEmpty()
                ? Optional.of(Math.abs(rate.mlPerDay()))
                : basis.flatMap(d -> turned(rate, d.mlPerDay()));
        Optional<DoseRate> sameDay =
                all.stream().filter(d -> !before.contains(d)).reduce((a, b) -> b);
        boolean differs = ml.isPresent()
                && sameDay.filter(d -> Math.abs(d.mlPerDay() - ml.get()) > 0.01 * ml.get())
                        .isPresent();
        if (ml.isEmpty() || differs) {
            doubts.add(where.tank(), Set.of(subject));
            ledger.issue(new UnreadText(at, "a dose told by the one before, which is not known for sure"));
        } else if (sameDay.isEmpty()) {
            String name = basis.map(DoseRate::additive).orElse(additive);
            ledger.entry(new DoseRate(where.tank(), from, name, Math.round(ml.get() * 1e6) / 1e6, at));
        }
        return true;
    }

    /** The dose that the new one is told by: the present one, or the last that ran before it ended. */
    private static Optional<DoseRate> basis(Said.Rate rate, List<DoseRate> before) {
        Optional<DoseRate> present = before.stream().reduce((a, b) -> b);
        boolean goesOn = rate.told() == Said.Rate.Told.TIMES && rate.mlPerDay() == 1
                || rate.told() == Said.Rate.Told.AGAIN
                        && present.filter(d -> d.mlPerDay() == 0).isPresent();
        return goesOn
                ? before.stream().filter(d -> d.mlPerDay() > 0).reduce((a, b) -> b)
                : present.filter(d -> d.mlPerDay() > 0 && rate.told() != Said.Rate.Told.AGAIN);
    }

    private static Optional<Double> turned(Said.Rate rate, double old) {
        return switch (rate.told()) {
            case STEP ->
                Math.abs(rate.mlPerDay()) <= LARGEST_STEP * old ? Optional.of(old + rate.mlPerDay()) : Optional.empty();
            case EITHER -> either(old, rate.mlPerDay());
            default -> Optional.of(old * rate.mlPerDay());
        };
    }

    /** The new dose where it lies on the side of the old one that was told; a step would be more than the whole, or half, of that. */
    private static Optional<Double> either(double old, double turned) {
        boolean fits = turned > 0 ? turned > old : -turned < old && -turned > LARGEST_STEP * old;
        return fits ? Optional.of(Math.abs(turned)) : Optional.empty();
    }

    /** Whether a setting is of the size of the day's dose before: a single dose of several a day is much smaller. */
    private boolean goesOn(Said.Rate rate, String additive, Where where) {
        List<Double> before = present.all(additive, where.tank()).stream()
                .map(DoseRate::mlPerDay)
                .filter(d -> d > 0)
                .toList();
        boolean again = before.stream().anyMatch(d -> Math.abs(d - rate.mlPerDay()) < 0.01 * d);
        return again
                || !before.isEmpty()
                        && Math.abs(Math.log(rate.mlPerDay() / before.get(before.size() - 1))) < LARGEST_CHANGE;
    }

    /** {@code alk still at 60 ml/day}, which is what it was: nothing new. */
    private boolean stands(Said.Rate rate, String additive, Where where, LocalDate from) {
        return present.of(additive, where.tank(), from)
                .filter(d -> Math.abs(d.mlPerDay() - rate.mlPerDay()) < 0.01 * rate.mlPerDay())
                .isPresent();
    }

    private Optional<String> named(String additive) {
        return Optional.of(additive.isEmpty() ? headed : additive).filter(a -> !a.isEmpty());
    }

    private boolean once(Said.OneOff once, Where where, AsWritten at) {
        Optional<String> additive = named(once.additive());
        additive.ifPresentOrElse(
                a -> ledger.entry(new OneOffDose(where.tank(), where.date(), a, once.ml(), at)),
                () -> ledger.issue(new UnreadText(at, "a dose without the additive's name")));
        return true;
    }

    private boolean change(Said.Change change, Where where, AsWritten at) {
        doses.change(change.amount(), change.unit(), where, at);
        return true;
    }

    private boolean remark(Said.Remark remark, Where where, AsWritten at) {
        boolean unread = remark.kind().equals("unread");
        if (unread) {
            doubts.add(
                    where.tank(),
                    DoseSubject.perhapsIn(
                            remark.text(), context.mark(), context.words().running()));
            String said = "\"" + remark.text() + "\"";
            ledger.issue(Lookalikes.corrected(remark.text())
                    .<Issue>map(meant -> new ProbablyMeant(at, "a letter stands among the figures of " + said, meant))
                    .orElseGet(() -> new UnreadText(at, said)));
        }
        ledger.entry(new Remark(where.tank(), where.date(), unread ? "note" : remark.kind(), remark.text(), at));
        return true;
    }

    /** A day named in a text, in the year that brings it nearest to the day of the text. */
    private Optional<LocalDate> near(WrittenDate written, LocalDate day) {
        if (written.readings().isEmpty() && written.weekday().isPresent()) {
            return written.weekday().map(w -> day.with(TemporalAdjusters.previous(w)));
        }
        Set<Integer> years = Set.of(day.getYear() - 1, day.getYear(), day.getYear() + 1);
        return context.orders()
                .order()
                .flatMap(written::in)
                .flatMap(d -> d.date()
                        .or(() -> years.stream()
                                .filter(y -> d.month() != 2 || d.day() < 29 || java.time.Year.isLeap(y))
                                .map(y -> LocalDate.of(y, d.month(), d.day()))
                                .min((a, b) -> Long.compare(apart(a, day), apart(b, day)))));
    }

    private static long apart(LocalDate one, LocalDate other) {
        return Math.abs(one.toEpochDay() - other.toEpochDay());
    }
}
