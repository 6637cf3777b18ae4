package soundings.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.log.AsWritten;
import soundings.log.DecimalMarkUnclear;
import soundings.log.Inferred;
import soundings.log.Issue;
import soundings.log.ProbablyMeant;
import soundings.log.Reading;
import soundings.log.UnitAssumed;
import soundings.log.UnitChanged;
import soundings.log.UnitUnclear;
import soundings.log.UnreadableAmount;
import soundings.quantity.Amount;
import soundings.sheet.CellRef;
import soundings.sheet.Region;

/** Settles the scale of a series of results, then turns each into a reading in the canonical unit or an issue. */
final class Settling {
    private final Series series;
    private final Reference reference;
    private final Scales scales;
    private final List<Reading> readings = new ArrayList<>();
    private final List<Issue> issues = new ArrayList<>();
    private final Map<String, Level> levels = new HashMap<>();

    private final OptionalDouble firstStep;

    private Settling(Series series, Reference reference, OptionalDouble firstStep) {
        this.series = series;
        this.firstStep = firstStep;
        this.reference = reference;
        this.scales = new Scales(reference, series.parameter());
    }

    record Settled(Series series, String unit, Set<Inferred> inferred, List<Reading> readings, List<Issue> issues) {}

    /** @param firstStep the least the kit can show, canonical unit; empty where the setup does not say */
    static Settled settle(Series series, Reference reference, OptionalDouble firstStep) {
        return new Settling(series, reference, firstStep).settle();
    }

    private Settled settle() {
        List<Raw> found =
                series.raws().stream().filter(r -> !r.amount().undetected()).toList();
        List<Raw> bare = found.stream().filter(r -> r.unit().isEmpty()).toList();
        Optional<Scale> said =
                series.unit().isEmpty() ? Optional.empty() : reference.findScale(series.parameter(), series.unit());
        Optional<Scale> scale = said.or(() -> bare.isEmpty() ? anyScale() : inferred(bare));
        Set<Inferred> how = said.isEmpty() && scale.isPresent() && !bare.isEmpty() ? Set.of(Inferred.UNIT) : Set.of();
        Map<Raw, Scale> changed = scale.map(s -> regimes(bare, s)).orElse(Map.of());
        found.forEach(raw -> one(raw, scale, said.isEmpty(), changed));
        Scale shown = scale.orElseGet(() -> reference.canonicalScale(series.parameter()));
        readings.addAll(Undetected.readings(series, shown, firstStep, List.copyOf(readings)));
        return new Settled(series, scale.map(Scale::label).orElse(series.unit()), how, readings, issues);
    }

    private Optional<Scale> anyScale() {
        return series.raws().stream()
                .flatMap(r -> reference.findScale(series.parameter(), r.unit()).stream())
                .findFirst();
    }

    private Optional<Scale> inferred(List<Raw> bare) {
        Scales.Choice choice = scales.byValue(bare);
        boolean only = scales.usual().size() == 1;
        AsWritten at = bare.get(0).at();
        String header = series.header().isEmpty() ? series.parameter().name() : series.header();
        if (choice.scale().isEmpty()) {
            issues.add(new UnitUnclear(at, around(bare), header, choice.candidates()));
        } else if (!only) {
            issues.add(new UnitAssumed(at, at(at), header, choice.scale().get().label()));
        }
        return choice.scale();
    }

    private static Region at(AsWritten at) {
        return new Region(at.cell(), at.cell());
    }

    private static Region around(List<Raw> raws) {
        List<CellRef> cells = raws.stream().map(r -> r.at().cell()).toList();
        int top = cells.stream().mapToInt(CellRef::row).min().orElse(0);
        int bottom = cells.stream().mapToInt(CellRef::row).max().orElse(0);
        int left = cells.stream().mapToInt(CellRef::column).min().orElse(0);
        int right = cells.stream().mapToInt(CellRef::column).max().orElse(0);
        return new Region(new CellRef(top, left), new CellRef(bottom, right));
    }

    /** The results that go on in another unit than the heading's, tank by tank, with that unit. */
    private Map<Raw, Scale> regimes(List<Raw> bare, Scale scale) {
        Map<String, List<Raw>> byTank = new LinkedHashMap<>();
        bare.forEach(r ->
                byTank.computeIfAbsent(r.place().tank(), t -> new ArrayList<>()).add(r));
        Map<Raw, Scale> changed = new IdentityHashMap<>();
        byTank.values().forEach(raws -> changes(raws, scale, changed));
        return changed;
    }

    private void changes(List<Raw> raws, Scale scale, Map<Raw, Scale> changed) {
        List<Double> figures =
                raws.stream().map(r -> r.amount().amount().about()).toList();
        List<Scale> each = Regimes.of(figures, scale, scales);
        for (int i = 0; i < raws.size(); i++) {
            Scale before = i == 0 ? scale : each.get(i - 1);
            if (!each.get(i).equals(before)) {
                issues.add(changeAt(raws, i, scale, each));
            }
            if (!each.get(i).equals(scale)) {
                changed.put(raws.get(i), each.get(i));
            }
        }
    }

    private Issue changeAt(List<Raw> raws, int from, Scale scale, List<Scale> each) {
        int to = from;
        while (to < raws.size() && each.get(to).equals(each.get(from))) {
            to++;
        }
        AsWritten at = raws.get(from).at();
        return new UnitChanged(
                at,
                around(raws.subList(from, to)),
                series.header(),
                scale.label(),
                each.get(from).label());
    }

    private void one(Raw raw, Optional<Scale> headed, boolean inferred, Map<Raw, Scale> changed) {
        Optional<Scale> own =
                raw.unit().isEmpty() ? Optional.empty() : reference.findScale(series.parameter(), raw.unit());
        if (!raw.unit().isEmpty() && own.isEmpty()) {
            issues.add(new UnreadableAmount(
                    raw.at(),
                    "\"" + raw.unit() + "\" is no unit of " + series.parameter().name()));
            return;
        }
        Scale other = changed.get(raw);
        boolean guessed = own.isEmpty() && (inferred || other != null);
        Optional<Scale> scale = own.or(() -> other == null ? headed : Optional.of(other));
        if (scale.isEmpty()) {
            unclear(raw);
        } else {
            read(guessed ? raw.inferring(Inferred.UNIT) : raw, scale.get());
        }
    }

    /** Kept with its place, on the parameter's own scale, and not to be used. */
    private void unclear(Raw raw) {
        Scale scale = reference.canonicalScale(series.parameter());
        String why = "its unit is not written and more than one fits";
        readings.add(raw.inferring(Inferred.UNIT).reading(raw.amount().amount().on(scale::canonical), scale, why));
    }

    private void read(Raw raw, Scale scale) {
        Optional<Amount> otherwise = raw.amount().otherwise();
        Amount amount = raw.amount().amount();
        if (otherwise.isEmpty() || (plausible(amount, scale) && !plausible(otherwise.get(), scale))) {
            add(raw, amount, scale);
        } else if (plausible(otherwise.get(), scale) && !plausible(amount, scale)) {
            add(raw.inferring(Inferred.DECIMAL_MARK), otherwise.get(), scale);
        } else {
            issues.add(new DecimalMarkUnclear(raw.at(), text(amount), text(otherwise.get())));
        }
    }

    private static String text(Amount amount) {
        return Double.toString(amount.about());
    }

    private boolean plausible(Amount amount, Scale scale) {
        return scales.typical().plausible(scale.canonical(amount.about()));
    }

    private void add(Raw raw, Amount amount, Scale scale) {
        double about = scale.canonical(amount.about());
        if (!Double.isFinite(about)) {
            issues.add(new UnreadableAmount(raw.at(), "no such value in " + scale.label()));
            return;
        }
        Level level = levels.computeIfAbsent(raw.place().tank(), t -> new Level(scales.typical()));
        String refused = raw.refused().isEmpty() ? level.refuses(about) : raw.refused();
        if (raw.refused().isEmpty() && !refused.isEmpty()) {
            Slips.meant(amount, scale, scales.typical())
                    .ifPresent(m -> issues.add(new ProbablyMeant(raw.at(), refused, m)));
        }
        readings.add(raw.reading(amount.on(scale::canonical), scale, refused));
    }
}
