package soundings.samples;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a sample workbook holds, as its generator knows it; one CSV line a fact. */
final class Truth {
    static final String HEAD = "kind,tank,date,what,limit,value,low,high,use,sheet,cell";
    private final List<String> lines = new ArrayList<>();

    void reading(String tank, LocalDate date, String parameter, double value, Place at) {
        lines.add(line("reading", tank, date, parameter, "exact", number(value), "", "", "used", at));
    }

    void below(String tank, LocalDate date, String parameter, double limit, Place at) {
        lines.add(line("reading", tank, date, parameter, "below", "", "", number(limit), "used", at));
    }

    void between(String tank, LocalDate date, String parameter, double low, double high, Place at) {
        lines.add(line("reading", tank, date, parameter, "between", "", number(low), number(high), "used", at));
    }

    /** A value mistyped on purpose: any fate but "used" is right. */
    void mistyped(String tank, LocalDate date, String parameter, Place at) {
        lines.add(line("reading", tank, date, parameter, "exact", "", "", "", "not used", at));
    }

    void dose(String tank, LocalDate from, String additive, double mlPerDay, Place at) {
        lines.add(line("dose", tank, from, additive, "", number(mlPerDay), "", "", "", at));
    }

    void change(String tank, LocalDate on, double fraction, Place at) {
        lines.add(line("waterChange", tank, on, "", "", number(fraction), "", "", "", at));
    }

    /** True daily use at the end, canonical unit. */
    void use(String tank, LocalDate asOf, String parameter, double perDay) {
        lines.add(line("use", tank, asOf, parameter, "", number(perDay), "", "", "", new Place("", "")));
    }

    /** Something of a new tank or a course of treatment that follows from what was written. */
    void care(String kind, String tank, LocalDate on, String what, double value) {
        lines.add(line(kind, tank, on, what, "", number(value), "", "", "", new Place("", "")));
    }

    List<String> lines() {
        return List.copyOf(lines);
    }

    record Place(String sheet, String cell) {}

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.6g", value);
    }

    private static String line(
            String kind,
            String tank,
            LocalDate date,
            String what,
            String limit,
            String value,
            String low,
            String high,
            String use,
            Place at) {
        return String.join(",", kind, tank, date.toString(), what, limit, value, low, high, use, at.sheet(), at.cell());
    }
}
