package soundings.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import soundings.chemistry.Names;
import soundings.setup.Setup;

/** The tanks' names, and every other way each is written. */
final class Tanks {
    private static final Pattern SIGNS = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final Pattern KIND = Pattern.compile("\\b(the|tank|tanks|aquarium|system)\\b");
    private static final Pattern SPACES = Pattern.compile(" +");
    private static final Pattern NUMBER = Pattern.compile("[0-9 ]+");

    private final Map<String, String> names;
    private final List<String> own;
    /** By text: a log says the same few names over and over. */
    private final Map<String, Optional<String>> known = new HashMap<>();

    private Tanks(Map<String, String> names, List<String> own) {
        this.names = names;
        this.own = own;
    }

    static Tanks of(Setup setup) {
        Map<String, String> names = new LinkedHashMap<>();
        for (Setup.Tank tank : setup.tanks()) {
            names.put(key(tank.name()), tank.name());
            tank.writtenAs().forEach(w -> names.putIfAbsent(key(w), tank.name()));
        }
        names.remove("");
        return new Tanks(names, setup.tanks().stream().map(Setup.Tank::name).toList());
    }

    /** These and the names met in the log, the most frequent spelling of each first. */
    Tanks with(Map<String, Integer> met) {
        Map<String, String> all = new LinkedHashMap<>(names);
        List<Map.Entry<String, Integer>> byCount = new ArrayList<>(met.entrySet());
        byCount.sort(Map.Entry.<String, Integer>comparingByValue().reversed());
        for (Map.Entry<String, Integer> name : byCount) {
            String key = key(name.getKey());
            if (!key.isEmpty() && near(all, key).isEmpty()) {
                all.put(key, name.getKey().strip());
            }
        }
        return new Tanks(all, own);
    }

    List<String> setUp() {
        return own;
    }

    /** Every tank's name, in the order known. */
    List<String> all() {
        return names.values().stream().distinct().toList();
    }

    /** The tank whose name or other spelling this text is, signs, case and a mistyped letter aside. */
    Optional<String> findKnown(String text) {
        return known.computeIfAbsent(text, t -> near(names, key(t)));
    }

    /** The tank whose name or other spelling this text is exactly. */
    Optional<String> findNamed(String text) {
        return Optional.ofNullable(names.get(key(text)));
    }

    private static Optional<String> near(Map<String, String> names, String key) {
        if (key.isEmpty()) {
            return Optional.empty();
        }
        String exact = names.get(key);
        if (exact != null) {
            return Optional.of(exact);
        }
        return names.entrySet().stream()
                .filter(e -> key.length() >= 5 && e.getKey().length() >= 5 && !numbered(key, e.getKey()))
                .filter(e -> Spelling.differByOne(key, e.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** {@code tank 1} and {@code tank 2} differ by a sign and are two tanks. */
    private static boolean numbered(String one, String other) {
        return !digits(one).equals(digits(other));
    }

    private static String digits(String text) {
        return text.replaceAll("[^0-9]", "");
    }

    /** The one tank whose name stands in a longer text, such as a title: the longest such name where one holds another. */
    Optional<String> findIn(String text) {
        String rest = " " + key(text) + " ";
        Set<String> found = new HashSet<>();
        for (String key : longestFirst()) {
            if (rest.contains(" " + key + " ")) {
                found.add(names.get(key));
                rest = rest.replace(" " + key + " ", "  ");
            }
        }
        return found.size() == 1 ? found.stream().findFirst() : Optional.empty();
    }

    private List<String> longestFirst() {
        List<String> keys = new ArrayList<>(names.keySet());
        keys.sort(Comparator.comparingInt(String::length).reversed());
        return keys;
    }

    /** Whether a name stands in a longer text, signs and case aside. */
    static boolean standsIn(String name, String text) {
        return (" " + key(text) + " ").contains(" " + key(name) + " ");
    }

    /** Whether the word tank, or another word for one, stands in the text. */
    static boolean saysKind(String text) {
        return KIND.matcher(Names.fold(text)).find();
    }

    /** Letters and digits only, the word "tank" left out unless it is all there is. */
    static String key(String text) {
        String plain = SIGNS.matcher(Names.fold(text)).replaceAll(" ").strip();
        String bare = SPACES.matcher(KIND.matcher(plain).replaceAll(" "))
                .replaceAll(" ")
                .strip();
        boolean telling = bare.length() > 1 && !NUMBER.matcher(bare).matches();
        return telling ? bare : plain;
    }
}
