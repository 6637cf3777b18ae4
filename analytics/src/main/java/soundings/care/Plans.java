package soundings.care;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import soundings.chemistry.Reference;
import soundings.log.Issue;
import soundings.setup.OtherSheet;
import soundings.setup.OtherSheet.Line;
import soundings.sheet.Book;

/** What the keeper wrote down beforehand, in the companion workbook's sheets {@code Treatments} and {@code Moves}. */
public record Plans(List<Treatment> treatments, List<PlannedMove> moves, List<Issue> issues) {
    public static final Plans NONE = new Plans(List.of(), List.of(), List.of());

    public Plans {
        treatments = List.copyOf(treatments);
        moves = List.copyOf(moves);
        issues = List.copyOf(issues);
    }

    public static Plans of(Optional<Book> companion, Reference reference) {
        return companion.map(book -> of(book, reference)).orElse(NONE);
    }

    private static Plans of(Book book, Reference reference) {
        OtherSheet.Read<Treatment> treatments =
                OtherSheet.read(book, "Treatments", "Tank", reference, Plans::treatment);
        OtherSheet.Read<PlannedMove> moves = OtherSheet.read(book, "Moves", "From", reference, Plans::move);
        return new Plans(
                treatments.rows(),
                moves.rows(),
                Stream.concat(treatments.issues().stream(), moves.issues().stream())
                        .toList());
    }

    private static Treatment treatment(Line line) {
        String behind = line.text("Amount").replaceFirst("^[~\\d.,'\\s\u00a0]+", "");
        return new Treatment(
                line.text("Tank"),
                line.text("Animal"),
                line.text("Medicine"),
                line.day("Started"),
                line.day("Ended"),
                line.number("Amount"),
                behind.isEmpty() ? line.text("Unit") : behind,
                line.number("Every days"),
                line.number("Keep at mg per litre"),
                line.number("Symptom-free days to end"),
                line.text("Notes"),
                line.place("Medicine"));
    }

    private static PlannedMove move(Line line) {
        return new PlannedMove(
                line.text("Animal"), line.text("From"), line.text("To"), line.day("Planned on"), line.place("Animal"));
    }

    /**
     * One course as the keeper set it.
     *
     * @param amount of one dose, in {@code unit} as written: mg, g, mL, drops, mg/L
     * @param keepAt mg/L the keeper wants in the water
     * @param signFreeDays days without a sign after which the keeper's rule lets the course end
     * @param place where the row stands
     */
    public record Treatment(
            String tank,
            String animal,
            String medicine,
            Optional<LocalDate> started,
            Optional<LocalDate> ended,
            OptionalDouble amount,
            String unit,
            OptionalDouble everyDays,
            OptionalDouble keepAt,
            OptionalDouble signFreeDays,
            String notes,
            String place) {}

    public record PlannedMove(String animal, String from, String to, Optional<LocalDate> on, String place) {}
}
