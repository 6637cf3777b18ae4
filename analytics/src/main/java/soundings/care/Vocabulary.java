package soundings.care;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import soundings.chemistry.Alias;
import soundings.chemistry.Names;
import soundings.chemistry.Reference;
import soundings.history.Note;

/**
 * The words of {@code words.csv}, kind CARE, as patterns over a folded note: signs of illness, their absence, doses of a medicine, the
 * end of a course, a challenge dose. A new language is rows there and nothing here.
 */
final class Vocabulary {
    /** At most two plain words between two that belong together. */
    private static final String FEW = "(?:\\p{L}+ ){0,2}?";

    final Pattern sign;
    final Pattern signFree;
    final Pattern countBefore;
    final Pattern countBehind;
    private final Pattern onlyClear;
    final Pattern given;
    private final Pattern course;
    final Pattern notGiven;
    final Pattern ended;
    final Pattern day;
    final Pattern challenge;
    private final Pattern isGone;
    private final Pattern water;
    final Pattern clauses;
    private final Pattern unsaid;

    Vocabulary(Reference reference) {
        String signs = words(reference, "sign");
        String not = words(reference, "not") + "|" + words(reference, "without");
        String gone = words(reference, "gone");
        String links = "(?:" + words(reference, "link") + " ){0,2}";
        String treatment = words(reference, "course");
        String stopped = words(reference, "stopped");
        sign = whole(signs);
        signFree = Pattern.compile("\\b(?:(?:" + not + "|0) (?:\\p{L}+ ){0,3}?" + signs + "|" + signs + "(?:[- ]?"
                + words(reference, "free") + "| " + links + gone + ")|" + words(reference, "allClear") + ")\\b");
        countBefore = Pattern.compile("(?<![\\d.,])(\\d{1,3}) " + FEW + signs + "\\b");
        countBehind = Pattern.compile(
                "\\b" + signs + " ?[:=x]? ?(\\d{1,3})(?![\\d.,]* ?(?:mg|g|ml|l|%|h|am|pm|uhr|\u00b0)\\b)(?!\\d)"
                        + "|\\b" + signs + " ?[,;] ?(\\d{1,3})(?= ?(?:$|[;,.]))"
                        + "|\\b" + signs + "(?: \\p{L}+){0,3}[,;]? (\\d{1,3}) " + words(reference, "counted") + "\\b");
        onlyClear =
                Pattern.compile("(?:^|[;,.] ?)(?:\\p{L}+ ){0,2}?" + words(reference, "clear") + "(?= ?(?:$|[;,.!]))");
        course = whole(treatment);
        given = Pattern.compile("\\b(?:re-?|nach)?" + words(reference, "given") + "\\b");
        notGiven = Pattern.compile("\\b(?:" + words(reference, "not") + "|" + words(reference, "ahead") + "|"
                + words(reference, "unsaid") + ")\\b|\\?");
        ended = Pattern.compile("\\b" + treatment + " " + links + "(?:" + stopped + "|" + words(reference, "over")
                + ")\\b|\\b" + stopped + " " + links + treatment + "\\b");
        day = Pattern.compile("\\b" + words(reference, "day") + " ?#? ?(\\d{1,3})\\b(?! ?(?:old|s\\b))");
        challenge = Pattern.compile("\\b" + words(reference, "challenge"));
        isGone = whole(gone);
        water = whole(words(reference, "water"));
        unsaid = whole(words(reference, "unsaid"));
        clauses = Pattern.compile("[;.!\\n](?=\\s|$)|(?i)\\b" + words(reference, "then") + "\\b");
    }

    /** Not of one that is gone, or still to come. */
    boolean speaksOfChallenge(String text) {
        String plain = folded(text);
        return challenge.matcher(plain).find()
                && !notGiven.matcher(plain).find()
                && !isGone.matcher(plain).find();
    }

    /** Without the clauses that tell of what may or shall be: {@code back on the 10th if no spots}. */
    String told(String text) {
        return clauses.splitAsStream(text)
                .filter(c -> !unsaid.matcher(folded(c)).find())
                .collect(Collectors.joining("; "));
    }

    boolean speaksOfTreatment(Note note) {
        return note.kinds().contains("treatment")
                || course.matcher(folded(note.text())).find();
    }

    /** Nothing is the matter with the animal: words for none of a sign, or a clause that only says clear; not the water. */
    boolean speaksOfNone(String folded) {
        Matcher clear = onlyClear.matcher(folded);
        return clear.find() && !water.matcher(clear.group()).find();
    }

    private static Pattern whole(String words) {
        return Pattern.compile("\\b" + words + "\\b");
    }

    /** All spellings of one meaning, the longest first, so that none stops a longer one. */
    private static String words(Reference reference, String means) {
        return reference.aliases(Alias.Kind.CARE).stream()
                .filter(a -> a.means().equals(means))
                .map(Alias::text)
                .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                .map(Pattern::quote)
                .collect(Collectors.collectingAndThen(Collectors.joining("|", "(?:", ")"), Vocabulary::present));
    }

    /** A meaning without words is never met. */
    private static String present(String words) {
        return words.equals("(?:)") ? "(?!)" : words;
    }

    static String folded(String text) {
        return Names.fold(text);
    }
}
