package soundings.upkeep;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import soundings.chemistry.Alias;
import soundings.chemistry.Part;
import soundings.chemistry.Reference;
import soundings.upkeep.Lexicon.Hit;

/** What a remark says of repairs, clause by clause: something to mend, something mended, or neither. */
final class JobWords {
    /** How many words may stand between a sign or a wish and the piece of equipment it is about. */
    private static final int NEAR = 4;

    /** A clause of so few telling words is about the equipment named before it. */
    private static final int FEW = 2;

    private static final Pattern CLAUSES =
            Pattern.compile("[.;,!?\\n|()]+|\\s+[-\u2013\u2014/]+\\s+|\\s(?:but|however|aber|mais|pero|maar)\\s");

    private final Lexicon jobs;
    private final Lexicon parts;

    /** Words for one of several pieces: a leak, a pump. */
    private final Set<String> general;

    JobWords(Reference reference) {
        this.jobs = Lexicon.of(reference, Alias.Kind.JOB, means -> means.equals("fault") || means.equals("sign"));
        this.parts = Lexicon.of(reference, Alias.Kind.PART, means -> true);
        this.general =
                reference.parts().stream().filter(Part::general).map(Part::id).collect(Collectors.toSet());
    }

    /** What one clause says. */
    enum Says {
        TO_MEND,
        MENDED,
        /** Names a piece of equipment again, and no more. */
        AGAIN,
        NOTHING
    }

    /**
     * @param parts ids of the equipment it is about
     * @param words stems that tell it from other jobs
     * @param clause as written
     */
    record Heard(Says says, Set<String> parts, Set<String> words, String clause) {
        Heard {
            parts = Set.copyOf(parts);
            words = Set.copyOf(words);
        }
    }

    /**
     * What the note tells, in order. A clause that names no equipment, or none of its own ({@code leaks a drop}), is about what was named before it ({@code heater clicks, look at
     * it}), a deed also about what is named behind it ({@code gasket fitted, skimmer dry now}).
     */
    List<Heard> read(String text) {
        List<Heard> heard = new ArrayList<>();
        Set<String> named = new HashSet<>();
        Set<String> words = new HashSet<>();
        for (String clause : CLAUSES.split(" " + text + " ")) {
            Heard one = clause(clause, !named.isEmpty());
            named.addAll(one.parts());
            words.addAll(one.words());
            if (one.says() != Says.NOTHING) {
                boolean own = !one.parts().isEmpty() && (isSpecific(one.parts()) || !isSpecific(named));
                heard.add(new Heard(one.says(), own ? one.parts() : named, own ? one.words() : words, clause.strip()));
            }
        }
        return heard.stream()
                .map(h -> h.says() == Says.MENDED && h.parts().isEmpty()
                        ? new Heard(h.says(), named, words, h.clause())
                        : h)
                .toList();
    }

    private boolean isSpecific(Set<String> parts) {
        return !general.containsAll(parts);
    }

    /** Equipment named and the words that carry meaning, of a job as the keeper calls it in the setup workbook. */
    Heard named(String text) {
        Heard heard = clause(text, false);
        return new Heard(Says.TO_MEND, heard.parts(), heard.words(), text);
    }

    /** @param named whether the note has named equipment before */
    private Heard clause(String clause, boolean named) {
        List<String> words = Lexicon.words(clause);
        List<Hit> pieces = parts.find(words);
        List<Hit> cues = jobs.find(words).stream()
                .filter(c -> pieces.stream()
                        .noneMatch(p -> p.to() - p.from() > 1 && c.from() >= p.from() && c.to() <= p.to()))
                .toList();
        Set<String> about = new HashSet<>();
        pieces.forEach(p -> about.add(p.means()));
        Set<String> telling = telling(words, cues);
        Says alone = says(cues, pieces);
        Says says =
                alone == Says.NOTHING && (named || !pieces.isEmpty()) ? ofNamed(cues, pieces, telling.size()) : alone;
        return new Heard(says, about, telling, clause);
    }

    /** What a clause says that means little by itself, where equipment was named: {@code look at it}, {@code shaft worn}. */
    private static Says ofNamed(List<Hit> cues, List<Hit> pieces, int telling) {
        boolean undone = first(cues, "done").filter(d -> undone(cues, d)).isPresent();
        boolean wanted = has(cues, "wanted") && (has(cues, "it") || telling == 0);
        boolean sign = has(cues, "sign") && telling <= FEW;
        if (undone || (pieces.isEmpty() && (wanted || sign))) {
            return Says.TO_MEND;
        }
        return has(cues, "again") && !pieces.isEmpty() ? Says.AGAIN : Says.NOTHING;
    }

    private static Says says(List<Hit> cues, List<Hit> pieces) {
        boolean ahead = has(cues, "ahead") || has(cues, "wanted");
        Optional<Hit> fault = first(cues, "fault");
        boolean denied = fault.filter(f -> denied(cues, f)).isPresent();
        boolean done = first(cues, "done").filter(d -> !denied(cues, d)).isPresent();
        boolean fresh = fault.isEmpty() && !has(cues, "sign") && isNew(cues, pieces);
        if ((done || denied || fresh) && !ahead) {
            return Says.MENDED;
        }
        boolean toMend = (fault.isPresent() && !denied)
                || has(cues, "later")
                || near(cues, pieces, "sign", NEAR)
                || near(cues, pieces, "wanted", NEAR)
                || near(cues, pieces, "dead", 1);
        return toMend ? Says.TO_MEND : Says.NOTHING;
    }

    /** {@code new heater}: the old one is gone. */
    private static boolean isNew(List<Hit> cues, List<Hit> pieces) {
        return cues.stream()
                .filter(c -> c.means().equals("new"))
                .anyMatch(c -> pieces.stream().anyMatch(p -> p.from() == c.to()));
    }

    private static boolean denied(List<Hit> cues, Hit hit) {
        return cues.stream().anyMatch(c -> c.means().equals("not") && c.to() <= hit.from() && hit.from() - c.to() <= 1);
    }

    /** {@code not fitted yet}, {@code still not done}. */
    private static boolean undone(List<Hit> cues, Hit done) {
        return denied(cues, done)
                || cues.stream().anyMatch(c -> c.means().equals("ahead") && c.to() == done.from() && has(cues, "not"));
    }

    private static boolean near(List<Hit> cues, List<Hit> pieces, String means, int most) {
        return cues.stream()
                .filter(c -> c.means().equals(means))
                .anyMatch(c -> !denied(cues, c) && pieces.stream().anyMatch(p -> between(c, p) <= most));
    }

    private static int between(Hit one, Hit other) {
        return Math.max(0, Math.max(other.from() - one.to(), one.from() - other.to()));
    }

    private static boolean has(List<Hit> cues, String means) {
        return first(cues, means).isPresent();
    }

    private static Optional<Hit> first(List<Hit> cues, String means) {
        return cues.stream().filter(c -> c.means().equals(means)).findFirst();
    }

    /** A word that carries no meaning of its own. */
    boolean isSmall(String word) {
        return jobs.find(List.of(word)).stream().anyMatch(h -> h.means().equals("small"));
    }

    /** Stems of all words but those that only say that there is a job, and numbers. */
    private static Set<String> telling(List<String> words, List<Hit> cues) {
        Set<String> telling = new HashSet<>();
        for (int i = 0; i < words.size(); i++) {
            int at = i;
            boolean meaning = cues.stream()
                    .filter(c -> c.from() <= at && at < c.to())
                    .allMatch(c -> c.means().equals("fault") || c.means().equals("sign"));
            if (meaning && Character.isLetter(words.get(i).charAt(0))) {
                telling.add(Lexicon.stem(words.get(i)));
            }
        }
        return telling;
    }
}
