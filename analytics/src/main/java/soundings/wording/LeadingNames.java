package soundings.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import soundings.chemistry.Alias;

/** The words that lead the results of a text, {@code Lagoon alk 8.2}, {@code Pier: Ca 410}: perhaps the names of tanks. */
public final class LeadingNames {
    private static final int MOST_WORDS = 3;
    private static final Set<String> MARKS = Set.of(":", "-");
    private static final Set<String> ARTICLES = Set.of("the", "our", "my");

    private LeadingNames() {}

    /** As written, in the order of the text. Words that mean something else here are no names. */
    public static List<String> in(String text, DecimalMark mark, Vocabulary vocabulary) {
        Clauses clauses = new Clauses(text, mark, vocabulary);
        List<String> names = new ArrayList<>();
        boolean starts = true;
        for (int i = 0; i < clauses.size(); i++) {
            if (starts) {
                int from = clauses.pass(i, ARTICLES, 1);
                int end = end(clauses, from);
                if (end > from) {
                    names.add(clauses.written(from, end));
                }
            }
            starts = clauses.stop(i) || clauses.and(i);
        }
        return names;
    }

    /** One past the last word of a name that a result stands behind; {@code from} where there is none. */
    private static int end(Clauses text, int from) {
        for (int i = from; i <= from + MOST_WORDS && i < text.size(); i++) {
            int test = text.pass(i, MARKS, 1);
            if (i > from && TestPhrase.leads(text, test)) {
                return i;
            }
            boolean word = text.tokens.get(i).word() || i > from && text.number(i);
            if (!word || means(text, i)) {
                return from;
            }
        }
        return from;
    }

    private static boolean means(Clauses text, int i) {
        String word = text.tokens.get(i).text();
        return word.length() < 2 && !text.number(i)
                || text.and(i)
                || Hedges.word(text, i)
                || TestPhrase.saysTest(word)
                || RateWords.LEAD.contains(word)
                || RateWords.STOPPED.contains(word)
                || MonthNames.weekday(word).isPresent()
                || Dates.month(word).isPresent()
                || text.test(i).isPresent()
                || text.additive(i).isPresent()
                || text.vocabulary.find(Alias.Kind.EVENT, word).isPresent();
    }
}
