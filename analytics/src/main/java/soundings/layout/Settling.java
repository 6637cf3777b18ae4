package soundings.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
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
    /** As many results as tell a unit apart. */
    private static final int FIRST_FEW = 6;
    /** From so many spreads on a value is hardly any tank's. */
    private static final double FAR_SPREADS = 1.5;

    private final Series series;
    private final Reference reference;
    private final Scales scales;
    private final List<Reading> readings = new ArrayList<>();
    private final List<Issue> issues = new ArrayList<>();
    private final Map<String, Level> levels = new HashMap<>();

    /** Tanks whose results the scale of all the others cannot be meant for, while another would fit. */
    private final Set<String> odd = new HashSet<>();

    /** Results whose own figure tells the scale, where those of the series do not agree. */
    private final Map<Raw, Scale> alone = new IdentityHashMap<>();

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
        Map<String, Scale> starts = said.map(s -> everywhere(bare, s)).orElseGet(() -> inferred(bare));
        Optional<Scale> scale = said.or(
                () -> bare.isEmpty() ? anyScale() : starts.values().stream().findFirst());
        Set<Inferred> how = said.isEmpty() && scale.isPresent() && !bare.isEmpty() ? Set.of(Inferred.UNIT) : Set.of();
        Map<Raw, Scale> changed = scale.map(s -> regimes(bare, s, starts)).orElse(Map.of());
        found.forEach(raw -> one(raw, scale, said.isEmpty(), changed));
        Scale shown = scale.orElseGet(() -> reference.canonicalScale(series.parameter()));
        readings.addAll(Undetected.readings(series, shown, firstStep, List.copyOf(readings)));
        return new Settled(series, scale.map(Scale::label).orElse(series.unit()), how, readings, issues);
    }

    private static Map<String, List<Raw>> byTank(List<Raw> raws) {
        Map<String, List<Raw>> byTank = new LinkedHashMap<>();
        raws.forEach(r ->
                byTank.computeIfAbsent(r.place().tank(), t -> new ArrayList<>()).add(r));
        return byTank;
    }

    private static Map<String, Scale> everywhere(List<Raw> raws, Scale scale) {
        Map<String, Scale> all = new LinkedHashMap<>();
        byTank(raws).keySet().forEach(t -> all.put(t, scale));
        return all;
    }

    private Optional<Scale> anyScale() {
        return series.raws().stream()
                .flatMap(r -> reference.findScale(series.parameter(), r.unit()).stream())
                .findFirst();
    }

    /** The scale each tank's results begin with: one for all, else each tank's own; empty where any stays unclear. */
    private Map<String, Scale> inferred(List<Raw> bare) {
        if (bare.isEmpty()) {
            return Map.of();
        }
        Scales.Choice choice = scales.byValue(bare);
        Map<String, List<Raw>> byTank = byTank(bare);
        if (choice.scale().isPresent()) {
            assumed(bare, choice.scale().get());
            byTank.forEach((tank, raws) -> ask(tank, raws, choice.scale().get()));
            return everywhere(bare, choice.scale().get());
        }
        Map<String, Scale> own = new LinkedHashMap<>();
        byTank.forEach((tank, raws) -> began(raws).ifPresent(s -> own.put(tank, s)));
        if (own.size() < byTank.size() && figureByFigure(bare)) {
            assumed(bare, scales.usual().get(0));
            return everywhere(bare, scales.usual().get(0));
        }
        if (own.size() < byTank.size()) {
            issues.add(new UnitUnclear(bare.get(0).at(), around(bare), header(), choice.candidates()));
            return Map.of();
        }
        own.forEach((tank, scale) -> assumed(byTank.getOrDefault(tank, bare), scale));
        return own;
    }

    /** Where one tank's results lie far off on the scale of them all and not on another, neither is taken: which it is, is asked. */
    private void ask(String tank, List<Raw> raws, Scale all) {
        Optional<Scale> own = scales.byValue(raws)
                .scale()
                .filter(s -> !s.equals(all) && near(raws, Collections.nCopies(raws.size(), s)));
        if (own.isPresent() && raws.size() >= FIRST_FEW && far(raws, all)) {
            odd.add(tank);
            issues.add(new UnitUnclear(
                    raws.get(0).at(),
                    around(raws),
                    header(),
                    all.label() + " as for the other tanks, or " + own.get().label()));
        }
    }

    private boolean far(List<Raw> raws, Scale scale) {
        return raws.stream()
                .allMatch(r -> scales.typical()
                                .distance(scale.canonical(r.amount().amount().about()))
                        > FAR_SPREADS * scales.typical().spread());
    }

    /** The scale of one tank's results, or that of the first few where all the others carry on from them in some scale. */
    private Optional<Scale> began(List<Raw> raws) {
        return scales.byValue(raws)
                .scale()
                .or(() -> scales.byValue(raws.subList(0, Math.min(FIRST_FEW, raws.size())))
                        .scale())
                .filter(s -> near(raws, Regimes.of(figures(raws), s, scales)));
    }

    private boolean near(List<Raw> raws, List<Scale> each) {
        long far = IntStream.range(0, raws.size())
                .filter(i -> !scales.typical()
                        .near(each.get(i)
                                .canonical(raws.get(i).amount().amount().about())))
                .count();
        return far * 10 <= raws.size();
    }

    /** Whether nearly every figure can be meant on one scale only, as a salinity of 1.026 or 35: then each goes by its own. */
    private boolean figureByFigure(List<Raw> raws) {
        for (Raw raw : raws) {
            List<Scales.OnScale> on = scales.read(raw.amount(), 1);
            on.stream().filter(o -> on.size() == 1).forEach(o -> alone.put(raw, o.scale()));
        }
        boolean nearly = alone.size() * 3 >= raws.size() * 2;
        if (!nearly) {
            alone.clear();
        }
        return nearly;
    }

    private static List<Double> figures(List<Raw> raws) {
        return raws.stream().map(r -> r.amount().amount().about()).toList();
    }

    private void assumed(List<Raw> raws, Scale scale) {
        if (scales.usual().size() > 1) {
            AsWritten at = raws.get(0).at();
            issues.add(new UnitAssumed(at, at(at), header(), scale.label()));
        }
    }

    private String header() {
        return series.header().isEmpty() ? series.parameter().name() : series.header();
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

    /** The results in another unit than the heading's, tank by tank, with that unit. */
    private Map<Raw, Scale> regimes(List<Raw> bare, Scale scale, Map<String, Scale> starts) {
        if (!alone.isEmpty()) {
            return alone;
        }
        Map<Raw, Scale> changed = new IdentityHashMap<>();
        byTank(bare).forEach((tank, raws) -> {
            List<Scale> each = changes(raws, starts.getOrDefault(tank, scale));
            for (int i = 0; i < raws.size(); i++) {
                if (!each.get(i).equals(scale)) {
                    changed.put(raws.get(i), each.get(i));
                }
            }
        });
        return changed;
    }

    private List<Scale> changes(List<Raw> raws, Scale start) {
        List<Scale> each = Regimes.of(figures(raws), start, scales);
        for (int i = 0; i < raws.size(); i++) {
            Scale before = i == 0 ? start : each.get(i - 1);
            if (!each.get(i).equals(before)) {
                issues.add(changeAt(raws, i, before, each));
            }
        }
        return each;
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
        if (scale.isEmpty() || (raw.unit().isEmpty() && odd.contains(raw.place().tank()))) {
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
