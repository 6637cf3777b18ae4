package soundings.layout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import soundings.log.DerivedRow;
import soundings.log.Inferred;
import soundings.log.MistypedYear;
import soundings.log.NameMerged;
import soundings.log.NoDate;
import soundings.log.UnreadableDate;
import soundings.sheet.Cell;
import soundings.sheet.Region;
import soundings.sheet.Value;
import soundings.wording.DatesInText;
import soundings.wording.DecimalMark;
import soundings.wording.DecimalMarks;
import soundings.wording.MarkDecision;
import soundings.wording.VolumeUnit;

/** Walks the rows of one table and hands each cell to what its column holds. */
final class TableReading {
    private static final String WHOSE = "whose water it is cannot be told";

    private final Context context;
    private final Shape shape;
    private final Area area;
    private final Ledger ledger;
    private final RowTanks rowTanks;
    private final Results results;
    private final Doses doses;
    private final Notes notes;
    private final Changes changes;
    private final HeadedDays days;
    private final Optional<Field> unclear;
    private final Optional<Field> diary;
    /** The way of testing that a heading tells, by column, where another column holds the same test. */
    private final Map<Integer, String> twins;

    private final Map<Role, Optional<Field>> fields = new EnumMap<>(Role.class);
    private final Map<Integer, DecimalMark> marks = new HashMap<>();

    private TableReading(Context context, Shape shape, String tank, Ledger ledger) {
        this.context = context;
        this.shape = shape;
        this.area = shape.table().area();
        this.ledger = ledger;
        this.unclear = shape.findUnclearTanks();
        this.diary = shape.findDiary();
        this.twins = Twins.of(shape);
        this.rowTanks = RowTanks.of(shape, context, tank);
        this.results = new Results(context, area, ledger);
        this.doses = new Doses(context, area, ledger);
        this.notes = new Notes(context, area, ledger, results, doses);
        this.changes = new Changes(context, shape);
        this.days = HeadedDays.of(shape);
    }

    /** What a table's cells became, the results still in their series. */
    static List<Series> read(Context context, Shape shape, DateColumn dates, String tank, Ledger ledger) {
        TableReading reading = new TableReading(context, shape, tank, ledger);
        reading.read(dates);
        return List.copyOf(reading.results.series());
    }

    private void read(DateColumn dates) {
        ledger.labels(area, shape.table().titles());
        ledger.labels(area, shape.table().band());
        ledger.labels(area, shape.table().repeats());
        List<Row> rows = new ArrayList<>(Axis.rows(
                dates, context.words(), context.orders(), context.settings().today()));
        List<Optional<String>> derived = Derived.of(shape, rows, context.words());
        RowGroups groups = RowGroups.of(shape, rows, context);
        List<String> tanks = new ArrayList<>(rowTanks.of(rows, derived));
        for (int i = 0; i < rows.size(); i++) {
            int at = i;
            groups.tanks().get(i).ifPresent(g -> tanks.set(at, g));
        }
        rowTanks.merged(shape)
                .forEach(c ->
                        ledger.issue(new NameMerged(area.written(c), c.shown().strip(), rowTanks.name(c))));
        years(rows, tanks);
        Doubts.of(context, shape, ledger, rows);
        for (int i = 0; i < rows.size(); i++) {
            if (groups.heads().contains(i)
                    || shape.topic().banners().containsKey(rows.get(i).line().row())) {
                ledger.labels(area, List.of(rows.get(i).line()));
            } else if (derived.get(i).isPresent()) {
                derived(rows.get(i), derived.get(i).get());
            } else {
                row(rows.get(i), tanks.get(i));
            }
        }
        doses.close();
    }

    private void derived(Row row, String why) {
        List<Cell> cells = row.line().cells();
        Region region = area.around(List.of(row.line()));
        ledger.issue(new DerivedRow(area.written(cells.get(0)), region, why), area, cells);
    }

    /** Mistyped years are looked for tank by tank: each tank's rows may start again. */
    private void years(List<Row> rows, List<String> tanks) {
        Map<String, List<Integer>> byTank = new HashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            byTank.computeIfAbsent(tanks.get(i), t -> new ArrayList<>()).add(i);
        }
        byTank.values().forEach(indices -> {
            List<Row> own = indices.stream().map(rows::get).toList();
            MistypedYears.in(own).forEach(m -> mistyped(rows, indices.get(m.index()), m));
        });
    }

    private void mistyped(List<Row> rows, int index, MistypedYears.Mistyped found) {
        Row row = rows.get(index);
        rows.set(index, MistypedYears.corrected(row, found));
        shape.findDate()
                .flatMap(f -> row.line().at(f.column()))
                .ifPresent(c -> ledger.issue(new MistypedYear(area.written(c), found.written(), found.meant())));
    }

    private void row(Row row, String tank) {
        if (row.date().isEmpty()) {
            dateless(row);
            return;
        }
        String whose = unclear.isPresent() ? WHOSE : "no tank is written in this row";
        String told = shape.doubt().isEmpty() ? row.refused() : Doubts.TWO_WAYS;
        String refused = tank.isEmpty() || unclear.isPresent() ? whose : told;
        Set<Inferred> inferred = new HashSet<>(row.inferred());
        if (!shape.doubt().isEmpty() || shape.grid()) {
            inferred.add(Inferred.DATE);
        }
        if (rowTanks.carried(row.line()) || rowTanks.byNames()) {
            inferred.add(Inferred.TANK);
        }
        Where where =
                new Where(tank, row.date().get(), row.time(), row.line().row(), inferred, method(row.line()), refused);
        for (Field field : shape.fields()) {
            Optional<Cell> cell = row.line().at(field.column());
            Where here = where.in(RowTanks.headed(field, context));
            cell.ifPresent(c -> cell(field, c, row.line(), headed(field, when(row, field, c, here))));
        }
    }

    private static Where headed(Field field, Where where) {
        return HeadedTanks.unclear(field)
                ? where.refuse(WHOSE)
                : RowTanks.byNames(field) ? where.inferring(Inferred.TANK) : where;
    }

    private String method(Line line) {
        String told = text(Role.METHOD, line);
        return told.isEmpty() && shape.topic().laboratory() ? "laboratory" : told;
    }

    private String text(Role role, Line line) {
        return fields.computeIfAbsent(role, shape::find)
                .flatMap(f -> line.at(f.column()))
                .map(c -> c.shown().strip())
                .orElse("");
    }

    private void dateless(Row row) {
        List<Cell> cells = row.line().cells();
        Optional<Cell> date = shape.findDate().flatMap(f -> row.line().at(f.column()));
        Region region = area.around(List.of(row.line()));
        if (date.isPresent()) {
            ledger.issue(new UnreadableDate(area.written(date.get()), region, row.refused()), area, cells);
        } else {
            ledger.issue(new NoDate(area.written(cells.get(0)), region, "no row above to take it from"), area, cells);
        }
    }

    /** Tests and changes are of one day; which one of several is not said. A rate may well go on from the first. */
    private Where when(Row row, Field field, Cell cell, Where where) {
        if (days.tells(field)) {
            return days.in(field, cell, where);
        }
        Where here = days.in(field, cell, where.by(twins.getOrDefault(field.column(), "")));
        return row.several() && field.role() != Role.DOSE ? here.refuse(Doubts.SEVERAL) : here;
    }

    private void cell(Field field, Cell cell, Line line, Where where) {
        if (days.number(field, cell)) {
            ledger.label(area, cell);
            return;
        }
        switch (merged(field, cell) ? Role.NOTE : field.role()) {
            case READING -> result(cell, headed(field, line), field, where);
            case RESULT -> named(cell, line, field, where);
            case DOSE -> dose(cell, field, line, where);
            case WATER_CHANGE -> waterChange(cell, field, line, where);
            case NOTE -> note(field, cell, line, where);
            case DATE, FROM, MONTH, YEAR, TIME, TIMES, TANK, TEST, UNIT, ADDITIVE, METHOD, UNTIL ->
                ledger.label(area, cell);
            default -> {}
        }
        pinned(field, cell, where);
    }

    /** The note pinned to a cell; where the cell holds a dose or a change itself, the note only speaks of it. */
    private void pinned(Field field, Cell cell, Where where) {
        boolean tells = field.role() == Role.DOSE || field.role() == Role.WATER_CHANGE;
        if (!cell.comment().isBlank() && !tells && usable(cell, where)) {
            notes.pinned(cell, where, shape.find(Role.WATER_CHANGE).isEmpty());
        }
    }

    /** A text merged across several columns is about the row, not about their tests. */
    private boolean merged(Field field, Cell cell) {
        return field.role() == Role.READING
                && !context.words().kind(cell).data()
                && area.mergeAt(cell)
                        .filter(m -> m.last().column() > m.first().column())
                        .isPresent();
    }

    private void result(Cell cell, Results.Test test, Field field, Where where) {
        results.cell(cell, test, where, mark(field));
    }

    private Results.Test headed(Field field, Line line) {
        return new Results.Test(
                field.label().parameter().orElseThrow(),
                field.header(),
                field.label().unit(),
                text(Role.UNIT, line));
    }

    /** A result whose row names the test; a row may name a dose or a water change instead. */
    private void named(Cell cell, Line line, Field field, Where where) {
        String name = text(Role.TEST, line);
        String unit = text(Role.UNIT, line);
        Label label = context.words().inCompany(name);
        if (!name.isEmpty() && context.words().rated(unit)) {
            dosed(cell, context.words().additiveName(name), unit, where);
        } else if (!name.isEmpty()
                && (context.words().putIn(cell) || context.words().millilitres(unit))) {
            listed(cell, context.words().additiveName(name), where);
        } else if (label.parameter().isPresent()) {
            Results.Test test = new Results.Test(
                    label.parameter().get(),
                    name.isEmpty() ? field.header() : "",
                    label.unit(),
                    rowUnit(name, label, line));
            result(cell, test, field, where);
        } else if (label.role() == Role.DOSE && usable(cell, where)) {
            doses.dose(cell, label, label.name(), where, Optional.empty());
        } else if (label.role() == Role.WATER_CHANGE && usable(cell, where)) {
            doses.waterChange(cell, context.words().volume(unit).orElse(label.volume()), where);
        } else if (label.role() == Role.NOTE && usable(cell, where)) {
            notes.read(cell, where);
        }
    }

    private void dosed(Cell cell, String additive, String unit, Where where) {
        Label rate = Label.of(Role.DOSE, 0.9).withMlPerDay(context.words().mlPerDay(unit));
        if (usable(cell, where)) {
            doses.dose(cell, rate, additive, where, Optional.empty());
        }
    }

    /** A volume of something in a list of all sorts: put in once unless it says how often. */
    private void listed(Cell cell, String additive, Where where) {
        Label once = Label.of(Role.DOSE, 0.7).withMlPerDay(0);
        if (usable(cell, where) && !doses.dose(cell, once, additive, where, Optional.empty())) {
            notes.read(cell, where, additive);
        }
    }

    /** The row's unit, counted as the test's name says: {@code Phosphorus} in {@code µg/L} is µg/L of P. */
    private String rowUnit(String name, Label label, Line line) {
        String unit = text(Role.UNIT, line);
        Label both = context.words().inCompany(name + " " + unit);
        boolean same =
                both.parameter().equals(label.parameter()) && !both.unit().isEmpty();
        return unit.isEmpty() || !same ? unit : both.unit();
    }

    private void dose(Cell cell, Field field, Line line, Where where) {
        String named = text(Role.ADDITIVE, line);
        String additive = field.label().name().isEmpty()
                ? context.words().additiveName(named)
                : field.label().name();
        Optional<Cell> until = fields.computeIfAbsent(Role.UNTIL, shape::find).flatMap(f -> line.at(f.column()));
        if (usable(cell, where) && !doses.dose(cell, counted(field, line), additive, where, until)) {
            notes.read(cell, where, additive);
        }
    }

    /** A dose as the row counts it: in its unit, so many times a day. */
    private Label counted(Field field, Line line) {
        Label label = field.label();
        String unit = text(Role.UNIT, line);
        Label ofRow = unit.isEmpty() || label.oneOff()
                ? label
                : label.withMlPerDay(context.words().mlPerDay(unit));
        boolean rated = context.words().rated(field.header()) || context.words().rated(unit);
        Optional<Cell> times = fields.computeIfAbsent(Role.TIMES, shape::find).flatMap(f -> line.at(f.column()));
        return times.isEmpty() || rated || label.oneOff()
                ? ofRow
                : ofRow.withMlPerDay((Double.isNaN(ofRow.mlPerDay()) ? 1 : ofRow.mlPerDay())
                        * context.words().number(times.get()).orElse(Double.NaN));
    }

    private void waterChange(Cell cell, Field field, Line line, Where where) {
        String unit = text(Role.UNIT, line);
        VolumeUnit counted = unit.isEmpty()
                ? changes.unit(field)
                : context.words().volume(unit).orElse(VolumeUnit.UNWRITTEN);
        if (usable(cell, where) && !doses.waterChange(cell, counted, size(line), where)) {
            boolean amountFirst = !cell.shown().isBlank()
                    && !Character.isLetter(cell.shown().strip().charAt(0));
            notes.read(cell, (amountFirst ? "wc " : "") + cell.shown(), where);
        }
    }

    /** The litres of the whole tank, in a column of their own. */
    private OptionalDouble size(Line line) {
        return shape.fields().stream()
                .filter(f -> f.role() == Role.IGNORED && context.words().tankSize(f.header()))
                .filter(f -> context.words()
                        .volume(f.header())
                        .map(v -> v == VolumeUnit.LITRE)
                        .orElse(false))
                .flatMap(f -> line.at(f.column()).stream())
                .map(context.words()::number)
                .filter(n -> n.isPresent() && n.getAsDouble() > 0)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    private void note(Field field, Cell cell, Line line, Where where) {
        if (usable(cell, where)) {
            boolean amount = !cell.shown().isBlank()
                    && Character.isDigit(cell.shown().strip().charAt(0));
            if (amount && saysChange(line, cell)) {
                notes.read(cell, "wc " + cell.shown(), where);
                return;
            }
            notes.read(cell, diary.filter(field::equals).isPresent() ? behindDay(cell) : days.text(field, cell), where);
        }
    }

    /** Whether another cell of the row says, and says only, that water was changed. */
    private boolean saysChange(Line line, Cell amount) {
        return line.cells().stream()
                .filter(c -> !c.at().equals(amount.at()) && c.value() instanceof Value.Text)
                .anyMatch(c -> context.words().label(c).role() == Role.WATER_CHANGE);
    }

    private static String behindDay(Cell cell) {
        String text = cell.shown();
        return DatesInText.leading(text)
                .map(f -> text.substring(f.end()).replaceFirst("^[\\s:,;–—-]+", ""))
                .orElse(text);
    }

    /** Doses, changes and remarks of a row that is set aside are left to the issue that sets it aside. */
    private boolean usable(Cell cell, Where where) {
        return Results.refused(cell, where).isEmpty();
    }

    private DecimalMark mark(Field field) {
        return marks.computeIfAbsent(field.column(), c -> findMark(field));
    }

    private DecimalMark findMark(Field field) {
        List<String> texts = shape.column(field).cells().stream()
                .filter(c -> c.value() instanceof soundings.sheet.Value.Text)
                .map(Cell::shown)
                .toList();
        MarkDecision decision = DecimalMarks.decide(texts);
        return decision.mark() == DecimalMark.UNDECIDED ? context.mark() : decision.mark();
    }
}
