package soundings.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.log.AsWritten;
import soundings.log.DoseRate;
import soundings.log.Log;
import soundings.log.LogEntry;
import soundings.log.OneOffDose;
import soundings.log.Reading;
import soundings.log.Remark;
import soundings.log.WaterChange;
import soundings.quantity.Amount;
import soundings.setup.Settings;
import soundings.setup.Setup;
import soundings.sheet.CellRef;

/** Builds a log entry by entry, a row a call, for tests. */
public final class WrittenLog {
    public static final LocalDate FIRST = LocalDate.of(2026, 3, 1);

    private final Reference reference;
    private final List<LogEntry> entries = new ArrayList<>();
    private String tank = "Cube";
    private String sheet = "Log";
    private int row = 1;

    public WrittenLog(Reference reference) {
        this.reference = reference;
    }

    public WrittenLog tank(String name) {
        tank = name;
        return this;
    }

    public WrittenLog sheet(String name) {
        sheet = name;
        return this;
    }

    /** Results of one test, {@code every} days apart from day {@code from} on, a row each. */
    public WrittenLog readings(Parameter parameter, int from, int every, double... values) {
        for (int i = 0; i < values.length; i++) {
            reading(parameter, from + i * every, values[i]);
        }
        return this;
    }

    public WrittenLog reading(Parameter parameter, int day, double value) {
        return reading(parameter, day, new Amount.Exact(value), "");
    }

    public WrittenLog reading(Parameter parameter, int day, Amount amount, String refused) {
        entries.add(new Reading(
                tank,
                FIRST.plusDays(day),
                Optional.empty(),
                parameter,
                amount,
                reference.canonicalScale(parameter),
                Set.of(),
                "",
                false,
                refused,
                at(1 + reference.parameters().indexOf(parameter), String.valueOf(amount.about()))));
        row++;
        return this;
    }

    /** The next entry stands in the same row as the last one. */
    public WrittenLog beside() {
        row--;
        return this;
    }

    public WrittenLog rate(String additive, int day, double mlPerDay) {
        return rate(additive, day, mlPerDay, mlPerDay + " ml/d");
    }

    /** @param text all that its cell says */
    public WrittenLog rate(String additive, int day, double mlPerDay, String text) {
        entries.add(new DoseRate(tank, FIRST.plusDays(day), additive, mlPerDay, at(80, text)));
        row++;
        return this;
    }

    public WrittenLog oneOff(String additive, int day, double ml) {
        entries.add(new OneOffDose(tank, FIRST.plusDays(day), additive, ml, at(81, "+" + ml + " ml")));
        row++;
        return this;
    }

    public WrittenLog change(int day, double fraction) {
        entries.add(new WaterChange(
                tank, FIRST.plusDays(day), OptionalDouble.of(fraction), OptionalDouble.empty(), at(82, fraction + "")));
        row++;
        return this;
    }

    public WrittenLog changeLitres(int day, double litres) {
        entries.add(new WaterChange(
                tank, FIRST.plusDays(day), OptionalDouble.empty(), OptionalDouble.of(litres), at(82, litres + " L")));
        row++;
        return this;
    }

    /** A note of one clause, with the kind of event it tells of. */
    public WrittenLog note(String kind, int day, String text) {
        entries.add(new Remark(tank, FIRST.plusDays(day), kind, text, at(83, text)));
        row++;
        return this;
    }

    private AsWritten at(int column, String text) {
        return new AsWritten(sheet, new CellRef(row, column), text);
    }

    public Log log() {
        List<String> tanks = entries.stream().map(LogEntry::tank).distinct().toList();
        return new Log(tanks, entries, List.of(), List.of(), List.of());
    }

    public Log shuffled(long seed) {
        List<LogEntry> other = new ArrayList<>(entries);
        Collections.shuffle(other, new Random(seed));
        return new Log(log().tanks(), other, List.of(), List.of(), List.of());
    }

    /** The history of the same entries met in another order. */
    public History historyShuffled(Setup setup, long seed) {
        return Histories.of(shuffled(seed), setup, reference, new Settings(FIRST.plusDays(400), Optional.empty()));
    }

    public History history(Setup setup) {
        return Histories.of(log(), setup, reference, new Settings(FIRST.plusDays(400), Optional.empty()));
    }
}
