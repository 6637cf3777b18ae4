package soundings.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import soundings.chemistry.Alias;
import soundings.chemistry.Names;
import soundings.chemistry.Reference;
import soundings.history.DoseCourse;

/**
 * Two additives for the same thing, the later begun with words that sound as if it took the earlier one's place, and nothing written that
 * ends the earlier one.
 */
record Replaced(String earlier, String later, LocalDate since) {

    static Optional<Replaced> of(Matter matter) {
        List<DoseCourse> running = matter.tank().doses().stream()
                .filter(c -> c.mlPerDayOn(matter.asOf()) > 0)
                .filter(c -> c.additive().stream().anyMatch(a -> a.parameter().equals(matter.parameter())))
                .toList();
        Predicate<DoseCourse> instead = instead(matter.reference());
        return running.stream()
                .filter(instead)
                .flatMap(later -> running.stream()
                        .filter(earlier ->
                                isUntouchedSince(earlier, first(later).from()))
                        .map(earlier -> new Replaced(
                                earlier.name(), later.name(), first(later).from())))
                .findFirst();
    }

    private static DoseCourse.Step first(DoseCourse course) {
        return course.steps().get(0);
    }

    /** Begun before that day, and no word of it since. */
    private static boolean isUntouchedSince(DoseCourse course, LocalDate day) {
        return course.steps().stream().allMatch(s -> s.from().isBefore(day));
    }

    private static Predicate<DoseCourse> instead(Reference reference) {
        String words = reference.aliases(Alias.Kind.DOSE).stream()
                .filter(a -> a.means().equals("instead"))
                .map(a -> Pattern.quote(a.text()))
                .collect(Collectors.joining("|", "(?<!\\p{L})(?:", ")(?!\\p{L})"));
        Pattern pattern = Pattern.compile(words);
        return course -> pattern.matcher(Names.fold(first(course).at().text())).find();
    }
}
