package soundings.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import soundings.chemistry.Names;
import soundings.chemistry.Part;
import soundings.chemistry.Part.Harm;
import soundings.chemistry.Reference;
import soundings.history.History;
import soundings.history.Note;
import soundings.history.TankHistory;
import soundings.log.AsWritten;
import soundings.log.Remark;
import soundings.setup.OtherSheet;
import soundings.upkeep.JobWords.Heard;
import soundings.upkeep.JobWords.Says;

/** Follows jobs from note to note until one tells that it is done. A doubtful word leaves a job open. */
final class Jobs {
    /** So much of the shorter note's words in the other makes two notes speak of the same job. */
    private static final double SAME = 0.6;

    /** Notes of animals speak of equipment only where they name it. */
    private static final Set<String> OF_ANIMALS =
            Set.of("loss", "symptom", "condition", "treatment", "spawn", "feeding", "algae", "added", "moved");

    private static final Set<String> YES = Set.of("yes", "y", "done", "x", "ok", "ja", "oui", "si");
    private static final Set<String> NO = Set.of("no", "n", "open", "not yet", "nein", "non", "nee");

    private final LocalDate asOf;
    private final JobWords words;
    private final Map<String, Part> parts;
    private final List<JobDraft> drafts = new ArrayList<>();

    /** A row of the sheet Jobs; one that is closed may lack the day. */
    record Row(
            String tank,
            String job,
            AsWritten at,
            Optional<LocalDate> noticed,
            String atRisk,
            boolean closed,
            Optional<LocalDate> done) {
        static Row of(OtherSheet.Line line) {
            String word = Names.fold(line.text("Done"));
            boolean plain = word.isEmpty() || YES.contains(word) || NO.contains(word);
            Optional<LocalDate> done = plain ? Optional.empty() : line.day("Done");
            return new Row(
                    line.text("Tank"),
                    line.text("Job"),
                    line.at("Job"),
                    line.day("Noticed"),
                    line.text("At risk"),
                    YES.contains(word) || done.isPresent(),
                    done);
        }
    }

    private Jobs(LocalDate asOf, Reference reference) {
        this.asOf = asOf;
        this.words = new JobWords(reference);
        this.parts = reference.parts().stream().collect(Collectors.toMap(Part::id, Function.identity()));
    }

    /** The worst and oldest first, open ones before done ones. */
    static List<Job> of(History history, List<Row> rows, Reference reference) {
        Jobs jobs = new Jobs(history.asOf(), reference);
        history.tanks().forEach(jobs::noted);
        rows.forEach(row -> jobs.row(row, history));
        return jobs.drafts.stream()
                .map(d -> d.job(history.asOf(), jobs::part))
                .filter(j -> j.noticed().filter(d -> d.isAfter(history.asOf())).isEmpty())
                .sorted(Comparator.comparing((Job j) -> !j.open())
                        .thenComparing(Job::harm)
                        .thenComparing(j -> j.noticed().orElse(history.asOf()))
                        .thenComparing(Job::tank)
                        .thenComparing(Job::what))
                .toList();
    }

    private Part part(String id) {
        return Optional.ofNullable(parts.get(id))
                .orElseThrow(
                        () -> new IllegalStateException("words.csv names the part '" + id + "', parts.csv does not"));
    }

    private void noted(TankHistory tank) {
        Note.of(tank).stream().filter(n -> !n.on().isAfter(asOf)).forEach(n -> noted(tank.tank(), n));
    }

    private void noted(String tank, Note note) {
        for (Heard heard : words.read(note.text())) {
            Remark piece = note.holding(heard.clause());
            boolean ofAnimals = heard.parts().isEmpty() && OF_ANIMALS.contains(piece.kind());
            if (heard.says() == Says.MENDED) {
                fitting(tank, heard, true).ifPresent(d -> d.close(Optional.of(note.on())));
            } else if (heard.says() == Says.AGAIN) {
                fitting(tank, heard, true)
                        .ifPresent(d -> d.note(Optional.of(note.on()), piece.text(), piece.at(), heard));
            } else if (!ofAnimals) {
                draft(tank, heard, true).note(Optional.of(note.on()), piece.text(), piece.at(), heard);
            }
        }
    }

    private JobDraft draft(String tank, Heard heard, boolean openOnly) {
        return fitting(tank, heard, openOnly).orElseGet(() -> {
            JobDraft fresh = new JobDraft(tank);
            drafts.add(fresh);
            return fresh;
        });
    }

    /** The one job that fits best; none where two fit alike. */
    private Optional<JobDraft> fitting(String tank, Heard heard, boolean openOnly) {
        List<JobDraft> fit = drafts.stream()
                .filter(d -> d.tank().equals(tank) && (d.open() || !openOnly))
                .filter(d -> d.fit(heard, this::part) >= SAME)
                .sorted(Comparator.comparingDouble((JobDraft d) -> d.fit(heard, this::part))
                        .reversed())
                .toList();
        boolean alike = fit.size() > 1
                && fit.get(0).fit(heard, this::part) == fit.get(1).fit(heard, this::part);
        return alike ? Optional.empty() : fit.stream().findFirst();
    }

    private void row(Row row, History history) {
        Heard heard = words.named(row.job());
        JobDraft draft = draft(tank(row.tank(), history), heard, false);
        draft.note(row.noticed(), row.job(), row.at(), heard);
        if (!row.atRisk().isEmpty()) {
            draft.atRisk(harm(row.atRisk()), row.atRisk());
        }
        if (row.closed()) {
            draft.close(row.done());
        }
    }

    /** The log's own name of a tank. */
    static String tank(String written, History history) {
        String called = history.setup().findTank(written).map(t -> t.name()).orElse(written);
        return history.tanks().stream()
                .map(TankHistory::tank)
                .filter(t -> Names.fold(t).equals(Names.fold(called)))
                .findFirst()
                .orElse(called);
    }

    private Optional<Harm> harm(String written) {
        String folded = Names.fold(written);
        return Arrays.stream(Harm.values())
                .filter(h -> h != Harm.UNKNOWN)
                .filter(h -> Arrays.stream(h.words().split("\\W+"))
                        .filter(w -> w.length() > 3)
                        .anyMatch(folded::contains))
                .findFirst()
                .or(() -> words.named(written).parts().stream()
                        .map(this::part)
                        .map(Part::harm)
                        .min(Comparator.naturalOrder()));
    }
}
