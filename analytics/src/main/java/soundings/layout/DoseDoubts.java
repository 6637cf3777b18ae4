package soundings.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import soundings.log.DoseRate;
import soundings.wording.DoseSubject;

/** What was perhaps said of a dose and not understood: until the next plain dose of the same, no other is told by the one before. */
final class DoseDoubts {
    /** @param entries how many entries the ledger held then */
    private record Doubt(String tank, Set<String> subjects, int entries) {}

    private final Ledger ledger;
    private final List<Doubt> doubts = new ArrayList<>();

    DoseDoubts(Ledger ledger) {
        this.ledger = ledger;
    }

    /** @param subjects what it may be about; {@link DoseSubject#ANY} for every dose of the tank */
    void add(String tank, Set<String> subjects) {
        if (!subjects.isEmpty()) {
            doubts.add(new Doubt(tank, subjects, ledger.entries().size()));
        }
    }

    /** Whether nothing was left open since this dose. */
    boolean none(DoseRate since, String subject) {
        int index = ledger.entries().lastIndexOf(since);
        return doubts.stream()
                .filter(d -> d.entries() > index && d.tank().equals(since.tank()))
                .noneMatch(d -> d.subjects().contains(subject) || d.subjects().contains(DoseSubject.ANY));
    }
}
