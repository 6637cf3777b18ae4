package soundings.estimate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What if something changed lately, shortly before one of the last tests: the use took a step, or the level was moved by what
 * nobody wrote down? The filter learns a new use slowly and takes a moved level for a mistyped test, so each such change is
 * tried and weighed by how well it foretells the tests since.
 *
 * @param nodes with the courses that matter among them, heaviest first
 * @param probability that there was a change, 0 to 1
 * @param likeliest of the changes, likely or not; empty where there are no tests to tell
 */
record Lately(List<Grid.Node> nodes, double probability, Optional<Late> likeliest) {
    /** A change before that many tests, or days, is told by the tests since. */
    private static final int TESTS = 6;

    static final int DAYS = 42;
    /** Each of the two comes about once a year. A choice of this program, held to made-up tanks; no source. */
    private static final double A_DAY = 1 / 365.0;
    /** Standard deviation of a step, as a part of the usual use, and of a move of the level, in errors of a test. */
    private static final double STEP = 0.35;

    private static final double MOVE = 4;
    /** Of all nodes and courses those lighter than this show in no figure. */
    private static final double MATTERS = 1e-3;

    Lately {
        nodes = List.copyOf(nodes);
    }

    /**
     * A change: after the tests of the stage that many from the end.
     *
     * @param shake variance of the use
     * @param jump variance of the level
     */
    record Late(int fromEnd, double shake, double jump) {
        List<Stage> in(List<Stage> stages) {
            List<Stage> changed = new ArrayList<>(stages);
            int at = stages.size() - fromEnd;
            changed.set(at, stages.get(at).changing(shake, jump));
            return changed;
        }

        /** The readings set aside count among the tests since: they are what speaks of the change. */
        Estimate.Changed told(List<Stage> stages, double probability) {
            int at = stages.size() - fromEnd;
            int tests = stages.subList(at + 1, stages.size()).stream()
                    .mapToInt(s -> s.sights().size())
                    .sum();
            return new Estimate.Changed(
                    LocalDate.ofEpochDay((long) stages.get(at).day()), tests, probability);
        }
    }

    static Lately unchanged(List<Grid.Node> nodes) {
        return new Lately(nodes, 0, Optional.empty());
    }

    /** The stage of the first of the last tests. */
    static int first(List<Stage> stages) {
        double from = stages.get(stages.size() - 1).day() - DAYS;
        int first = stages.size() - 1;
        int tests = 0;
        for (int i = first - 1; i >= 0 && tests < TESTS && stages.get(i).day() >= from; i--) {
            if (!stages.get(i).sights().isEmpty()) {
                first = i;
                tests++;
            }
        }
        return first;
    }

    /** How it may have gone, and the belief it ends in. */
    private record Course(Optional<Late> change, double weight, Grid.Node node) {}

    /** @param nodes run through the same stages up to the first of the last tests */
    static Lately of(Question question, List<Grid.Node> nodes) {
        List<Course> courses = new ArrayList<>();
        nodes.forEach(n -> courses.addAll(new Courses(question, n).all()));
        double all = courses.stream().mapToDouble(Course::weight).sum();
        double changed = courses.stream()
                .filter(c -> c.change().isPresent())
                .mapToDouble(Course::weight)
                .sum();
        Optional<Late> likeliest = courses.stream()
                .filter(c -> c.change().isPresent())
                .max(Comparator.comparingDouble(Course::weight))
                .flatMap(Course::change);
        List<Course> kept = courses.stream()
                .filter(c -> c.weight() > MATTERS * all)
                .sorted(Comparator.comparingDouble(Course::weight).reversed())
                .toList();
        double left = kept.stream().mapToDouble(Course::weight).sum();
        List<Grid.Node> weighed =
                kept.stream().map(c -> c.node().weighing(c.weight() / left)).toList();
        return new Lately(weighed, changed / all, likeliest);
    }

    /** The courses of one node, each run from where it leaves the unchanged one. */
    private static final class Courses {
        private final Grid.Node node;
        private final List<Stage> stages;
        private final double shake;
        private final double jump;
        private final List<Course> all = new ArrayList<>();
        private final Balance at;
        private double unchanged = 1;

        Courses(Question question, Grid.Node node) {
            this.node = node;
            this.stages = question.stages();
            this.at = node.pass().late().copy();
            double step = STEP * question.scales().use();
            double move = MOVE * node.spread().kit(0);
            this.shake = step * step;
            this.jump = move * move;
        }

        List<Course> all() {
            for (int i = first(stages); i < stages.size() - 1; i++) {
                if (!stages.get(i).sights().isEmpty()) {
                    change(i);
                }
                at.take(stages.get(i));
            }
            at.take(stages.get(stages.size() - 1));
            add(Optional.empty(), unchanged, at);
            return all;
        }

        private void change(int i) {
            int next = i + 1;
            while (next < stages.size() - 1 && stages.get(next).sights().isEmpty()) {
                next++;
            }
            double prior = A_DAY * (stages.get(next).day() - stages.get(i).day());
            unchanged -= 2 * prior;
            run(i, new Late(stages.size() - i, shake, 0), prior);
            run(i, new Late(stages.size() - i, 0, jump), prior);
        }

        private void run(int i, Late late, double prior) {
            Balance end = at.copy();
            end.take(stages.get(i).changing(late.shake(), late.jump()));
            stages.subList(i + 1, stages.size()).forEach(end::take);
            add(Optional.of(late), prior, end);
        }

        private void add(Optional<Late> late, double prior, Balance end) {
            double better = end.logLikelihood() - node.end().logLikelihood();
            all.add(new Course(late, node.weight() * prior * Math.exp(better), node.ending(end, late.isPresent())));
        }
    }
}
