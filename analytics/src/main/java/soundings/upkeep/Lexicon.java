package soundings.upkeep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import soundings.chemistry.Alias;
import soundings.chemistry.Names;
import soundings.chemistry.Reference;

/** Known words found in a text, the longest first, whatever their ending: {@code rattling} meets {@code rattle}. */
final class Lexicon {
    private static final Pattern BREAKS = Pattern.compile("[^\\p{L}\\p{Nd}'/-]+");
    private static final List<String> ENDINGS = List.of("ing", "ed", "es", "s", "y", "e");

    private final Map<String, List<Entry>> byFirst = new HashMap<>();

    private Lexicon() {}

    /** @param loose other endings of its words mean the same */
    private record Entry(List<String> stems, String exact, String means, boolean loose) {}

    /** Words {@code from} to {@code to} (one past the last) stand for {@code means}. */
    record Hit(int from, int to, String means) {}

    /** @param loose whether other endings of a word of this meaning count */
    static Lexicon of(Reference reference, Alias.Kind kind, Predicate<String> loose) {
        Lexicon lexicon = new Lexicon();
        reference.aliases(kind).forEach(a -> lexicon.add(a.text(), a.means(), loose.test(a.means())));
        lexicon.byFirst
                .values()
                .forEach(entries -> entries.sort(
                        Comparator.comparingInt((Entry e) -> e.stems().size()).reversed()));
        return lexicon;
    }

    private void add(String text, String means, boolean loose) {
        List<String> words = words(text);
        List<String> stems = words.stream().map(Lexicon::stem).toList();
        byFirst.computeIfAbsent(stems.get(0), s -> new ArrayList<>())
                .add(new Entry(stems, String.join(" ", words), means, loose));
    }

    static List<String> words(String text) {
        return BREAKS.splitAsStream(Names.fold(text))
                .map(w -> w.replaceAll("^[-'/]+|[-'/]+$", ""))
                .filter(w -> !w.isEmpty())
                .toList();
    }

    /** Left to right, none within another. A word as listed goes before one that only shares its stem. */
    List<Hit> find(List<String> words) {
        List<Hit> hits = new ArrayList<>();
        int i = 0;
        while (i < words.size()) {
            List<Hit> here = at(words, i);
            hits.addAll(here);
            i = here.isEmpty() ? i + 1 : here.get(0).to();
        }
        return hits;
    }

    private List<Hit> at(List<String> words, int from) {
        List<Entry> fitting = byFirst.getOrDefault(stem(words.get(from)), List.of()).stream()
                .filter(e -> fits(e, words, from))
                .toList();
        int longest = fitting.stream().mapToInt(e -> e.stems().size()).max().orElse(0);
        String written = String.join(" ", words.subList(from, from + longest));
        return fitting.stream()
                .filter(e -> e.stems().size() == longest)
                .max(Comparator.comparing(e -> e.exact().equals(written)))
                .map(e -> List.of(new Hit(from, from + longest, e.means())))
                .orElse(List.of());
    }

    private static boolean fits(Entry entry, List<String> words, int from) {
        int size = entry.stems().size();
        return from + size <= words.size()
                && (entry.loose()
                        || String.join(" ", words.subList(from, from + size)).equals(entry.exact()))
                && words.subList(from, from + size).stream()
                        .map(Lexicon::stem)
                        .toList()
                        .equals(entry.stems());
    }

    /** A word without its English ending and doubled last letter; at least three letters stay. */
    static String stem(String word) {
        String bare = ENDINGS.stream()
                .filter(e -> word.endsWith(e) && word.length() - e.length() >= 3)
                .findFirst()
                .map(e -> word.substring(0, word.length() - e.length()))
                .orElse(word);
        int last = bare.length() - 1;
        return last >= 3 && bare.charAt(last) == bare.charAt(last - 1) ? bare.substring(0, last) : bare;
    }
}
