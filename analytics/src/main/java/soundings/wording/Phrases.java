package soundings.wording;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.chemistry.Alias;

/**
 * Reads running text: results, doses, water changes, events. A number becomes a result only where the words around it leave no other
 * sense; whatever no rule explains comes back as a remark.
 */
public final class Phrases {
    /** The length of text a cell can hold; what lies beyond is left as a remark. */
    private static final int LONGEST = 32_767;

    private static final Set<String> COUNTED = Set.of(
            "drop",
            "drops",
            "g",
            "gram",
            "grams",
            "mg",
            "tsp",
            "tbsp",
            "teaspoon",
            "teaspoons",
            "scoop",
            "scoops",
            "cap",
            "caps",
            "capful",
            "capfuls",
            "pump",
            "pumps",
            "squirt",
            "squirts");
    private static final Set<String> TIMES =
            Set.of("double", "doubled", "half", "halved", "halve", "tripled", "triple", "quarter", "quartered");

    private static final Set<String> ENDED = Set.of("stop", "off", "none");
    /** {@code alk is off}: its dose ended, or its result is odd. */
    private static final int SHORT = 3;

    private static final Set<String> CHANGED = Set.of("up", "down", "half", "double", "triple");

    /** Events that are deeds: to forget or to plan one is not to do it. */
    private static final Set<String> RENEWED =
            Set.of("carbon", "phosphateRemover", "light", "bottle", "kit", "calibration", "filter");

    private final Clauses text;
    private final List<Phrase> phrases = new ArrayList<>();
    private String tank = "";
    private String before = "";
    private boolean hedged;
    /** The first phrase of the sentence. */
    private int sentence;
    /** The additive that the sentence spoke of last without a dose of it: {@code alk pump died}. */
    private String subject = "";

    private Phrases(Clauses text) {
        this.text = text;
    }

    /** In the order of the text; together they hold every word of it. */
    public static List<Phrase> read(String text, DecimalMark mark, Vocabulary vocabulary) {
        String head = text.length() > LONGEST ? text.substring(0, LONGEST) : text;
        return new Phrases(new Clauses(head, mark, vocabulary)).read();
    }

    /** Whether a text under an additive's name says that it is no longer dosed. */
    public static boolean stops(String text) {
        return RateWords.STOPPED.contains(Plain.of(text).strip());
    }

    private List<Phrase> read() {
        int i = 0;
        while (i < text.size()) {
            if (text.stop(i)) {
                hedged &= !text.sentenceEnd(i);
                tank = text.sentenceEnd(i) && tank.equals(TankMention.ALL) ? before : tank;
                sentence = text.sentenceEnd(i) ? phrases.size() : sentence;
                subject = text.sentenceEnd(i) ? "" : subject;
                i++;
            } else {
                i = clause(i);
            }
        }
        return phrases.stream().map(this::worded).toList();
    }

    private Phrase worded(Phrase phrase) {
        return phrase.said()
                .match(
                        t -> phrase,
                        r -> phrase,
                        o -> phrase,
                        c -> phrase,
                        r -> new Phrase(
                                phrase.from(),
                                phrase.to(),
                                phrase.tank(),
                                phrase.sure(),
                                new Said.Remark(r.kind(), text.written.substring(phrase.from(), phrase.to()))));
    }

    private int clause(int start) {
        int i = tankName(start);
        if (i > start && text.stop(i)) {
            return i;
        }
        hedged |= Hedges.word(text, i);
        Optional<TankMention.Found> alone = TankMention.alone(text, i);
        if (alone.isPresent() && !hedged && (!alone.get().bare() || changesBefore())) {
            return belongs(start, alone.get());
        }
        Optional<TankMention.Found> mention = TankMention.in(text, i).filter(m -> !m.bare() || changes(i, m));
        List<String> tanks = mention.map(TankMention.Found::tanks).orElse(List.of(tank));
        Optional<Clauses.Found> found = hedged ? Optional.empty() : rule(i, mention);
        if (found.isEmpty()) {
            return remark(start, tanks.size() == 1 ? tanks.get(0) : tank);
        }
        Clauses.Found rule = subject.isEmpty() ? found.get() : found.get().about(subject);
        tanks.forEach(t -> rule.said().forEach(s -> add(start, rule.end(), rule.sure(), t, s)));
        return rule.end();
    }

    private boolean changesBefore() {
        List<Phrase> said = phrases.subList(sentence, phrases.size());
        return !said.isEmpty() && said.stream().allMatch(p -> p.said() instanceof Said.Change);
    }

    /** Whether water changes are what is said of {@code both}. */
    private boolean changes(int i, TankMention.Found mention) {
        return rule(i, Optional.of(mention))
                .filter(f -> f.said().stream().allMatch(Said.Change.class::isInstance))
                .isPresent();
    }

    /** What the sentence said before, {@code 10% water change, both tanks}, was said of these tanks. */
    private int belongs(int start, TankMention.Found mention) {
        List<Phrase> said = phrases.subList(sentence, phrases.size());
        List<Phrase> moved = said.stream()
                .filter(p -> p.tank().isEmpty())
                .flatMap(p -> mention.tanks().stream().map(t -> new Phrase(p.from(), p.to(), t, p.sure(), p.said())))
                .toList();
        said.removeIf(p -> p.tank().isEmpty());
        said.addAll(moved);
        add(start, mention.to(), 0.8, tank, new Said.Remark("note", ""));
        return mention.to();
    }

    /** {@code Lagoon: Alk 8.2}: the tank holds for what follows, up to the next name. */
    private int tankName(int i) {
        int every = TankMention.every(text, i);
        if (every > i && !text.stop(every)) {
            before = tank.equals(TankMention.ALL) ? before : tank;
            tank = TankMention.ALL;
            return text.pass(every, Set.of(":", "-"), 1);
        }
        Optional<Names.Match> name = text.tank(i);
        int behind = name.map(n -> TankMention.kind(text, n.to())).orElse(i);
        if (name.isEmpty() || !leads(behind)) {
            return i;
        }
        tank = name.get().means();
        return text.pass(behind, Set.of(":", "-"), 1);
    }

    private boolean leads(int behind) {
        return text.is(behind, ":")
                || text.is(behind, "-")
                || text.test(behind).isPresent()
                || ChangePhrase.at(text, behind).isPresent()
                || RatePhrase.at(text, behind).isPresent();
    }

    /** What a rule makes of the clause once the tank that it mentions is taken out. */
    private Optional<Clauses.Found> rule(int i, Optional<TankMention.Found> mention) {
        return mention.isEmpty()
                ? rule(text, i)
                : rule(text.without(mention.get().from(), mention.get().to()), i)
                        .map(f -> f.end() < mention.get().from()
                                ? f
                                : new Clauses.Found(
                                        f.end()
                                                + mention.get().to()
                                                - mention.get().from(),
                                        f.sure(),
                                        f.said()));
    }

    private static Optional<Clauses.Found> rule(Clauses text, int i) {
        return RatePhrase.at(text, i)
                .or(() -> ChangePhrase.at(text, i))
                .or(() -> OneOffPhrase.at(text, i))
                .or(() -> TestPhrase.at(text, i))
                .or(() -> DosePhrase.at(text, i));
    }

    private void add(int from, int to, double sure, String whose, Said said) {
        phrases.add(
                new Phrase(text.tokens.get(from).from(), text.tokens.get(to - 1).to(), whose, sure, said));
    }

    /**
     * Everything up to the end of the clause; plain remarks side by side become one. Where animals are moved the tank that is mentioned
     * is the other one.
     */
    private int remark(int start, String mentioned) {
        int end = start;
        while (!text.stop(end) && !(end > start && doseFollows(end))) {
            hedged |= Hedges.word(text, end) && !TestPhrase.past(text, end);
            end++;
        }
        String kind = kind(start, end);
        String whose = kind.equals("moved") ? tank : mentioned;
        subject = dosed(start, end).orElse(subject);
        hedged |= kind.equals("unread") && otherSubject(start, end);
        if (kind.equals("note") && joinsLast(whose)) {
            Phrase last = phrases.remove(phrases.size() - 1);
            int to = text.tokens.get(end - 1).to();
            // The words are filled in at the end: copying them at each join would take quadratic time.
            phrases.add(new Phrase(last.from(), to, whose, last.sure(), new Said.Remark(kind, "")));
        } else {
            add(start, end, kind.equals("unread") ? 0.3 : 0.8, whose, new Said.Remark(kind, text.written(start, end)));
        }
        return end;
    }

    /** {@code moved two rocks and gave 5 ml of blue mix}: the dose is a thought of its own. */
    private boolean doseFollows(int and) {
        return text.and(and)
                && !hedged
                && volumeSoon(and)
                && RatePhrase.at(text, and)
                        .or(() -> OneOffPhrase.at(text, and))
                        .or(() -> DosePhrase.at(text, and + 1))
                        .isPresent();
    }

    private boolean volumeSoon(int from) {
        for (int i = from; i < from + 10; i++) {
            if (text.number(i) && text.volume(i + 1).isPresent()) {
                return true;
            }
        }
        return false;
    }

    private boolean joinsLast(String whose) {
        return !phrases.isEmpty()
                && phrases.get(phrases.size() - 1).tank().equals(whose)
                && phrases.get(phrases.size() - 1)
                        .said()
                        .match(
                                t -> false,
                                r -> false,
                                o -> false,
                                c -> false,
                                r -> r.kind().equals("note"));
    }

    /** {@code new mix: alk 9.1, ca 480}: what stands before the first test may be whose water it is, for what follows too. */
    private boolean otherSubject(int from, int to) {
        boolean words = false;
        for (int i = from; i < to && text.test(i).isEmpty(); i++) {
            words |= text.tokens.get(i).word();
            if (i + 1 < to && text.test(i + 1).isPresent()) {
                return words;
            }
        }
        return false;
    }

    private String kind(int from, int to) {
        if (stopsDose(from, to)) {
            return "unread";
        }
        List<Token> clause = text.tokens.subList(from, to);
        boolean part = !Names.all(clause, k -> text.vocabulary.find(Alias.Kind.PART, k))
                .isEmpty();
        Optional<String> event = Names.all(clause, k -> text.vocabulary.find(Alias.Kind.EVENT, k)).stream()
                .filter(e -> !(part && e.means().equals("loss")))
                .filter(e -> !(RENEWED.contains(e.means()) && isAhead(clause.subList(0, e.from()))))
                .map(Names.Match::means)
                .findFirst();
        return event.or(() -> condition(clause))
                .orElseGet(() -> changeWord(from, to) ? "waterChange" : unread(from, to) ? "unread" : "note");
    }

    /** {@code forgot to refill}, {@code must order new carbon}: it has not happened. */
    private boolean isAhead(List<Token> before) {
        return Stream.of(Alias.Kind.CARE, Alias.Kind.JOB)
                .flatMap(kind -> Names.all(before, k -> text.vocabulary.find(kind, k)).stream())
                .anyMatch(m -> Set.of("ahead", "unsaid", "wanted").contains(m.means()));
    }

    /** A sign of illness, in fish or coral, or of well-being. */
    private Optional<String> condition(List<Token> clause) {
        Set<String> said = Names.all(clause, k -> text.vocabulary.find(Alias.Kind.CARE, k)).stream()
                .map(Names.Match::means)
                .collect(Collectors.toSet());
        if (said.contains("unsaid")) {
            return Optional.empty();
        }
        return said.contains("sign") || said.contains("ill")
                ? Optional.of("symptom")
                : said.contains("well") ? Optional.of("condition") : Optional.empty();
    }

    private boolean changeWord(int from, int to) {
        boolean numbers = text.tokens.subList(from, to).stream().anyMatch(Token::number);
        for (int i = from; i < to; i++) {
            if (ChangePhrase.word(text, i).isPresent() && !numbers && !hedged) {
                return true;
            }
        }
        return false;
    }

    /** A number stands beside the name of a test, an additive, a volume. */
    private boolean unread(int from, int to) {
        boolean rate = rateLike(from, to);
        if (hedged || rate) {
            return rate;
        }
        boolean number = false;
        boolean named = false;
        for (int i = from; i < to; i++) {
            number |= text.number(i);
            named |= text.volume(i).isPresent()
                    || text.additive(i).isPresent()
                    || text.test(i).filter(n -> n.key().length() > 1).isPresent();
        }
        return number && named || changesDose(from, to);
    }

    /** An amount a day, in whatever unit: not used where it may be meant for later or is no volume, and not passed over. */
    private boolean rateLike(int from, int to) {
        for (int i = from; i + 1 < to; i++) {
            boolean amount = text.number(i)
                    && (text.in(i + 1, COUNTED)
                            || text.volume(i + 1)
                                    .filter(v -> v == VolumeUnit.MILLILITRE)
                                    .isPresent());
            if (amount && RatePhrase.often(text, i + 2).isPresent()) {
                return !DosePhrase.otherThing(text, from, to);
            }
        }
        return false;
    }

    /** The one additive of a clause: by its own name, or by a test's beside a word for dosing. */
    private Optional<String> dosed(int from, int to) {
        Set<String> names = new HashSet<>();
        for (int i = from; i < to; i++) {
            int at = i;
            text.additive(i).map(Names.Match::means).ifPresent(names::add);
            text.test(i)
                    .filter(n -> text.in(n.to(), HeaderParts.DOSE_WORDS))
                    .map(n -> text.written(at, n.to()))
                    .ifPresent(names::add);
        }
        return names.stream().filter(n -> names.size() == 1).findFirst();
    }

    /** {@code alk off while away}: a dose that ended, or did not. */
    private boolean stopsDose(int from, int to) {
        boolean stop = false;
        boolean dosed = false;
        for (int i = from; i < to; i++) {
            stop |= text.dosing(i).filter(w -> ENDED.contains(w.means())).isPresent();
            dosed |= text.additive(i).isPresent()
                    || to - from <= SHORT && text.test(i).isPresent()
                    || text.test(i)
                            .filter(n -> text.in(n.to(), HeaderParts.DOSE_WORDS))
                            .isPresent();
        }
        return stop && dosed;
    }

    /** {@code dose doubled}, {@code half dose of blue mix}: how much it is now is not said. */
    private boolean changesDose(int from, int to) {
        boolean dose = false;
        boolean times = false;
        for (int i = from; i < to; i++) {
            dose |= text.in(i, HeaderParts.DOSE_WORDS) || text.additive(i).isPresent();
            times |= text.in(i, TIMES)
                    || text.dosing(i).filter(w -> CHANGED.contains(w.means())).isPresent();
        }
        return dose && times;
    }
}
