package soundings.notebook;

import java.util.List;
import java.util.Optional;
import soundings.advice.Judgement;
import soundings.advice.Recommendation;
import soundings.advice.Verdict;
import soundings.chemistry.Parameter;
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
                .map(o -> o.match(e -> known(e, judgement), n -> unknown(n)))
                .orElse(test.parameter().name() + ": no usable reading this far.");
    }

    private static String known(Estimate estimate, Optional<Judgement> judgement) {
        Parameter parameter = estimate.parameter();
        String use = use(estimate);
        return judgement
                .map(j -> parameter.name() + " is " + verb(j.verdict()) + (use.isEmpty() ? "." : ": " + use + "."))
                .orElse(parameter.name() + ": " + level(estimate) + (use.isEmpty() ? "." : "; " + use + "."));
    }

    private static String verb(Verdict verdict) {
        return verdict == Verdict.CANNOT_TELL ? "not clear yet" : verdict.words();
    }

    private static String level(Estimate e) {
        return Figures.with(
                        Figures.number(e.level().mid(), e.parameter().decimals()),
                        e.parameter().unit()) + " on " + Figures.day(e.asOf()) + " (between "
                + span(e.level(), e.parameter().decimals()) + ")";
    }

    private static String span(Interval value, int decimals) {
        return Figures.number(value.low(), decimals) + " and " + Figures.number(value.high(), decimals);
    }

    private static String use(Estimate e) {
        if (!e.parameter().balances()) {
            return "";
        }
        Optional<Interval> used = View.use(e);
        int decimals =
                used.map(u -> Figures.decimals(u, e.parameter().decimals() + 1)).orElse(0);
        return used.map(u -> u.mid() < 0
                        ? "it gains " + rate(u.times(-1), decimals, e)
                        : "the tank uses " + rate(u, decimals, e) + dosed(e, decimals))
                .orElse("");
    }

    private static String rate(Interval u, int decimals, Estimate e) {
        return Figures.with(Figures.number(u.mid(), decimals), e.parameter().unit()) + " a day ("
                + Figures.span(u, decimals) + ")";
    }

    private static String dosed(Estimate e, int decimals) {
        return e.dosedPerDay() > 0 ? " and the dose puts in " + Figures.number(e.dosedPerDay(), decimals) : "";
    }

    private static String unknown(NotEnough n) {
        return n.parameter().name() + " cannot be told yet: " + Text.clause(n.why()) + ". "
                + Text.sentence(n.wouldNeed());
    }

    /** A dose proposal as an order in one line. */
    static String order(Recommendation r) {
        String name = r.additive().isEmpty()
                ? "the " + r.parameter().name().toLowerCase(java.util.Locale.ROOT) + " dose"
                : r.additive();
        List<String> parts = new java.util.ArrayList<>();
        r.pause().ifPresent(p -> parts.add(pause(r, p, name)));
        r.proposedMlPerDay()
                .ifPresent(p -> parts.add((r.pause().isPresent() ? "then set " : "set ") + name + " to "
                        + Figures.number(p.mid(), millilitres(p)) + " mL a day" + present(r, millilitres(p))));
        r.correction()
                .ifPresent(c ->
                        parts.add((c.days() == 1 ? "on the first day" : "on each of the first " + c.days() + " days")
                                + " add " + Figures.number(c.mlADay(), c.mlADay() < 10 ? 2 : 1) + " mL of " + name));
        return Figures.capital(String.join("; ", parts));
    }

    private static String pause(Recommendation r, Recommendation.Pause p, String name) {
        String meanwhile = p.mlPerDay() > 0
                ? "only " + Figures.number(p.mlPerDay(), p.mlPerDay() < 10 ? 2 : 1) + " mL a day of " + name
                : "no " + name;
        return meanwhile + " for about " + p.wholeDays() + " days, until the test reads "
                + Figures.with(
                        Figures.number(p.goal(), Figures.bareDecimals(p.goal())),
                        r.parameter().unit());
    }

    private static String present(Recommendation r, int decimals) {
        return r.presentMlPerDay().isPresent()
                ? " (now " + Figures.number(r.presentMlPerDay().getAsDouble(), decimals) + ")"
                : "";
    }

    /** Three digits that count, as the list of things to do has them. */
    static int millilitres(Interval dose) {
        return dose.mid() >= 100 ? 0 : dose.mid() >= 10 ? 1 : 2;
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
