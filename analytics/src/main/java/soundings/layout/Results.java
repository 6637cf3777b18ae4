package soundings.layout;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.log.AsWritten;
import soundings.log.Inferred;
import soundings.log.NothingWritten;
import soundings.log.UnreadableAmount;
import soundings.quantity.Amount;
import soundings.setup.Setup;
import soundings.sheet.Cell;
import soundings.wording.AmountText;
import soundings.wording.Amounts;
import soundings.wording.DecimalMark;
import soundings.wording.TimedAmounts;
import soundings.wording.WrittenAmount;

/** Collects the results of a table's cells into series, one for each heading or named test, for their scale to be settled. */
final class Results {
    /** How many spreads from its middle a figure may lie that another one beside it bears out. */
    private static final double WIDE = 3;

    private final Context context;
    private final Area area;
    private final Ledger ledger;
    private final Map<String, Series> series = new LinkedHashMap<>();
    private final Map<String, WrittenAmount> last = new HashMap<>();

    Results(Context context, Area area, Ledger ledger) {
        this.context = context;
        this.area = area;
        this.ledger = ledger;
    }

    /** One test as its heading or row names it. */
    record Test(Parameter parameter, String header, String unit, String rowUnit) {
        String key() {
            return parameter.id() + "|" + header;
        }
    }

    Collection<Series> series() {
        return series.values();
    }

    void cell(Cell cell, Test test, Where where, DecimalMark mark) {
        List<TimedAmounts.Timed> timed = context.words().timed(cell, mark);
        if (timed.isEmpty()) {
            untimed(cell, test, where, mark);
        }
        timed.forEach(t -> amount(cell, test, t.time().map(where::at).orElse(where), t.amount()));
    }

    private void untimed(Cell cell, Test test, Where where, DecimalMark mark) {
        AmountText text = context.words().amount(cell, mark);
        String above = where.tank() + "|" + test.key();
        text.match(
                written -> counted(test, written.amount())
                        ? steps(cell, test, where, new AmountText.Steps(written.amount(), test.unit()))
                        : amount(cell, test, where, written.amount()),
                several -> several(cell, test, where, several.amounts()),
                steps -> steps(cell, test, where, steps),
                nothing -> nothing(cell, test, where, nothing, Optional.ofNullable(last.get(above))),
                unreadable -> unreadable(cell, unreadable.why()));
    }

    /** A bare number under a heading that counts a kit's steps. */
    private static boolean counted(Test test, WrittenAmount amount) {
        return amount.unit().isEmpty() && test.rowUnit().isEmpty() && Amounts.step(test.unit());
    }

    private boolean amount(Cell cell, Test test, Where where, WrittenAmount amount) {
        last.put(where.tank() + "|" + test.key(), amount);
        String unit = amount.unit().isEmpty() ? test.rowUnit() : amount.unit();
        Set<Inferred> inferred = new HashSet<>(where.inferred());
        add(
                test,
                new Raw(
                        new Raw.Place(where.tank(), where.date(), where.time(), where.row()),
                        test.parameter(),
                        amount,
                        unit,
                        where.method(),
                        amount.approximate(),
                        inferred,
                        refused(cell, where),
                        area.written(cell)));
        return true;
    }

    static String refused(Cell cell, Where where) {
        if (cell.look().struck()) {
            return "struck out";
        }
        return cell.look().hidden() ? "stands in a hidden row or column" : where.refused();
    }

    /** A result read from running text. */
    void phrase(Test test, Raw raw) {
        add(test, raw);
    }

    private void add(Test test, Raw raw) {
        series.computeIfAbsent(test.key(), k -> Series.of(test.parameter(), test.header(), test.unit()))
                .raws()
                .add(raw);
    }

    /** The same thing on two scales is one result; two figures on one scale are two, and which is meant is not said. */
    private boolean several(Cell cell, Test test, Where where, List<WrittenAmount> amounts) {
        Scales scales = new Scales(context.reference(), test.parameter());
        List<Double> meant = amounts.size() == 2
                ? meant(scales.read(amounts.get(0), WIDE), scales.read(amounts.get(1), WIDE))
                : List.of();
        if (meant.isEmpty() || !together(meant.get(0), meant.get(meant.size() - 1))) {
            return unreadable(cell, "more than one number stands here");
        }
        Scale scale = context.reference().canonicalScale(test.parameter());
        return amount(cell, test, where, as(new Amount.Exact(meant.get(0)), scale, amounts.get(0)));
    }

    /** What two figures mean where both mean the same: each on a scale of its own, or twice the same figure. Sorted. */
    private static List<Double> meant(List<Scales.OnScale> first, List<Scales.OnScale> second) {
        return second.stream()
                .filter(s -> first.stream()
                        .anyMatch(f -> f.canonical() == s.canonical()
                                || (!f.scale().equals(s.scale()) && together(f.canonical(), s.canonical()))))
                .map(Scales.OnScale::canonical)
                .sorted()
                .toList();
    }

    private static boolean together(double one, double other) {
        return Math.abs(one - other) <= 0.05 * Math.max(one, other);
    }

    /** A count of a kit's steps is a result where the setup says what a step is. */
    private boolean steps(Cell cell, Test test, Where where, AmountText.Steps steps) {
        Optional<Setup.Kit> kit = context.setup().kits().stream()
                .filter(k -> k.parameter().equals(test.parameter()) && k.step().isPresent())
                .findFirst();
        if (kit.isEmpty()) {
            return unreadable(
                    cell, "a count of " + steps.step() + "; what one is worth is not known (sheet Kits of the setup)");
        }
        double step = kit.get().step().orElse(0);
        Scale scale = context.reference().canonicalScale(test.parameter());
        Amount amount = steps.count().amount().on(n -> n * step);
        return amount(cell, test, where, as(amount, scale, steps.count()));
    }

    private static WrittenAmount as(Amount amount, Scale scale, WrittenAmount like) {
        return new WrittenAmount(
                amount, Optional.empty(), scale.id(), like.approximate(), false, "", "", like.figures());
    }

    private boolean nothing(
            Cell cell, Test test, Where where, AmountText.Nothing nothing, Optional<WrittenAmount> above) {
        if (nothing.ditto() && above.isPresent()) {
            return amount(cell, test, where, above.get());
        }
        ledger.issue(new NothingWritten(area.written(cell), nothing.word()));
        return true;
    }

    private boolean unreadable(Cell cell, String why) {
        AsWritten at = area.written(cell);
        ledger.issue(new UnreadableAmount(at, why));
        return true;
    }
}
