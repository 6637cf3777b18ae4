package soundings.notebook;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import soundings.upkeep.Light;
import soundings.upkeep.Light.Standing;

/** Light by place: PAR, the day's sum, and the range the keeper states in numbers. */
final class LightItems {
    private LightItems() {}

    /** The sentence to take away; empty where nothing is measured or stated. */
    static String finding(View view) {
        List<Light> lights = view.findings().upkeep().lights();
        List<String> off = lights.stream()
                .filter(l -> l.standing() == Standing.BELOW || l.standing() == Standing.ABOVE)
                .map(LightItems::words)
                .toList();
        if (lights.isEmpty()) {
            return "";
        }
        if (!off.isEmpty()) {
            return "Light is out of its range at " + Figures.count(off.size(), "place", "places") + ". "
                    + off.stream().map(w -> Figures.capital(w) + ".").collect(Collectors.joining(" "));
        }
        boolean judged = lights.stream().anyMatch(l -> l.standing() == Standing.WITHIN);
        return judged
                ? "Light is within its range wherever one is stated and it was measured."
                : "Light cannot be judged: state the range you want at each place in numbers, in the setup workbook, sheet Light.";
    }

    private static String words(Light light) {
        String limit = light.standing() == Standing.BELOW
                ? " where " + whole(light.low()) + " is the least"
                : " where " + whole(light.high()) + " is the most";
        String par = light.last().map(m -> Figures.number(m.par(), 0)).orElse("");
        String before = light.before()
                .map(m -> "; it was " + Figures.number(m.par(), 0) + " on " + Figures.day(m.on()))
                .orElse("");
        return place(light) + (light.tank().isEmpty() ? "" : " (" + light.tank() + ")") + ", "
                + Figures.with(par, "umol/m2/s") + limit + before;
    }

    private static String place(Light light) {
        return light.place().isEmpty() ? "a place that is not written" : light.place();
    }

    private static String whole(OptionalDouble par) {
        return par.isPresent() ? Figures.number(par.getAsDouble(), 0) : "";
    }

    static List<Item> light(View view) {
        List<Column> columns = List.of(
                Column.words("Place"),
                Column.words("Tank"),
                Column.words("Stands"),
                new Column("Measured on", "", Kind.DATE, 0),
                new Column("PAR", Figures.unit("umol/m2/s"), Kind.NUMBER, 0),
                new Column("Before", Figures.unit("umol/m2/s"), Kind.NUMBER, 0),
                Column.words("Wanted"),
                new Column("Lit a day", "h", Kind.NUMBER, 1),
                new Column("Light of a day", Figures.unit("mol/m2/d"), Kind.NUMBER, 1),
                Column.words("Wanted a day"),
                Column.words("Cell"));
        List<Row> rows =
                view.findings().upkeep().lights().stream().map(LightItems::row).toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        "light-by-place", "Light by place, the last reading", columns, rows, false, List.of()));
    }

    private static Row row(Light light) {
        return new Row(
                List.of(
                        Cell.words(place(light)),
                        Cell.words(light.tank()),
                        new Cell.Words(light.standing().words(), tone(light.standing()), ""),
                        light.last().<Cell>map(m -> new Cell.Day(m.on())).orElse(Cell.NOTHING),
                        light.last()
                                .<Cell>map(m -> new Cell.Number(m.par(), 0, ""))
                                .orElse(Cell.NOTHING),
                        light.before()
                                .<Cell>map(m -> new Cell.Number(m.par(), 0, ""))
                                .orElse(Cell.NOTHING),
                        Cell.words(span(light.low(), light.high(), 0)),
                        number(light.hours()),
                        number(light.perDay()),
                        Cell.words(span(light.perDayLow(), light.perDayHigh(), 1)),
                        Cell.words(String.join(", ", light.restsOn()))),
                light.restsOn());
    }

    private static Cell number(OptionalDouble value) {
        return value.isPresent() ? new Cell.Number(value.getAsDouble(), 1, "") : Cell.NOTHING;
    }

    private static String span(OptionalDouble low, OptionalDouble high, int decimals) {
        String from = low.isPresent() ? Figures.number(low.getAsDouble(), decimals) : "";
        String to = high.isPresent() ? Figures.number(high.getAsDouble(), decimals) : "";
        if (from.isEmpty() || to.isEmpty()) {
            return from.isEmpty() ? to.isEmpty() ? "" : "up to " + to : "from " + from;
        }
        return from + " to " + to;
    }

    private static Tone tone(Standing standing) {
        return switch (standing) {
            case BELOW, ABOVE -> Tone.WATCH;
            case WITHIN -> Tone.CALM;
            case NO_RANGE, NOT_MEASURED -> Tone.UNSURE;
        };
    }
}
