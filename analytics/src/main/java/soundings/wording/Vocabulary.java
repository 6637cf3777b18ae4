package soundings.wording;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import soundings.chemistry.Alias;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;

/** Every word that has a meaning here: the reference's aliases and the keeper's own names, ready to be looked up. */
public final class Vocabulary {
    /** The longest name looked for, in words. */
    static final int MOST_WORDS = 6;

    /** A unit's spelling and the parameter it belongs to, empty for several. */
    record Unit(String spelling, String parameter) {}

    private final Map<Alias.Kind, Map<String, String>> words = new HashMap<>();
    private final Map<String, List<Unit>> units = new HashMap<>();
    /** What {@link #findUnit} found before; only units that are known stand here, so it stays small. */
    private final Map<String, Optional<String>> resolved = new ConcurrentHashMap<>();

    private final Map<String, String> additives;
    private final Map<String, String> tanks;
    private final Reference reference;

    private Vocabulary(Reference reference, List<Named> additives, List<Named> tanks) {
        this.reference = reference;
        this.additives = names(additives);
        this.tanks = names(tanks);
        for (Alias.Kind kind : Alias.Kind.values()) {
            Map<String, String> ofKind = new HashMap<>();
            reference.aliases(kind).forEach(a -> ofKind.putIfAbsent(key(kind, a.text()), a.means()));
            words.put(kind, ofKind);
        }
        reference.parameters().forEach(this::addNames);
        reference.parameters().forEach(this::addScales);
        reference.aliases(Alias.Kind.UNIT).forEach(a -> addUnit(a.text(), a.scope()));
    }

    public static Vocabulary of(Reference reference) {
        return new Vocabulary(reference, List.of(), List.of());
    }

    public static Vocabulary of(Reference reference, List<Named> additives, List<Named> tanks) {
        return new Vocabulary(reference, additives, tanks);
    }

    private Vocabulary(Vocabulary other, Map<String, String> additives, Map<String, String> tanks) {
        this.reference = other.reference;
        this.additives = additives;
        this.tanks = tanks;
        this.words.putAll(other.words);
        this.units.putAll(other.units);
    }

    /** The same, knowing these names too; the keeper's own have the first word. */
    public Vocabulary with(List<Named> moreAdditives, List<Named> moreTanks) {
        return new Vocabulary(this, joined(additives, moreAdditives), joined(tanks, moreTanks));
    }

    private static Map<String, String> joined(Map<String, String> known, List<Named> more) {
        Map<String, String> all = new HashMap<>(known);
        names(more).forEach(all::putIfAbsent);
        return Map.copyOf(all);
    }

    private static Map<String, String> names(List<Named> named) {
        Map<String, String> byWord = new HashMap<>();
        for (Named one : named) {
            byWord.put(key(one.name()), one.name());
            one.writtenAs().forEach(w -> byWord.putIfAbsent(key(w), one.name()));
        }
        byWord.remove("");
        return Map.copyOf(byWord);
    }

    private void addNames(Parameter parameter) {
        Map<String, String> known = words(Alias.Kind.PARAMETER);
        known.putIfAbsent(key(parameter.id()), parameter.id());
        known.putIfAbsent(key(parameter.name()), parameter.id());
        known.putIfAbsent(key(parameter.symbol()), parameter.id());
        known.remove("");
    }

    private void addScales(Parameter parameter) {
        for (Scale scale : reference.scales(parameter)) {
            addUnit(scale.id(), parameter.id());
            addUnit(scale.label(), parameter.id());
        }
    }

    private void addUnit(String spelling, String parameter) {
        List<Unit> same = units.computeIfAbsent(squeezed(Plain.of(spelling)), k -> new ArrayList<>());
        Unit unit = new Unit(spelling, parameter);
        if (!same.contains(unit)) {
            same.add(unit);
        }
    }

    Reference reference() {
        return reference;
    }

    private Map<String, String> words(Alias.Kind kind) {
        return words.getOrDefault(kind, Map.of());
    }

    /** @param key as {@link #key(String)} */
    Optional<String> find(Alias.Kind kind, String key) {
        return Optional.ofNullable(words(kind).get(key));
    }

    Optional<String> findAdditive(String key) {
        return Optional.ofNullable(additives.get(key));
    }

    Optional<String> findTank(String key) {
        return Optional.ofNullable(tanks.get(key));
    }

    /** Whether the text, spaces left aside, is a unit of any parameter. */
    boolean knowsUnit(String plain) {
        return units.containsKey(squeezed(plain));
    }

    /** The parameters this unit can belong to; an empty name means any. */
    List<Unit> units(String plain) {
        return units.getOrDefault(squeezed(plain), List.of());
    }

    /** The unit in a spelling the reference resolves, with this parameter. */
    Optional<String> findUnit(String plain, String parameter) {
        List<Unit> known = units(plain);
        return known.isEmpty()
                ? Optional.empty()
                : resolved.computeIfAbsent(squeezed(plain) + " " + parameter, k -> resolve(known, parameter));
    }

    private Optional<String> resolve(List<Unit> known, String parameter) {
        return known.stream()
                .filter(u -> u.parameter().isEmpty() || u.parameter().equals(parameter))
                .filter(u -> resolves(u, parameter))
                .map(Unit::spelling)
                .findFirst();
    }

    /** Whether two spellings of a unit lead to the same scale of a parameter. */
    boolean sameScale(String parameter, String unit, String other) {
        return reference
                .findParameter(parameter)
                .filter(p -> reference.findScale(p, unit).equals(reference.findScale(p, other)))
                .isPresent();
    }

    private boolean resolves(Unit unit, String parameter) {
        return reference
                .findParameter(parameter)
                .flatMap(p -> reference.findScale(p, unit.spelling()))
                .isPresent();
    }

    /** A nothing-word is matched whole and with its signs ({@code n/a}); all others by their words. */
    private static String key(Alias.Kind kind, String text) {
        return kind == Alias.Kind.NOTHING ? Plain.of(text).strip() : key(text);
    }

    /** Whether a label names the size of a tank. */
    public boolean tankSize(String text) {
        return find(Alias.Kind.TITLE, key(text)).filter("size"::equals).isPresent()
                || find(Alias.Kind.ROLE, key(text)).filter("size"::equals).isPresent();
    }

    /** What a word of a title means. */
    public Optional<String> titleWord(String word) {
        return find(Alias.Kind.TITLE, key(word));
    }

    /** The words of a name with one space between them, signs left out. */
    static String key(String text) {
        StringBuilder key = new StringBuilder();
        for (Token token : Tokens.of(Plain.of(text))) {
            if (token.word() || token.number()) {
                key.append(key.isEmpty() ? "" : " ").append(token.text());
            }
        }
        return key.toString();
    }

    /** A unit without its spaces, brackets and dots, powers written plainly: {@code mg l⁻¹} gives {@code mg/l}. */
    static String squeezed(String plain) {
        StringBuilder rest = new StringBuilder();
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            if (" .·[](){}_\u00a0".indexOf(c) < 0 && c > ' ') {
                rest.append(c);
            }
        }
        String unit = rest.toString();
        return unit.endsWith("l-1") || unit.endsWith("l-¹") ? unit.substring(0, unit.length() - 3) + "/l" : unit;
    }
}
