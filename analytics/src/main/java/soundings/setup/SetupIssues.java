package soundings.setup;

import java.util.List;
import java.util.Optional;
import soundings.log.AsWritten;
import soundings.log.Issue;

/** What may be wrong with a companion workbook; whatever depends on the cell is left out, the rest is kept. */
final class SetupIssues {
    private SetupIssues() {}

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

    /** A cell that should hold a number, a date, a yes or no and does not. */
    record UnreadableSetting(AsWritten at, String expected) implements OfCell {
        @Override
        public String message() {
            return "expected " + expected + ", got '" + at.text() + "'; left out";
        }
    }

    /** A row that lacks what it cannot do without. */
    record IncompleteRow(AsWritten at, String lacks) implements OfCell {
        @Override
        public String message() {
            return "this row has no " + lacks + "; left out";
        }
    }

    /** A recipe with nothing beside it that says what is dosed with it. */
    record NothingToRaise(AsWritten at, List<String> raises) implements OfCell {
        @Override
        public String message() {
            String which = raises.isEmpty() ? "" : " (this recipe raises " + String.join(", ", raises) + ")";
            return "the recipe is not used: the column Parameter does not say what it is given for" + which;
        }
    }

    record UnknownParameter(AsWritten at) implements OfCell {
        @Override
        public String message() {
            return "no test of the name '" + at.text() + "' is known; the row is left out";
        }
    }

    record UnknownUnit(AsWritten at, String unit, String of, String known) implements OfCell {
        @Override
        public String message() {
            return "'" + unit + "' is not a unit known for " + of + "; known are " + known;
        }
    }

    /** Something had to be assumed; the value is used. */
    record Assumed(AsWritten at, String what) implements OfCell {
        @Override
        public String message() {
            return what;
        }
    }

    /** A value no marine tank has, or a range the wrong way round. */
    record ImplausibleSetting(AsWritten at, String why) implements OfCell {
        @Override
        public String message() {
            return why + "; left out";
        }
    }

    /** The same thing a second time; the first row counts. */
    record RepeatedRow(AsWritten at) implements OfCell {
        @Override
        public String message() {
            return "'" + at.text() + "' stands here a second time; the first row counts";
        }
    }

    record MissingColumn(AsWritten at, String sheet, String column) implements OfCell {
        @Override
        public Severity severity() {
            return Severity.SERIOUS;
        }

        @Override
        public String message() {
            return "the sheet '" + sheet + "' has no column '" + column + "' in its first row; the sheet is not used";
        }
    }
}
