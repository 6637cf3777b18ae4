package soundings.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soundings.chemistry.Parameter;

/** What a header can mean, best first. Words are weighed one by one, in any order; nothing is matched only as a whole. */
public final class Headers {
    private static final int LONGEST = 120;
    private static final double LONE_LETTER = 0.3;
    private static final Map<String, String> SHARED = Map.of("f", "fluoride");

    private Headers() {}

    /** Empty when no word of the text is known. */
    public static List<HeaderMeaning> read(String text, Vocabulary vocabulary) {
        if (text.length() > LONGEST) {
            return List.of();
        }
        HeaderParts parts = new HeaderParts(text, vocabulary);
        List<HeaderMeaning> all = new ArrayList<>();
        change(parts).ifPresent(all::add);
        all.addAll(doses(parts));
        tests(parts, vocabulary).forEach(all::add);
        roles(parts).forEach(all::add);
        all.sort(Comparator.comparingDouble(HeaderMeaning::score).reversed());
        return List.copyOf(all);
    }

    /** The headers of one table: a single letter such as {@code K} counts for more among other tests. */
    public static List<List<HeaderMeaning>> readTogether(List<String> texts, Vocabulary vocabulary) {
        List<List<HeaderMeaning>> each =
                texts.stream().map(t -> read(t, vocabulary)).toList();
        long company = each.stream()
                .filter(m -> !m.isEmpty() && m.get(0).score() >= 0.7 && test(m.get(0)))
                .count();
        return company < 2 ? each : each.stream().map(Headers::inCompany).toList();
    }

    /** Whether a text says how much goes in a day. */
    public static boolean rated(String text, Vocabulary vocabulary) {
        return text.length() <= LONGEST && new HeaderParts(text, vocabulary).rate.isPresent();
    }

    /** Whether a word says nothing about what is measured. */
    public static boolean filler(String word) {
        return HeaderParts.FILLERS.contains(Plain.of(word).strip());
    }

    private static boolean test(HeaderMeaning meaning) {
        return meaning.meaning().match(t -> true, d -> false, o -> false, c -> false, r -> false);
    }

    private static List<HeaderMeaning> inCompany(List<HeaderMeaning> meanings) {
        return meanings.stream()
                .map(m -> test(m) && m.score() == LONE_LETTER ? m.scored(0.75, m.because() + ", among other tests") : m)
                .toList();
    }

    private static Optional<HeaderMeaning> change(HeaderParts parts) {
        return parts.change.map(c -> {
            VolumeUnit unit = parts.volume().orElse(VolumeUnit.UNWRITTEN);
            List<int[]> spans = new ArrayList<>(List.of(new int[] {c.from(), c.to()}));
            unitTokens(parts, spans);
            double score = faded(0.95, parts.unexplained(spans));
            return new HeaderMeaning(
                    new Meaning.Change(unit), parts.tank(), score, "\"" + c.key() + "\" is a water change");
        });
    }

    private static void unitTokens(HeaderParts parts, List<int[]> spans) {
        for (int i = 0; i < parts.tokens.size(); i++) {
            if (VolumeUnit.of(parts.tokens.get(i).text()).isPresent()
                    || parts.tokens.get(i).is("us")
                    || parts.tokens.get(i).is("imp")) {
                spans.add(new int[] {i, i + 1});
            }
        }
    }

    private static List<HeaderMeaning> doses(HeaderParts parts) {
        if (parts.change.isPresent() || parts.titrated()) {
            return List.of();
        }
        boolean known = !parts.additives.isEmpty();
        boolean ml = parts.volume().filter(v -> v == VolumeUnit.MILLILITRE).isPresent();
        String additive = parts.additive();
        if (parts.rate.isPresent() && !parts.byHand()) {
            double score = additive.isEmpty() ? 0.6 : 0.92;
            return List.of(dose(parts, additive, parts.rate.get().mlPerDay(), score, "a volume a day is a dose"));
        }
        if (parts.byHand() && (ml || parts.doseWord() || known)) {
            return List.of(oneOff(parts, additive, 0.85, "put in by hand"));
        }
        if (parts.eachDose() && ml) {
            return List.of(dose(parts, additive, Double.NaN, 0.85, "one dose of several a day"));
        }
        if (parts.doseWord() && (!additive.isEmpty() || ml)) {
            return List.of(
                    dose(parts, additive, 1, 0.8, "a dose is named, how often is not"),
                    oneOff(parts, additive, 0.5, "a dose is named, how often is not"));
        }
        boolean solution = parts.solution() && !additive.isEmpty();
        return ml && !additive.isEmpty() || known || solution
                ? eitherDose(parts, additive, known || solution)
                : List.of();
    }

    private static List<HeaderMeaning> eitherDose(HeaderParts parts, String additive, boolean known) {
        double score = known ? 0.75 : 0.6;
        String because =
                known ? "\"" + additive + "\" is an additive" : "a volume in mL is put in, how often is not said";
        return List.of(dose(parts, additive, 1, score, because), oneOff(parts, additive, score - 0.1, because));
    }

    private static HeaderMeaning dose(
            HeaderParts parts, String additive, double mlPerDay, double score, String because) {
        return new HeaderMeaning(new Meaning.Dose(additive, mlPerDay), parts.tank(), score, because);
    }

    private static HeaderMeaning oneOff(HeaderParts parts, String additive, double score, String because) {
        VolumeUnit unit = parts.volume().orElse(VolumeUnit.MILLILITRE);
        return new HeaderMeaning(new Meaning.OneOff(additive, unit), parts.tank(), score, because);
    }

    private static List<HeaderMeaning> tests(HeaderParts parts, Vocabulary vocabulary) {
        List<HeaderMeaning> tests = new ArrayList<>();
        for (Names.Match name : parts.tests) {
            if (parts.ofUnit(name)) {
                continue;
            }
            boolean seen = tests.stream().anyMatch(t -> names(t, name.means()));
            vocabulary
                    .reference()
                    .findParameter(meant(parts, name, vocabulary))
                    .filter(p -> !seen)
                    .ifPresent(p -> tests.add(test(parts, name, p, vocabulary)));
        }
        return tests.size() < 2
                ? tests
                : tests.stream().map(t -> rival(t, tests)).toList();
    }

    /** A letter that two tests share is the other's where that one's unit stands beside it: {@code F mg/L}. */
    private static String meant(HeaderParts parts, Names.Match name, Vocabulary vocabulary) {
        String other = SHARED.getOrDefault(name.key(), "");
        boolean own = other.isEmpty() || unit(parts, name, name.means(), vocabulary);
        return !own && unit(parts, name, other, vocabulary) ? other : name.means();
    }

    private static boolean unit(HeaderParts parts, Names.Match name, String parameter, Vocabulary vocabulary) {
        return !HeaderUnit.of(parts, name, parameter, vocabulary).spelling().isEmpty();
    }

    private static boolean names(HeaderMeaning meaning, String parameter) {
        return meaning.meaning()
                .match(t -> t.parameter().id().equals(parameter), d -> false, o -> false, c -> false, r -> false);
    }

    private static HeaderMeaning rival(HeaderMeaning test, List<HeaderMeaning> all) {
        boolean best = all.stream().noneMatch(t -> !t.equals(test) && t.score() >= test.score());
        return best ? test : test.scored(test.score() * 0.6, test.because() + ", but another test is named too");
    }

    private static HeaderMeaning test(HeaderParts parts, Names.Match name, Parameter parameter, Vocabulary vocabulary) {
        HeaderUnit unit = HeaderUnit.of(parts, name, parameter.id(), vocabulary);
        List<int[]> spans = new ArrayList<>(List.of(new int[] {unit.from(), unit.to()}));
        parts.tests.stream()
                .filter(t -> t.means().equals(parameter.id()))
                .forEach(t -> spans.add(new int[] {t.from(), t.to()}));
        double score = faded(firmness(name, unit), parts.unexplained(spans)) * (otherUse(parts, name) ? 0.25 : 1);
        String because = "\"" + name.key() + "\" is " + parameter.name()
                + (unit.spelling().isEmpty() ? "" : ", \"" + unit.spelling() + "\" its unit");
        return new HeaderMeaning(new Meaning.Test(parameter, unit.spelling()), parts.tank(), score, because);
    }

    private static double firmness(Names.Match name, HeaderUnit unit) {
        boolean written = !unit.spelling().isEmpty();
        if (name.key().length() == 1) {
            return written ? 0.85 : LONE_LETTER;
        }
        return written ? unit.known() ? 0.97 : 0.8 : 0.88;
    }

    /** The header speaks of doses, changes, targets or averages of the test, not of its results. */
    private static boolean otherUse(HeaderParts parts, Names.Match name) {
        boolean derived = parts.derived.stream().anyMatch(d -> !name.covers(d.from()));
        return derived
                || parts.solution()
                || parts.rate.isPresent()
                || parts.inTime()
                || parts.doseWord()
                || parts.byHand()
                || parts.change.isPresent();
    }

    private static List<HeaderMeaning> roles(HeaderParts parts) {
        List<HeaderMeaning> roles = new ArrayList<>();
        for (Names.Match role : parts.roles) {
            boolean whole = parts.unexplained(List.of(new int[] {role.from(), role.to()})) == 0;
            double score = role.to() - role.from() == parts.tokens.size() ? 0.95 : whole ? 0.85 : 0.4;
            roles.add(new HeaderMeaning(
                    new Meaning.Role(role.means()), parts.tank(), score, "\"" + role.key() + "\" is a column's role"));
        }
        parts.derived.stream()
                .findFirst()
                .ifPresent(d -> roles.add(derived(parts, "\"" + d.key() + "\" is no result of a test")));
        if (parts.inTime() && !parts.tests.isEmpty()) {
            roles.add(derived(parts, "by how much in some time is no result of a test"));
        }
        return roles;
    }

    private static HeaderMeaning derived(HeaderParts parts, String because) {
        return new HeaderMeaning(new Meaning.Role("derived"), parts.tank(), 0.8, because);
    }

    private static double faded(double score, int unexplained) {
        return score * Math.pow(0.8, unexplained);
    }
}
