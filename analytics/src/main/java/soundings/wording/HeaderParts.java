package soundings.wording;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Alias;

/** A header taken apart: which of its words name a test, a role, an additive, a rate, a tank, and which are left over. */
final class HeaderParts {
    /** Words that say nothing about what is measured. */
    static final Set<String> FILLERS = Set.of(
            "test",
            "tests",
            "level",
            "levels",
            "result",
            "results",
            "reading",
            "readings",
            "value",
            "values",
            "measured",
            "measurement",
            "the",
            "of",
            "in",
            "as",
            "at",
            "and",
            "my",
            "water",
            "tank",
            "total",
            "am",
            "pm",
            "morning",
            "evening",
            "noon",
            "night",
            "before",
            "after",
            "today",
            "amount",
            "number",
            "no",
            "w",
            "for",
            "to",
            "on",
            "by",
            "from",
            "new",
            "per",
            "units",
            "unit",
            "daily",
            "calculated",
            "corrected",
            "range",
            "lr",
            "hr");

    /** Words before "range" that tell a kit's range of measuring, not the aim. */
    private static final Set<String> RANGES = Set.of("low", "high", "full", "wide", "mid", "marine", "ultra", "short");

    static final Set<String> DOSE_WORDS = Set.of(
            "dose",
            "doses",
            "dosed",
            "dosing",
            "dosage",
            "doser",
            "pump",
            "pumps",
            "pumped",
            "supplement",
            "added",
            "add",
            "addition",
            "dosierung",
            "dosis",
            "dosering",
            "zugabe",
            "dosificacion",
            "ajout");
    private static final Set<String> MEASURES = Set.of("l", "liter", "litre", "kg", "dm3", "dm³");
    private static final Set<String> TIMES = Set.of(
            "day", "d", "dt", "h", "hr", "hour", "week", "wk", "month", "24h", "tag", "woche", "jour", "semaine", "dia",
            "semana", "dag");
    private static final Set<String> WHOLE = Set.of("tank", "volume", "total", "system", "water");
    private static final Set<String> EACH = Set.of("per", "each", "a", "/", "pro", "par", "por");
    private static final Set<String> BY_HAND =
            Set.of("manual", "manually", "hand", "oneoff", "single", "extra", "correction", "boost");

    final String plain;
    final String written;
    final List<Token> tokens;
    final List<Names.Match> tests;
    final List<Names.Match> roles;
    final List<Names.Match> derived;
    final List<Names.Match> additives;
    final List<Names.Match> tanks;
    final Optional<Names.Match> change;
    private final boolean solution;
    final Optional<Rate> rate;
    private final BitSet rateTokens = new BitSet();

    HeaderParts(String text, Vocabulary vocabulary) {
        written = text;
        plain = Plain.of(text);
        tokens = Tokens.of(plain).stream()
                .filter(t -> t.kind() != Token.Kind.LINE_END)
                .toList();
        tests = Names.all(tokens, k -> vocabulary.find(Alias.Kind.PARAMETER, k));
        roles = Names.all(tokens, k -> vocabulary.find(Alias.Kind.ROLE, k));
        derived = Names.all(tokens, k -> vocabulary.find(Alias.Kind.DERIVED, k)).stream()
                .filter(d -> tokens.size() == 1 || !HeaderUnit.ELEMENTS.contains(d.key()))
                .filter(d -> tests.isEmpty() || !ofTheTest(d))
                .toList();
        additives = Names.all(tokens, vocabulary::findAdditive);
        tanks = Names.all(tokens, vocabulary::findTank).stream()
                .filter(t -> !unitLetter(t))
                .toList();
        solution = !tests.isEmpty()
                && Names.all(tokens, k -> vocabulary.find(Alias.Kind.DOSE, k)).stream()
                        .anyMatch(d -> d.means().equals("solution"));
        change = change(vocabulary);
        rate = findRate();
    }

    /** The {@code l} of {@code mg/l} is no tank called L. */
    private boolean unitLetter(Names.Match tank) {
        boolean behind = tank.from() > 0 && per(tank.from() - 1);
        boolean unit = tank.from() > 0 && VolumeUnit.of(tank.key()).isPresent();
        return tank.key().length() == 1 && (behind || unit);
    }

    /** {@code Alkalinity (total)} is the test's own name, {@code Mg low range} the kit's. */
    private boolean ofTheTest(Names.Match derived) {
        boolean total = derived.means().equals("sum");
        boolean lowRange = (derived.key().equals("low") || derived.key().equals("high"))
                && derived.to() < tokens.size()
                && tokens.get(derived.to()).is("range");
        boolean range = derived.key().equals("range")
                && derived.from() > 0
                && RANGES.contains(tokens.get(derived.from() - 1).text());
        return total || lowRange || range || dropKit(derived) || aim(derived);
    }

    /** {@code Alk (target 8.5)}: the test, with what it should be. */
    private boolean aim(Names.Match derived) {
        return derived.means().equals("target")
                && derived.from() > 0
                && tokens.subList(derived.to(), tokens.size()).stream().anyMatch(Token::number);
    }

    /** In {@code KH drop kit} the drops are the kit's. */
    private boolean dropKit(Names.Match derived) {
        return derived.means().equals("change")
                && roles.stream().anyMatch(r -> r.means().equals("kit") && r.from() == derived.to());
    }

    /** {@code litres changed}, {@code % replaced} speak of water only beside a volume or a share. */
    private Optional<Names.Match> change(Vocabulary vocabulary) {
        List<Names.Match> words = Names.all(tokens, k -> vocabulary.find(Alias.Kind.CHANGE, k));
        Optional<Names.Match> water =
                words.stream().filter(w -> w.means().equals("water")).findFirst();
        if (water.isEmpty() && tests.isEmpty() && shareOfTank()) {
            return Optional.of(new Names.Match(0, tokens.size(), plain.strip(), "water"));
        }
        return water.or(() -> volume().isPresent()
                ? words.stream().filter(w -> w.means().equals("changed")).findFirst()
                : Optional.empty());
    }

    /** {@code % of tank}: of what else than water changed. */
    private boolean shareOfTank() {
        return tokens.size() == 3
                && tokens.get(0).is("%")
                && tokens.get(1).is("of")
                && WHOLE.contains(tokens.get(2).text());
    }

    private Optional<Rate> findRate() {
        Optional<Rate> first = Optional.empty();
        for (int i = 0; i < tokens.size(); i++) {
            int at = i;
            Rate.period(tokens, i).ifPresent(p -> rateTokens.set(at, p.end()));
            Optional<Rate> found = Rate.at(tokens, i);
            if (found.isPresent()) {
                rateTokens.set(i, found.get().end());
                first = first.or(() -> found);
            }
        }
        return first;
    }

    /** {@code Alk solution}: what is dosed, not what is tested. */
    boolean solution() {
        return solution;
    }

    boolean doseWord() {
        return tokens.stream().anyMatch(t -> DOSE_WORDS.contains(t.text()));
    }

    /** Whether a name is the mass of a unit: {@code mg} of {@code mg/L}. */
    boolean ofUnit(Names.Match name) {
        int per = name.to();
        return name.to() - name.from() == 1
                && name.key().equals("mg")
                && per + 1 < tokens.size()
                && per(per)
                && MEASURES.contains(tokens.get(per + 1).text());
    }

    private boolean per(int i) {
        return tokens.get(i).is("/") || tokens.get(i).is("per");
    }

    /** {@code V(HCl) / mL}: how much of a solution a titration took. */
    boolean titrated() {
        return tokens.size() > 2 && tokens.get(0).is("v") && tokens.get(1).is("(");
    }

    /** {@code dKH/day}, {@code d(Alk)/dt}: a rise or fall, and no volume. */
    boolean inTime() {
        for (int i = 1; i + 1 < tokens.size(); i++) {
            if (per(i) && TIMES.contains(tokens.get(i + 1).text()) && rate.isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** {@code ml per dose}, {@code mL each dose}: one of several a day. */
    boolean eachDose() {
        for (int i = 1; i < tokens.size(); i++) {
            if (tokens.get(i).is("dose") && EACH.contains(tokens.get(i - 1).text())) {
                return true;
            }
        }
        return false;
    }

    boolean byHand() {
        return tokens.stream().anyMatch(t -> BY_HAND.contains(t.text()))
                || plain.contains("one-off")
                || plain.contains("one off");
    }

    /** A volume or % that stands alone among the tokens. */
    Optional<VolumeUnit> volume() {
        // A letter in front is whose it is, where a share is written too: L WC %.
        int from = tokens.size() > 2 && tokens.get(0).is("l") && tokens.stream().anyMatch(t -> t.is("%")) ? 1 : 0;
        for (int i = from; i < tokens.size(); i++) {
            Optional<VolumeUnit> pair = i + 1 < tokens.size()
                    ? VolumeUnit.of(tokens.get(i).text() + tokens.get(i + 1).text())
                    : Optional.empty();
            String alone = tokens.get(i).text();
            Optional<VolumeUnit> unit = pair.or(() -> VolumeUnit.of(alone));
            if (unit.isPresent()) {
                return unit;
            }
        }
        return Optional.empty();
    }

    String tank() {
        return tanks.isEmpty() ? "" : tanks.get(0).means();
    }

    /** Words that none of the given spans, no filler and no tank's name explains. */
    int unexplained(List<int[]> spans) {
        int count = 0;
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            boolean counts = token.word() || token.number();
            count += counts && !explained(i, token, spans) ? 1 : 0;
        }
        return count;
    }

    private boolean explained(int i, Token token, List<int[]> spans) {
        return FILLERS.contains(token.text())
                || spans.stream().anyMatch(s -> i >= s[0] && i < s[1])
                || tanks.stream().anyMatch(t -> t.covers(i));
    }

    /** The additive's name: the keeper's own where known, else the words that are neither dose words nor units. */
    String additive() {
        if (!additives.isEmpty()) {
            return additives.get(0).means();
        }
        List<String> words = new ArrayList<>();
        int end = -1;
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            if (names(i, token)) {
                boolean glued = !words.isEmpty()
                        && (end == token.from() || end + 1 == token.from() && plain.charAt(end) == '-');
                String word = written.substring(glued ? end : token.from(), token.to());
                if (glued) {
                    words.set(words.size() - 1, words.get(words.size() - 1) + word);
                } else {
                    words.add(word);
                }
                end = token.to();
            }
        }
        return String.join(" ", words);
    }

    private boolean names(int i, Token token) {
        boolean pumpNumber = token.is("pump") && i + 1 < tokens.size() && numbersAPump(tokens.get(i + 1));
        boolean said = (DOSE_WORDS.contains(token.text()) && !pumpNumber)
                || BY_HAND.contains(token.text())
                || FILLERS.contains(token.text())
                || VolumeUnit.of(token.text()).isPresent();
        return (token.word() || token.number())
                && !said
                && !rateTokens.get(i)
                && tanks.stream().noneMatch(t -> t.covers(i));
    }

    private static boolean numbersAPump(Token next) {
        return next.number() || next.text().length() == 1 && next.word();
    }
}
