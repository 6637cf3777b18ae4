package soundings.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import soundings.chemistry.Alias;
import soundings.chemistry.Reference;
import soundings.history.Note;
import soundings.history.TankHistory;
import soundings.log.Remark;
import soundings.upkeep.JobWords.Says;
import soundings.upkeep.Lexicon.Hit;

/** The losses of animals a tank's notes tell of: one a cell, and an animal missing, still missing and found dead is one. */
final class Losses {
    /** A note on an animal that was missed longer ago than this is of another one; common practice, no source. */
    private static final int SAME_DAYS = 30;

    /** A word that denies a loss stands at most so many words before it. */
    private static final int NEAR = 2;

    private final JobWords jobs;
    private final Lexicon events;
    private final Lexicon words;

    Losses(Reference reference) {
        this.jobs = new JobWords(reference);
        this.events = Lexicon.of(reference, Alias.Kind.EVENT, means -> false);
        this.words = Lexicon.of(reference, Alias.Kind.LOSS, means -> false);
    }

    /** The notes of one loss, oldest first. */
    List<List<Note>> of(TankHistory tank, LocalDate asOf) {
        List<Remark> lost = tank.remarks().stream()
                .filter(r -> r.kind().equals("loss") && !r.date().isAfter(asOf) && isOfAnimals(r.text()))
                .toList();
        List<List<Note>> losses = new ArrayList<>();
        for (Note note : Note.of(lost)) {
            losses.stream()
                    .filter(l -> isSame(l.get(l.size() - 1), note))
                    .reduce((a, b) -> b)
                    .ifPresentOrElse(l -> l.add(note), () -> losses.add(new ArrayList<>(List.of(note))));
        }
        return losses.stream().map(List::copyOf).toList();
    }

    /** {@code pump dead} is a job, {@code no losses} and {@code not a dead shrimp} are none, and a lost test sheet is no animal. */
    private boolean isOfAnimals(String text) {
        List<String> spoken = Lexicon.words(text);
        List<Hit> hits = words.find(spoken);
        boolean told = events.find(spoken).stream()
                .filter(e -> e.means().equals("loss"))
                .anyMatch(e -> hits.stream().noneMatch(h -> denies(h, e)));
        return told
                && hits.stream().noneMatch(h -> h.means().equals("other"))
                && jobs.read(text).stream()
                        .noneMatch(h -> h.says() == Says.TO_MEND && !h.parts().isEmpty());
    }

    private static boolean denies(Hit hit, Hit loss) {
        return hit.means().equals("not") && hit.to() <= loss.from() && loss.from() - hit.to() <= NEAR;
    }

    private boolean isSame(Note earlier, Note later) {
        Set<String> both = animals(earlier);
        both.retainAll(animals(later));
        return !both.isEmpty()
                && !later.on().isAfter(earlier.on().plusDays(SAME_DAYS))
                && (says(earlier, "missing") || says(later, "again"));
    }

    private boolean says(Note note, String means) {
        return words.find(Lexicon.words(note.text())).stream()
                .anyMatch(h -> h.means().equals(means));
    }

    /** Stems of the words that may name the animal. */
    private Set<String> animals(Note note) {
        List<String> spoken = Lexicon.words(note.text());
        List<Hit> known = new ArrayList<>(words.find(spoken));
        known.addAll(events.find(spoken));
        Set<String> rest = new HashSet<>();
        for (int i = 0; i < spoken.size(); i++) {
            int at = i;
            boolean plain = known.stream().noneMatch(h -> h.from() <= at && at < h.to());
            if (plain && Character.isLetter(spoken.get(i).charAt(0)) && !jobs.isSmall(spoken.get(i))) {
                rest.add(Lexicon.stem(spoken.get(i)));
            }
        }
        return rest;
    }
}
