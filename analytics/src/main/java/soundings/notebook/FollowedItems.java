package soundings.notebook;

import java.util.List;
import soundings.advice.Followed;
import soundings.chemistry.Scale;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Row;
import soundings.quantity.Interval;

/** Last month's proposals: what was done about each, and what the water did. */
final class FollowedItems {
    private static final String FROM_THE_LOG =
            "Worked out from the log as it stood a month before, whether or not a report was made of it then.";

    private FollowedItems() {}

    static List<Item> followed(View view) {
        List<Column> columns = List.of(
                Column.words("Called for"),
                Column.words("Tank"),
                Column.words("Proposed"),
                Column.words("Dose since"),
                Column.words("Done?"),
                Column.words("Level then and now"),
                Column.words("Change a day then and now"));
        List<Row> rows =
                view.findings().followed().stream().map(f -> row(view, f)).toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(
                        new Prose(said(view), List.of()),
                        new Prose(List.of(CareBlocks.block(Prose.Kind.PARAGRAPH, FROM_THE_LOG)), List.of()),
                        new TableItem(
                                "followed",
                                "What the log called for a month before, and what became of it",
                                columns,
                                rows,
                                true,
                                List.of()));
    }

    private static List<Prose.Block> said(View view) {
        return view.findings().followed().stream()
                .map(f -> CareBlocks.block(Prose.Kind.BULLET, said(view, f)))
                .toList();
    }

    /** What was advised, what was done, and what the level did. */
    private static String said(View view, Followed f) {
        String tank = f.tank().isEmpty() ? "" : f.tank() + ": ";
        return tank + "the log up to " + Figures.day(f.advisedOn()) + " called for "
                + ml(f.proposedMlPerDay().mid()) + " of "
                + f.additive() + " a day in place of " + ml(f.presentMlPerDay()) + ". " + done(f) + ", and "
                + Sentences.lower(f.parameter().name()) + did(view.scale(f.tank(), f.parameter()), f) + ".";
    }

    private static String done(Followed f) {
        return switch (f.kept()) {
            case FOLLOWED -> "Followed: " + ml(f.sinceMlPerDay()) + on(f);
            case PARTLY -> "Followed in part: " + ml(f.sinceMlPerDay()) + on(f);
            case OTHERWISE -> "It was changed the other way, to " + ml(f.sinceMlPerDay()) + on(f);
            case NOT ->
                f.changedOn().isEmpty()
                        ? "The dose stayed as it was"
                        : "Not followed: the dose is " + ml(f.sinceMlPerDay()) + on(f);
        };
    }

    private static String on(Followed f) {
        return f.changedOn().map(d -> " since " + Figures.day(d)).orElse("");
    }

    private static String did(Scale scale, Followed f) {
        double level = scale.written(f.levelThen().mid());
        String then = Figures.number(level, scale.decimalsAt(level));
        return f.levelNow()
                .map(now -> {
                    boolean alike = now.mid() >= f.levelThen().low()
                            && now.mid() <= f.levelThen().high();
                    String way = alike
                            ? " hardly moved, from "
                            : now.mid() > f.levelThen().mid() ? " rose from " : " fell from ";
                    String end = Figures.number(scale.written(now.mid()), scale.decimalsAt(level));
                    return way + then + " to " + Figures.with(end, scale.label());
                })
                .orElse(" is not known now");
    }

    private static String ml(double ml) {
        return Figures.number(ml, Sentences.millilitres(ml)) + " mL";
    }

    private static Row row(View view, Followed f) {
        Scale scale = view.scale(f.tank(), f.parameter());
        double around = f.levelThen().mid();
        return new Row(
                List.of(
                        Cell.words(f.additive() + " for "
                                + Sentences.lower(f.parameter().name()) + ", " + Figures.day(f.advisedOn())),
                        Cell.words(view.tankIds().containsKey(f.tank()) ? View.name(view.tank(f.tank())) : f.tank()),
                        Cell.words("from " + Figures.number(f.presentMlPerDay(), 1) + " to "
                                + Figures.interval(f.proposedMlPerDay(), 1) + " mL a day"),
                        Cell.words(Figures.number(f.sinceMlPerDay(), 1) + " mL a day"
                                + f.changedOn()
                                        .map(d -> ", changed on " + Figures.day(d))
                                        .orElse(", unchanged")),
                        Cell.words(f.kept().words()),
                        Cell.words(Figures.with(
                                pair(
                                        scale.written(f.levelThen()),
                                        f.levelNow().map(scale::written),
                                        scale.decimalsAt(
                                                scale.written(f.levelThen().mid()))),
                                scale.label())),
                        Cell.words(Figures.with(
                                pair(
                                        scale.change(f.driftThen(), around),
                                        f.driftNow().map(d -> scale.change(d, around)),
                                        scale.decimals() + 1),
                                scale.label()))),
                List.of());
    }

    private static String pair(Interval then, java.util.Optional<Interval> now, int decimals) {
        return Figures.interval(then, decimals)
                + now.map(n -> ", now " + Figures.interval(n, decimals)).orElse(", now not known");
    }
}
