package soundings.setup;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/**
 * What a run is told from outside.
 *
 * @param today the day the program runs, for what has a present tense (containers, overdue jobs)
 * @param month the month asked for; empty: the last one with a reading
 */
public record Settings(LocalDate today, Optional<YearMonth> month) {}
