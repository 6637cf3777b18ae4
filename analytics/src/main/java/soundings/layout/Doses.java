package soundings.layout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import soundings.log.AsWritten;
import soundings.log.DoseRate;
import soundings.log.NothingWritten;
import soundings.log.OneOffDose;
import soundings.log.UnreadableAmount;
import soundings.log.WaterChange;
import soundings.quantity.Amount;
import soundings.sheet.Cell;
import soundings.wording.Phrase;
import soundings.wording.Phrases;
import soundings.wording.VolumeUnit;
import soundings.wording.WrittenAmount;

/** Turns the cells of dose and water change columns into entries. */
final class Doses {
    private static final Pattern PRODUCT = Pattern.compile("(?iU)[\\d.,]+ ?(?:[x×*] ?[\\d.,]+ ?ml|ml ?[x×*] ?\\d+)");

    private final Context context;
    private final Area area;
    private final Ledger ledger;
    private final List<DoseRate> ends = new ArrayList<>();

    Doses(Context context, Area area, Ledger ledger) {
        this.context = context;
        this.area = area;
        this.ledger = ledger;
    }

    /** @return false when the cell holds no amount and its words may say more */
    boolean dose(Cell cell, Label label, String additive, Where where, Optional<Cell> until) {
        if (!label.oneOff() && !additive.isEmpty() && Phrases.stops(cell.shown())) {
            ledger.entry(new DoseRate(where.tank(), where.date(), additive, 0, area.written(cell)));
            return true;
        }
        return amount(cell)
                .map(a -> add(cell, label, additive, where, until, a))
                .orElseGet(() -> product(cell, label, additive, where));
    }

    /** {@code 3 x 2.5 ml} under a heading that says a day. */
    private boolean product(Cell cell, Label label, String additive, Where where) {
        if (label.mlPerDay() != 1
                || additive.isEmpty()
                || !PRODUCT.matcher(cell.shown()).matches()) {
            return false;
        }
        List<Phrase> phrases = Phrases.read(
                cell.shown() + " a day", context.mark(), context.words().running());
        return phrases.size() == 1
                && phrases.get(0)
                        .said()
                        .match(
                                test -> false,
                                rate -> {
                                    ledger.entry(new DoseRate(
                                            where.tank(), where.date(), additive, rate.mlPerDay(), area.written(cell)));
                                    return true;
                                },
                                once -> false,
                                change -> false,
                                remark -> false);
    }

    private boolean add(
            Cell cell, Label label, String additive, Where where, Optional<Cell> until, WrittenAmount amount) {
        Optional<Double> exact = exact(amount.amount());
        if (exact.isEmpty() || exact.get() < 0 || additive.isEmpty()) {
            String why = additive.isEmpty() ? "no additive is named" : "a dose is one number from zero up";
            ledger.issue(new UnreadableAmount(area.written(cell), why));
            return true;
        }
        AsWritten at = area.written(cell);
        double litres = unit(amount)
                .map(VolumeUnit::litres)
                .orElse(OptionalDouble.empty())
                .orElse(0.001);
        if (label.oneOff()) {
            double each = amount.unit().isEmpty() ? label.volume().litres().orElse(0.001) : litres;
            ledger.entry(new OneOffDose(where.tank(), where.date(), additive, exact.get() * each * 1000, at));
        } else {
            double factor = amount.unit().isEmpty() ? label.mlPerDay() : litres * 1000;
            if (Double.isNaN(factor)) {
                ledger.issue(new UnreadableAmount(at, "how much a day this is cannot be told"));
                return true;
            }
            ledger.entry(new DoseRate(where.tank(), where.date(), additive, exact.get() * factor, at));
            until.flatMap(this::day).ifPresent(d -> ends.add(stop(where, additive, d, until.get())));
        }
        return true;
    }

    private Optional<LocalDate> day(Cell cell) {
        return context.words()
                .date(cell)
                .flatMap(d -> context.orders().order().flatMap(d::in))
                .flatMap(d -> d.date());
    }

    private DoseRate stop(Where where, String additive, LocalDate lastDay, Cell cell) {
        return new DoseRate(where.tank(), lastDay.plusDays(1), additive, 0, area.written(cell));
    }

    /** The ends written beside rates, where no other rate of the additive follows on. */
    void close() {
        List<DoseRate> rates = ledger.entries().stream()
                .filter(DoseRate.class::isInstance)
                .map(DoseRate.class::cast)
                .toList();
        ends.stream()
                .filter(end -> rates.stream().noneMatch(r -> followsOn(r, end)))
                .forEach(ledger::entry);
    }

    private static boolean followsOn(DoseRate rate, DoseRate end) {
        boolean same = rate.tank().equals(end.tank()) && rate.additive().equals(end.additive());
        return same && Math.abs(rate.date().toEpochDay() - end.date().toEpochDay()) <= 1 && rate.mlPerDay() > 0;
    }

    /** @param unwritten what a number without a unit counts, from the heading or the column's other cells */
    boolean waterChange(Cell cell, VolumeUnit unwritten, Where where) {
        return waterChange(cell, unwritten, OptionalDouble.empty(), where);
    }

    /** @param tank litres of the whole, as the row itself tells */
    boolean waterChange(Cell cell, VolumeUnit unwritten, OptionalDouble tank, Where where) {
        return amount(cell).map(a -> change(cell, unwritten, tank, where, a)).orElse(false);
    }

    private boolean change(Cell cell, VolumeUnit unwritten, OptionalDouble tank, Where where, WrittenAmount amount) {
        boolean percentFormat =
                cell.look().format().endsWith("%") && amount.unit().isEmpty();
        VolumeUnit unit = unit(amount).orElse(unwritten);
        if (unit == VolumeUnit.PERCENT && !percentFormat && amount.unit().isEmpty() && fraction(amount.amount())) {
            ledger.issue(new UnreadableAmount(
                    area.written(cell), "a share of the whole or per cent? it can be meant as either"));
            return true;
        }
        Amount shown = percentFormat ? amount.amount().on(n -> n * 100) : amount.amount();
        change(shown, percentFormat ? VolumeUnit.PERCENT : unit, tank, where, area.written(cell));
        return true;
    }

    /** Nobody changes less than one per cent, and a share of the whole is less than one. */
    private static boolean fraction(Amount amount) {
        return exact(amount).filter(n -> n > 0 && n < 1).isPresent();
    }

    /** Water changed, in some unit; an issue where how much it was cannot be told. */
    void change(Amount amount, VolumeUnit unit, Where where, AsWritten at) {
        change(amount, unit, OptionalDouble.empty(), where, at);
    }

    private void change(Amount amount, VolumeUnit unit, OptionalDouble tank, Where where, AsWritten at) {
        double number = exact(amount).orElse(-1.0);
        boolean share = unit == VolumeUnit.PERCENT;
        OptionalDouble litres = share ? OptionalDouble.empty() : VolumeUnits.litres(unit, context);
        if (number == 0) {
            ledger.issue(new NothingWritten(at, at.text()));
        } else if (number < 0 || (share && number > 100) || (!share && litres.isEmpty())) {
            ledger.issue(new UnreadableAmount(at, "how much water was changed cannot be told"));
        } else {
            OptionalDouble volume = share ? OptionalDouble.empty() : OptionalDouble.of(number * litres.getAsDouble());
            OptionalDouble fraction = share
                    ? OptionalDouble.of(number / 100)
                    : tank.isPresent()
                            ? OptionalDouble.of(volume.getAsDouble() / tank.getAsDouble())
                            : OptionalDouble.empty();
            ledger.entry(new WaterChange(where.tank(), where.date(), fraction, volume, at));
        }
    }

    private Optional<WrittenAmount> amount(Cell cell) {
        return context.words()
                .amount(cell, context.mark())
                .match(
                        w -> Optional.of(w.amount()).filter(a -> a.note().isEmpty()),
                        s -> Optional.empty(),
                        s -> Optional.empty(),
                        n -> Optional.empty(),
                        u -> Optional.empty());
    }

    private Optional<VolumeUnit> unit(WrittenAmount amount) {
        return amount.unit().isEmpty() ? Optional.empty() : context.words().volume(amount.unit());
    }

    private static Optional<Double> exact(Amount amount) {
        return amount.match(
                e -> Optional.of(e.value()), b -> Optional.empty(), a -> Optional.empty(), b -> Optional.empty());
    }
}
