package soundings.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.chemistry.Part;
import soundings.chemistry.Part.Harm;
import soundings.log.AsWritten;

/** A job while its notes are gathered. */
final class JobDraft {
    private static final Comparator<Part> WORST =
            Comparator.comparing(Part::harm).thenComparing(Part::general).thenComparing(Part::id);

    private final String tank;
    private final List<Job.Note> notes = new ArrayList<>();
    private final Set<String> parts = new HashSet<>();
    private final Set<String> words = new HashSet<>();
    private Optional<LocalDate> noticed = Optional.empty();
    private Optional<Harm> statedHarm = Optional.empty();
    private String statedRisk = "";
    private boolean open = true;
    private Optional<LocalDate> done = Optional.empty();
    private Optional<Undated> undated = Optional.empty();

    /** A row of the setup workbook without a day. */
    private record Undated(String text, AsWritten at) {}

    JobDraft(String tank) {
        this.tank = tank;
    }

    String tank() {
        return tank;
    }

    boolean open() {
        return open;
    }

    boolean openOn(LocalDate day) {
        return open || done.filter(d -> d.isAfter(day)).isPresent();
    }

    void note(Optional<LocalDate> on, String text, AsWritten at, JobWords.Heard heard) {
        parts.addAll(heard.parts());
        words.addAll(heard.words());
        if (notes.stream().noneMatch(n -> n.at().equals(at))) {
            on.ifPresent(day -> notes.add(new Job.Note(day, text, at)));
        }
        noticed = Stream.concat(noticed.stream(), on.stream()).min(Comparator.naturalOrder());
        if (on.isEmpty() && notes.isEmpty()) {
            undated = Optional.of(new Undated(text, at));
        }
    }

    void atRisk(Optional<Harm> harm, String risk) {
        statedHarm = harm;
        statedRisk = risk;
    }

    void close(Optional<LocalDate> on) {
        open = false;
        done = on;
    }

    /** How well words fit this job: 0 not at all, else the share of the shorter one's words that the other has too. */
    double fit(JobWords.Heard heard, Function<String, Part> part) {
        Set<String> mine = specific(parts, part);
        Set<String> theirs = specific(heard.parts(), part);
        double shared = shared(words, heard.words());
        if (!mine.isEmpty() && !theirs.isEmpty()) {
            return mine.stream().anyMatch(theirs::contains) ? 1 + shared : 0;
        }
        return shared;
    }

    private static Set<String> specific(Set<String> ids, Function<String, Part> part) {
        Set<String> specific = new HashSet<>(ids);
        specific.removeIf(id -> part.apply(id).general());
        return specific;
    }

    static double shared(Set<String> one, Set<String> other) {
        int least = Math.min(one.size(), other.size());
        Set<String> both = new HashSet<>(one);
        both.retainAll(other);
        return least == 0 ? 0 : (double) both.size() / least;
    }

    Job job(LocalDate asOf, Function<String, Part> part) {
        Optional<Part> worst = parts.stream().map(part).min(WORST);
        String shock = parts.stream()
                .map(part)
                .filter(p -> p.harm() == Harm.FIRE && !worst.equals(Optional.of(p)))
                .findFirst()
                .map(p -> "; besides, " + p.risk())
                .orElse("");
        boolean isOpen = openOn(asOf);
        return new Job(
                tank,
                notes.isEmpty()
                        ? undated.map(Undated::text).orElse("")
                        : notes.get(0).text(),
                noticed,
                allNotes(asOf),
                worst.map(Part::name).orElse(""),
                statedHarm.or(() -> worst.map(Part::harm)).orElse(Harm.UNKNOWN),
                risk(worst) + shock,
                isOpen,
                isOpen ? Optional.empty() : done);
    }

    /** What comes of it; a stated risk that only names the harm says no more than the equipment's own. */
    private String risk(Optional<Part> worst) {
        boolean onlyHarm = statedHarm
                .map(h -> Names.fold(h.words()).endsWith(Names.fold(statedRisk)))
                .orElse(statedRisk.isEmpty());
        return onlyHarm
                ? worst.filter(p -> statedHarm.map(p.harm()::equals).orElse(true))
                        .map(Part::risk)
                        .orElse("")
                : statedRisk;
    }

    private List<Job.Note> allNotes(LocalDate asOf) {
        return undated.map(u -> List.of(new Job.Note(asOf, u.text(), u.at())))
                .filter(u -> notes.isEmpty())
                .orElseGet(() -> notes.stream()
                        .sorted(Comparator.comparing(Job.Note::on))
                        .toList());
    }
}
