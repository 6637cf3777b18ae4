package soundings.history;

import java.util.Optional;
import soundings.log.AsWritten;
import soundings.log.Issue;

/** What did not fit when the log was put in order. */
final class HistoryIssues {
    private HistoryIssues() {}

    /** An issue with one cell. */
    interface OfCell extends Issue {
        AsWritten at();

        @Override
        default Severity severity() {
            return Severity.WARNING;
        }

        @Override
        default Optional<AsWritten> where() {
            return Optional.of(at());
        }
    }

    /** The same entry at two places; it counts once. */
    record WrittenTwice(AsWritten at, String what, String first) implements OfCell {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }

        @Override
        public String message() {
            return "the same " + what + " stands at " + first + "; it counts once";
        }
    }

    record MoreThanTheTank(AsWritten at) implements OfCell {
        @Override
        public String message() {
            return "a water change of more than the tank holds; its share is left out";
        }
    }

    /** A dose named after a test was taken for the one additive that raises it, or a part of a name for the whole. */
    record AdditiveTakenFor(AsWritten at, String written, String additive, String because) implements OfCell {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }

        @Override
        public String message() {
            return "'" + written + "' was taken for the additive '" + additive + "', " + because
                    + "; write it under Written as to be sure";
        }
    }

    record AdditiveUnknown(AsWritten at, String written, String because) implements OfCell {
        @Override
        public String message() {
            return "the strength of '" + written + "' is not known (" + because
                    + "): its doses are not counted and the use shown is only the net change; enter it in sheet Additives of the "
                    + "setup";
        }
    }

    /** Two rates of one additive from the same day on; the one written last counts. */
    record TwoRatesOneDay(AsWritten at, String additive, String first) implements OfCell {
        @Override
        public String message() {
            return "a second rate of '" + additive + "' from the same day on, the first stands at " + first
                    + "; the second counts";
        }
    }
}
