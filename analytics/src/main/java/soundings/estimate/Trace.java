package soundings.estimate;

import java.util.ArrayList;
import java.util.List;

/** One forward pass written down, so that it can be walked backward. */
final class Trace {
    private final List<Moment> moments = new ArrayList<>();
    private final Balance end;

    private Trace(Balance from, List<Stage> stages) {
        this.end = from;
        for (Stage stage : stages) {
            moments.add(new Moment(end, stage));
        }
    }

    /** Takes {@code from} through all stages; {@code from} is changed. */
    static Trace of(Balance from, List<Stage> stages) {
        return new Trace(from, stages);
    }

    List<Moment> moments() {
        return moments;
    }

    Balance end() {
        return end;
    }

    /** One stage as it was taken: the level after the time passed, after all; what each sight did. */
    static final class Moment {
        final Stage stage;
        final double stepDays;
        final double left;
        final double levelBefore;
        final double[] tiesBefore;
        final List<Seen> seen = new ArrayList<>();
        final double levelAfter;
        final double[] tiesAfter;

        private Moment(Balance balance, Stage stage) {
            this.stage = stage;
            this.stepDays = balance.stepIsOn() ? stage.dt() : 0;
            this.left = balance.pass(stage);
            this.levelBefore = balance.mean(Start.LEVEL);
            this.tiesBefore = balance.row(Start.LEVEL);
            for (Sight sight : stage.sights()) {
                balance.look(sight);
                seen.add(new Seen(sight, balance.last(), balance.towards()));
            }
            balance.change(stage);
            this.levelAfter = balance.mean(Start.LEVEL);
            this.tiesAfter = balance.row(Start.LEVEL);
        }
    }

    /** One reading taken in. */
    static final class Seen {
        final Sight sight;
        final Observed did;
        final double[] towards;

        private Seen(Sight sight, Observed did, double[] towards) {
            this.sight = sight;
            this.did = did;
            this.towards = towards;
        }
    }
}
