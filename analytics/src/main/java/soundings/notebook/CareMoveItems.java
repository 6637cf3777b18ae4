package soundings.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.care.Move;
import soundings.chemistry.Scale;
import soundings.log.Reading;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;

/** The two tanks of a move side by side. */
final class CareMoveItems {
    private CareMoveItems() {}

    static String id(Move move) {
        return "move-" + Ids.slug(move.from() + " " + move.to() + " " + move.on() + " " + move.place());
    }

    /** @throws IllegalArgumentException naming the moves */
    static List<Item> move(View view, String id) {
        List<Move> all = view.findings().care().moves();
        Move move = all.stream()
                .filter(m -> id(m).equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no move '" + id + "'; there are "
                        + String.join(", ", all.stream().map(CareMoveItems::id).toList())));
        return List.of(sides(view, move, id), said(move, move.on().isBefore(view.asOf())));
    }

    private static Item sides(View view, Move move, String id) {
        List<Column> columns = List.of(
                Column.words("Test"),
                Column.words(move.from()),
                new Column("Tested", "", Kind.DATE, 0),
                Column.words(move.to()),
                new Column("Tested", "", Kind.DATE, 0),
                Column.words("Difference"),
                Column.words("To move straight over"),
                Column.words("Take over it"));
        List<Row> rows = move.sides().stream()
                .map(side -> row(view.scale(move.to(), side.parameter()), side))
                .toList();
        return new TableItem(
                id + "-sides",
                "The two tanks side by side, as last tested by " + Figures.day(move.on()),
                columns,
                rows,
                false,
                List.of());
    }

    /** @param scale as the tank it goes to is tested, for both */
    private static Row row(Scale scale, Move.Side side) {
        double around = side.to().map(r -> r.amount().about()).orElse(0.0);
        String difference = side.difference().isPresent()
                ? Figures.with(
                        Figures.change(scale.change(side.difference().getAsDouble(), around), scale.decimals()),
                        scale.label())
                : "";
        double apart = scale.change(side.most(), around);
        String most = Figures.with("up to " + Figures.number(apart, scale.decimalsOf(apart)), scale.label());
        return new Row(
                List.of(
                        Cell.words(CareWords.heading(side.parameter())),
                        value(scale, side.from()),
                        day(side.from()),
                        value(scale, side.to()),
                        day(side.to()),
                        Cell.words(difference),
                        judged(side, most),
                        Cell.words(
                                side.standing() == Move.Standing.APART
                                                && side.hours().isPresent()
                                        ? Figures.number(side.hours().getAsDouble(), 1) + " h"
                                        : "")),
                Places.gathered(side.cells()));
    }

    private static Cell judged(Move.Side side, String most) {
        return switch (side.standing()) {
            case ALIKE -> new Cell.Words(most + ": yes", Tone.CALM, "");
            case APART -> new Cell.Words(most + ": no", Tone.ACT, "");
            case UNTESTED -> new Cell.Words("not tested in both", Tone.UNSURE, "");
            case STALE -> new Cell.Words("tested too long ago to say", Tone.UNSURE, "");
        };
    }

    private static Cell value(Scale scale, Optional<Reading> reading) {
        return Cell.words(reading.map(r -> Figures.amount(scale, r.amount())).orElse("not tested"));
    }

    private static Cell day(Optional<Reading> reading) {
        return reading.<Cell>map(r -> new Cell.Day(r.date())).orElse(Cell.NOTHING);
    }

    private static Item said(Move move, boolean past) {
        List<Prose.Block> blocks = new ArrayList<>();
        for (Move.Medicine medicine : move.medicines()) {
            String left = medicine.mgPerLitre().isPresent()
                    ? CareWords.mg(medicine.mgPerLitre().getAsDouble()) + " mg/L of " + medicine.name()
                            + (past ? " was in " : " is left in ")
                    : "It cannot be reckoned how much " + medicine.name() + (past ? " was in " : " is left in ");
            blocks.add(CareBlocks.block(
                    Prose.Kind.CAUTION,
                    left + medicine.tank() + (past ? " on " + Figures.day(move.on()) : "")
                            + ". Let none of that water into a tank with corals, snails and rock; ask a vet when the animal "
                            + "may move."));
        }
        blocks.add(CareBlocks.block(
                Prose.Kind.PARAGRAPH,
                "What may differ and how fast to bring an animal across is common practice without a source; every kind of animal bears "
                        + "less or more. Test both tanks on the day."));
        return new Prose(blocks, List.of());
    }
}
