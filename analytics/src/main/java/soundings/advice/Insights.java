package soundings.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import soundings.chemistry.Calcification;
import soundings.chemistry.Ions;
import soundings.chemistry.Parameter;
import soundings.chemistry.PhScale;
import soundings.chemistry.TankWater;
import soundings.estimate.Estimate;
import soundings.quantity.Amount;
import soundings.quantity.Interval;

/** What several tests of one tank tell together; each only where all it needs was tested lately. */
final class Insights {
    /** A salinity nearer to 35 than this leaves the ions as they are read. */
    private static final double SALINITY_SLACK = 0.5;
    /** Magnesium's share of the carbonate in coralline algae, at most. */
    private static final double MOST_MAGNESIUM = 0.15;

    private Insights() {}

    /** @param any a matter of the tank, whatever its parameter */
    static List<Insight> of(Matter any) {
        List<Insight> insights = new ArrayList<>();
        calcification(any).ifPresent(insights::add);
        magnesium(any).ifPresent(insights::add);
        aragonite(any).ifPresent(insights::add);
        carbonDioxide(any).ifPresent(insights::add);
        freeAmmonia(any).ifPresent(insights::add);
        insights.addAll(atStandardSalinity(any));
        SaltLeft.of(any).ifPresent(insights::add);
        return insights;
    }

    private static Optional<Insight> calcification(Matter any) {
        Optional<Interval> alkalinity = use(any, "alkalinity");
        Optional<Interval> calcium = use(any, "calcium");
        if (alkalinity.isEmpty() || calcium.isEmpty()) {
            return Optional.empty();
        }
        Calcification.Finding finding = Calcification.judge(alkalinity.get(), calcium.get());
        boolean told = finding.verdict() != Calcification.Verdict.CANNOT_TELL || finding.probability() > 0;
        String sure = told ? " (" + Phrases.percent(finding.probability()) + ")" : "";
        Per per = Per.of(any, "calcium");
        return Optional.of(insight(
                any,
                Insight.Kind.CALCIFICATION,
                "calcium used for each " + per.each() + " used",
                told ? Optional.of(per.shown(finding.ratio())) : Optional.empty(),
                per.unit(),
                finding.verdict().words() + sure + "; pure calcium carbonate takes "
                        + per.words(Calcification.calciumPerDkh()),
                "alkalinity",
                "calcium"));
    }

    private static Optional<Insight> magnesium(Matter any) {
        Optional<Interval> alkalinity = use(any, "alkalinity");
        Optional<Interval> magnesium = use(any, "magnesium");
        Per per = Per.of(any, "magnesium");
        return alkalinity
                .filter(a -> a.low() > 0)
                .flatMap(a -> magnesium.map(m -> Calcification.ratio(a, m)))
                .map(ratio -> insight(
                        any,
                        Insight.Kind.CALCIFICATION,
                        "magnesium used for each " + per.each() + " used",
                        Optional.of(per.shown(ratio)),
                        per.unit(),
                        (ratio.low() > Calcification.magnesiumPerDkh(MOST_MAGNESIUM)
                                        ? "more than skeletons and coralline algae take: another sink, or a test that is off"
                                        : "no more than skeletons and coralline algae may take")
                                + "; coral takes some " + per.number(Calcification.magnesiumPerDkh(0.004))
                                + " and coralline algae up to "
                                + per.words(Calcification.magnesiumPerDkh(MOST_MAGNESIUM))
                                + " (common practice, no source)",
                        "alkalinity",
                        "magnesium"));
    }

    private static Optional<Interval> use(Matter any, String id) {
        return any.of(id).filter(m -> !m.isStale()).flatMap(Matter::estimate).flatMap(Estimate::use);
    }

    private static Optional<Insight> aragonite(Matter any) {
        return worked(
                        any,
                        List.of("salinity", "temperature", "ph", "alkalinity", "calcium"),
                        v -> water(any, v).aragoniteSaturation(v[3], v[4]))
                .map(omega -> insight(
                        any,
                        Insight.Kind.ARAGONITE,
                        "saturation of aragonite",
                        Optional.of(omega),
                        "",
                        (omega.mid() < 1 ? "aragonite dissolves: corals lose skeleton" : "aragonite can form")
                                + "; above 1 it can, and reefs in the sea have about 3 to 4 (common practice, no source); "
                                + scaleWords(any),
                        "alkalinity",
                        "calcium",
                        "ph"));
    }

    private static Optional<Insight> carbonDioxide(Matter any) {
        return worked(
                        any,
                        List.of("salinity", "temperature", "ph", "alkalinity"),
                        v -> water(any, v).pCo2(v[3]))
                .map(co2 -> insight(
                        any,
                        Insight.Kind.CARBON_DIOXIDE,
                        "carbon dioxide",
                        Optional.of(co2),
                        "uatm",
                        "open air has some 420; a closed room more; " + scaleWords(any),
                        "alkalinity",
                        "ph"));
    }

    private static Optional<Insight> freeAmmonia(Matter any) {
        boolean found = any.of("ammonia")
                .flatMap(m -> m.last().filter(r -> !m.isStale() && isNumber(r.amount())))
                .isPresent();
        return found
                ? worked(
                                any,
                                List.of("salinity", "temperature", "ph", "ammonia"),
                                v -> new TankWater(v[0], v[1], v[2], scaleForPoison(any)).freeAmmonia(v[3]))
                        .map(free -> insight(
                                any,
                                Insight.Kind.FREE_AMMONIA,
                                "free ammonia, the poisonous part",
                                Optional.of(free),
                                "mg/L",
                                "the warmer and the more alkaline the water, the larger this part; pH taken on the "
                                        + scaleForPoison(any).label(),
                                "ammonia",
                                "ph",
                                "temperature"))
                : Optional.empty();
    }

    private static boolean isNumber(Amount amount) {
        return amount.match(e -> e.value() > 0, b -> false, a -> true, b -> true);
    }

    private static List<Insight> atStandardSalinity(Matter any) {
        Optional<Interval> salinity = level(any, "salinity");
        if (salinity.isEmpty() || Math.abs(salinity.get().mid() - Ions.STANDARD) < SALINITY_SLACK) {
            return List.of();
        }
        return any.reference().parameters().stream()
                .filter(p -> p.kind() == Parameter.Kind.ION
                        && any.tank().findSeries(p).isPresent())
                .flatMap(p -> atStandardSalinity(any, p, salinity.get()).stream())
                .toList();
    }

    private static Optional<Insight> atStandardSalinity(Matter any, Parameter ion, Interval salinity) {
        return worked(any, List.of("salinity", ion.id()), v -> Ions.atStandardSalinity(v[1], v[0]))
                .map(at35 -> insight(
                        any,
                        Insight.Kind.AT_STANDARD_SALINITY,
                        Phrases.name(ion) + " at salinity 35",
                        Optional.of(any.of(ion).scale().written(at35)),
                        any.of(ion).scale().label(),
                        "at the tank's salinity of " + Phrases.number(salinity.mid(), 1)
                                + " it reads otherwise; this is what " + "to hold against seawater",
                        "salinity",
                        ion.id()));
    }

    /** A figure of several levels with its interval: the spread each level brings, root of the sum of squares. */
    private static Optional<Interval> worked(Matter any, List<String> ids, ToDoubleFunction<double[]> of) {
        List<Interval> levels =
                ids.stream().flatMap(id -> level(any, id).stream()).toList();
        if (levels.size() < ids.size()) {
            return Optional.empty();
        }
        double[] mids = levels.stream().mapToDouble(Interval::mid).toArray();
        double mid = of.applyAsDouble(mids);
        double squares = 0;
        for (int i = 0; i < mids.length; i++) {
            double[] moved = mids.clone();
            moved[i] = levels.get(i).high();
            squares += Math.pow(of.applyAsDouble(moved) - mid, 2);
        }
        double reach = Math.sqrt(squares);
        return Double.isFinite(mid) && Double.isFinite(reach)
                ? Optional.of(new Interval(mid, Math.min(mid, Math.max(0, mid - reach)), mid + reach))
                : Optional.empty();
    }

    /** The level estimated, else the last reading, as it stands; neither when it is old. */
    private static Optional<Interval> level(Matter any, String id) {
        return any.of(id)
                .filter(m -> !m.isStale())
                .flatMap(m -> m.estimate()
                        .filter(e -> m.parameter().kind() != Parameter.Kind.TOXIN)
                        .map(Estimate::level)
                        .or(() -> m.last().map(r -> r.amount().about()).map(a -> new Interval(a, a, a))));
    }

    private static TankWater water(Matter any, double[] v) {
        return new TankWater(v[0], v[1], v[2], scale(any), tested(any, "phosphate"), tested(any, "silicate"));
    }

    /** Without a test of it, none: it holds little of the alkalinity. */
    private static double tested(Matter any, String id) {
        return level(any, id).map(Interval::mid).orElse(0.0);
    }

    /** The preference {@code pH scale}. */
    private static PhScale scale(Matter any) {
        return PhScale.called(any.history().setup().findPreference("pH scale").orElse(""));
    }

    /** Where the keeper has not said which, the scale that gives the higher figure. */
    private static PhScale scaleForPoison(Matter any) {
        return any.history()
                .setup()
                .findPreference("pH scale")
                .map(PhScale::called)
                .orElse(PhScale.TOTAL);
    }

    private static String scaleWords(Matter any) {
        return "pH taken as " + scale(any).label();
    }

    private static Insight insight(
            Matter any,
            Insight.Kind kind,
            String label,
            Optional<Interval> value,
            String unit,
            String says,
            String... ids) {
        List<String> cells = Stream.of(ids)
                .flatMap(id -> any.of(id).stream())
                .flatMap(m -> m.places().stream())
                .toList();
        return new Insight(any.tank().tank(), kind, label, value, unit, says, cells);
    }
}
