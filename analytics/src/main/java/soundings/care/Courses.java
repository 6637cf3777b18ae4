package soundings.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import soundings.care.Plans.Treatment;
import soundings.history.History;
import soundings.history.Note;
import soundings.history.Series;
import soundings.history.TankHistory;

/** Finds courses of treatment, in the setup first, else in the notes, and follows each by its dates. */
final class Courses {
    private final History history;
    private final Vocabulary words;

    private Courses(History history, Vocabulary words) {
        this.history = history;
        this.words = words;
    }

    static List<Course> of(History history, List<Treatment> plans, Vocabulary words) {
        return new Courses(history, words).of(plans);
    }

    private List<Course> of(List<Treatment> plans) {
        List<Course> all = new ArrayList<>();
        for (TankHistory tank : history.tanks()) {
            List<Treatment> own = plans.stream()
                    .filter(p -> Where.same(history.setup(), p.tank(), tank.tank()))
                    .toList();
            all.addAll(own.isEmpty() ? fromNotes(tank) : fromPlans(tank, own));
        }
        all.sort(Comparator.comparing(Course::started)
                .thenComparing(Course::tank)
                .thenComparing(c -> c.plan().medicine()));
        return all;
    }

    private List<Course> fromPlans(TankHistory tank, List<Treatment> plans) {
        List<Course> all = new ArrayList<>();
        for (Treatment plan : plans) {
            Optional<LocalDate> first = plan.started()
                    .or(() -> doses(tank, plan).stream().map(Given::on).findFirst());
            first.filter(f -> !f.isAfter(history.asOf()))
                    .ifPresent(f -> all.add(course(tank, plan, f, plan.started().isPresent())));
        }
        return all;
    }

    private List<Course> fromNotes(TankHistory tank) {
        List<Note> notes = Note.of(tank).stream()
                .filter(n -> !n.on().isAfter(history.asOf()))
                .toList();
        return NotedCourse.of(notes, blank(tank.tank()), tank.litres(), words).stream()
                .map(c -> course(tank, blank(tank.tank(), c.ended(history.asOf())), c.first(), false))
                .toList();
    }

    private static Treatment blank(String tank) {
        return blank(tank, Optional.empty());
    }

    private static Treatment blank(String tank, Optional<LocalDate> ended) {
        OptionalDouble none = OptionalDouble.empty();
        return new Treatment(tank, "", "", Optional.empty(), ended, none, "", none, none, none, "", "");
    }

    private Course course(TankHistory tank, Treatment plan, LocalDate started, boolean stated) {
        Optional<LocalDate> ended = plan.ended().or(() -> saidEnded(tank, started));
        LocalDate until = ended.filter(e -> !e.isAfter(history.asOf())).orElse(history.asOf());
        boolean running = ended.isEmpty() || ended.get().isAfter(history.asOf());
        List<Note> notes = Note.of(tank).stream()
                .filter(n -> !n.on().isBefore(started) && !n.on().isAfter(until))
                .toList();
        List<Given> doses = withFirst(tank, plan, started, stated, notes);
        Levels levels = Levels.of(tank, doses, until);
        List<Sign> signs = Sign.of(notes, words);
        return new Course(
                plan,
                tank.tank(),
                started,
                stated,
                until,
                running,
                doses,
                missing(plan, started, until, doses),
                levels.steps(),
                levels.why(),
                signs,
                Recovery.signFree(plan, started, signs),
                Recovery.relapses(plan, started, signs),
                Recovery.better(signs),
                disputes(notes, started),
                tank.litres(),
                tested(tank, plan, started, until, levels));
    }

    /** The last test since the last step of what the medicine's name names, copper for one; in mg/L. */
    private static Optional<Course.Tested> tested(
            TankHistory tank, Treatment plan, LocalDate started, LocalDate until, Levels levels) {
        LocalDate since = levels.steps().isEmpty()
                ? started
                : levels.steps().get(levels.steps().size() - 1).on();
        List<String> words = List.of(Vocabulary.folded(plan.medicine()).split("[^\\p{L}]+"));
        return tank.series().stream()
                .map(Series::parameter)
                .filter(p -> words.contains(Vocabulary.folded(p.name())))
                .filter(p -> p.unit().equals("mg/L") || p.unit().equals("ug/L"))
                .flatMap(p -> Tests.last(tank, p, until).stream())
                .filter(r -> !r.date().isBefore(since))
                .map(r -> new Course.Tested(
                        r, r.amount().about() / (r.parameter().unit().equals("ug/L") ? 1000 : 1)))
                .findFirst();
    }

    private List<Given> doses(TankHistory tank, Treatment plan) {
        return Note.of(tank).stream()
                .flatMap(n -> Given.of(n, plan, tank.litres(), words).stream())
                .toList();
    }

    /** Of what a day's notes say of doses the first counts; a course that stands in the setup began with a dose. */
    private List<Given> withFirst(
            TankHistory tank, Treatment plan, LocalDate started, boolean stated, List<Note> notes) {
        List<Given> read = notes.stream()
                .flatMap(n -> Given.of(n, plan, tank.litres(), words).stream())
                .toList();
        List<Given> doses = new ArrayList<>(
                read.stream().filter(g -> !isOnlyWeighed(g, read)).toList());
        tank.doses().stream()
                .filter(d -> !plan.medicine().isEmpty() && d.name().equalsIgnoreCase(plan.medicine()))
                .flatMap(d -> d.oneOffs().stream())
                .filter(o -> !o.on().isBefore(started))
                .map(o -> new Given(o.on(), OptionalDouble.empty(), o.ml() + " mL", false, true, o.at().place()))
                .forEach(doses::add);
        if (stated && doses.stream().noneMatch(d -> d.on().equals(started))) {
            doses.add(Given.planned(started, plan, tank.litres(), plan.place()));
        }
        doses.sort(Comparator.comparing(Given::on).thenComparing(Given::place));
        return doses;
    }

    /** A weight without a word for giving it, on a day another note tells of a dose. */
    private static boolean isOnlyWeighed(Given given, List<Given> all) {
        return !given.told() && all.stream().anyMatch(g -> g.told() && g.on().equals(given.on()));
    }

    private Optional<LocalDate> saidEnded(TankHistory tank, LocalDate started) {
        return Note.of(tank).stream()
                .filter(n -> !n.on().isBefore(started)
                        && words.ended.matcher(Vocabulary.folded(n.text())).find())
                .map(Note::on)
                .findFirst();
    }

    private static List<LocalDate> missing(Treatment plan, LocalDate started, LocalDate until, List<Given> doses) {
        if (plan.everyDays().isEmpty() || plan.everyDays().getAsDouble() < 1) {
            return List.of();
        }
        long every = Math.round(plan.everyDays().getAsDouble());
        return Stream.iterate(started, d -> !d.isAfter(until), d -> d.plusDays(every))
                .filter(due -> doses.stream().noneMatch(g -> g.on().equals(due)))
                .toList();
    }

    private List<Course.Dispute> disputes(List<Note> notes, LocalDate started) {
        List<Course.Dispute> all = new ArrayList<>();
        for (Note note : notes) {
            Matcher day = words.day.matcher(Vocabulary.folded(note.text()));
            long isDay = java.time.temporal.ChronoUnit.DAYS.between(started, note.on()) + 1;
            if (day.find() && Integer.parseInt(day.group(1)) != isDay) {
                all.add(new Course.Dispute(
                        note.on(),
                        Integer.parseInt(day.group(1)),
                        isDay,
                        note.at().place()));
            }
        }
        return all;
    }
}
