package soundings.notebook;

import java.util.List;
import java.util.Optional;
import soundings.advice.Judgement;
import soundings.advice.Recommendation;
import soundings.advice.Verdict;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.estimate.Estimate;
import soundings.estimate.NotEnough;
import soundings.quantity.Interval;

/** Findings as sentences. Every figure in them is one the estimates or the advice hold. */
final class Sentences {
    private Sentences() {}

    /** What is to be taken away from one test. */
    static String finding(View view, View.Test test) {
        Optional<Judgement> judgement = view.judgement(test.tankName(), test.parameter());
        return view.outcome(test.tankName(), test.parameter())
                .map(o -> o.match(e -> known(test.scale(), e, judgement), n -> unknown(n)))
                .orElse(test.parameter().name() + ": no usable reading this far.");
    }

    private static String known(Scale scale, Estimate estimate, Optional<Judgement> judgement) {
        Parameter parameter = estimate.parameter();
        String use = use(scale, estimate);
        return judgement
                .map(j -> parameter.name() + " is " + verb(j.verdict()) + (use.isEmpty() ? "." : ": " + use + "."))
                .orElse(parameter.name() + ": " + level(scale, estimate) + (use.isEmpty() ? "." : "; " + use + "."));
    }

    private static String verb(Verdict verdict) {
        return verdict == Verdict.CANNOT_TELL ? "not clear yet" : verdict.words();
    }

    private static String level(Scale scale, Estimate e) {
        Interval level = scale.written(e.level());
        int decimals = scale.decimalsAt(level.mid());
        return Figures.with(Figures.number(level.mid(), decimals), scale.label()) + " on " + Figures.day(e.asOf())
                + " (between " + span(level, decimals) + ")";
    }

    private static String span(Interval value, int decimals) {
        return Figures.number(value.low(), decimals) + " and " + Figures.number(value.high(), decimals);
    }

    private static String use(Scale scale, Estimate e) {
        if (!e.parameter().balances()) {
            return "";
        }
        double level = e.level().mid();
        Optional<Interval> used = View.use(e).map(u -> scale.change(u, level));
        int decimals = used.map(u -> Figures.decimals(u, scale.decimals() + 1)).orElse(0);
        return used.map(u -> u.mid() < 0
                        ? "it gains " + rate(u.times(-1), decimals, scale)
                        : "the tank uses " + rate(u, decimals, scale)
                                + dosed(scale.change(e.dosedPerDay(), level), decimals))
                .orElse("");
    }

    private static String rate(Interval u, int decimals, Scale scale) {
        return Figures.with(Figures.number(u.mid(), decimals), scale.label()) + " a day (" + Figures.span(u, decimals)
                + ")";
    }

    private static String dosed(double perDay, int decimals) {
        return perDay > 0 ? " and the dose puts in " + Figures.number(perDay, decimals) : "";
    }

    private static String unknown(NotEnough n) {
        return n.parameter().name() + " cannot be told yet: " + Text.clause(n.why()) + ". "
                + Text.sentence(n.wouldNeed());
    }

    /** A dose proposal as an order in one line. */
    static String order(Recommendation r, Scale scale) {
        String name = r.additive().isEmpty()
                ? "the " + r.parameter().name().toLowerCase(java.util.Locale.ROOT) + " dose"
                : r.additive();
        List<String> parts = new java.util.ArrayList<>();
        r.pause().ifPresent(p -> parts.add(pause(scale, p, name)));
        r.proposedMlPerDay()
                .ifPresent(p -> parts.add((r.pause().isPresent() ? "then set " : "set ") + name + " to "
                        + Figures.number(p.mid(), millilitres(p.mid())) + " mL a day"
                        + present(r, millilitres(p.mid()))));
        r.correction()
                .ifPresent(c ->
                        parts.add((c.days() == 1 ? "on the first day" : "on each of the first " + c.days() + " days")
                                + " add " + Figures.number(c.mlADay(), c.mlADay() < 10 ? 2 : 1) + " mL of " + name));
        return Figures.capital(String.join("; ", parts));
    }

    private static String pause(Scale scale, Recommendation.Pause p, String name) {
        String meanwhile = p.mlPerDay() > 0
                ? "only " + Figures.number(p.mlPerDay(), p.mlPerDay() < 10 ? 2 : 1) + " mL a day of " + name
                : "no " + name;
        return meanwhile + " for about " + p.wholeDays() + " days, until the test reads "
                + Figures.with(Figures.bound(scale, p.goal()), scale.label());
    }

    private static String present(Recommendation r, int decimals) {
        return r.presentMlPerDay().isPresent()
                ? " (now " + Figures.number(r.presentMlPerDay().getAsDouble(), decimals) + ")"
                : "";
    }

    /** Three digits that count, as the list of things to do has them. */
    static int millilitres(double dose) {
        return dose >= 100 ? 0 : dose >= 10 ? 1 : 2;
    }

    /** A tank's state in a sentence: what needs doing, what to watch, what is steady. */
    static String tank(View view, String tank) {
        List<Judgement> all = view.findings().advice().judgements().stream()
                .filter(j -> j.tank().equals(tank))
                .toList();
        String acts = named(view, all, Tone.ACT);
        String watched = named(view, all, Tone.WATCH);
        String calm = named(view, all, Tone.CALM);
        String unsure = named(view, all, Tone.UNSURE);
        String sentence = (acts.isEmpty() ? "" : "To act on: " + acts + ". ")
                + (watched.isEmpty() ? "" : "To watch: " + watched + ". ")
                + (calm.isEmpty() ? "" : "Steady: " + calm + ". ")
                + (unsure.isEmpty() ? "" : "Cannot be told yet: " + unsure + ".");
        return sentence.isEmpty() ? "Nothing can be said of this tank yet." : sentence.strip();
    }

    static String named(View view, List<Judgement> all, Tone tone) {
        return Figures.list(all.stream()
                .filter(j -> view.tone(j) == tone)
                .map(j -> tone == Tone.CALM || tone == Tone.UNSURE
                        ? lower(j.parameter().name())
                        : lower(j.parameter().name()) + " (" + j.verdict().words() + ")")
                .toList());
    }

    /** A name inside a sentence: {@code Calcium} becomes {@code calcium}, {@code pH} and {@code PAR} stay. */
    static String lower(String name) {
        boolean plain =
                name.length() > 1 && Character.isLowerCase(name.charAt(1)) && Character.isUpperCase(name.charAt(0));
        return plain ? name.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + name.substring(1) : name;
    }
}
