package soundings.upkeep;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.chemistry.Parameter;

/**
 * The testing itself.
 *
 * @param tests a row a tank and test, the most overdue first
 * @param costs of the report's month, where a price is given
 * @param kits with a day to expire on
 */
public record Testing(List<Test> tests, List<Cost> costs, List<Kit> kits) {
    static final long NEAR_DAYS = 60;

    public Testing {
        tests = List.copyOf(tests);
        costs = List.copyOf(costs);
        kits = List.copyOf(kits);
    }

    /**
     * How often something is tested.
     *
     * @param usualDays between two tests: as the setup workbook says, else the median of the last ten gaps
     * @param asked whether the setup workbook says so
     * @param overdueDays past the day it was due; zero or less: not overdue
     * @param enoughEvery days between tests that would do, where more often than that tells nothing new
     * @param waitMinutes to wait before reading the result
     */
    public record Test(
            String tank,
            Parameter parameter,
            LocalDate last,
            OptionalDouble usualDays,
            boolean asked,
            long overdueDays,
            Optional<Integer> enoughEvery,
            OptionalDouble waitMinutes,
            String at) {
        public boolean isOverdue() {
            return overdueDays > 0;
        }
    }

    /** Tests taken in the month, in all tanks, at the price in the keeper's own money. */
    public record Cost(Parameter parameter, int tests, double priceEach, String cell) {
        public double sum() {
            return tests * priceEach;
        }
    }

    /** A kit's last day; within {@value #NEAR_DAYS} days of it is time to order another (common practice, no source). */
    public record Kit(Parameter parameter, LocalDate expires, long daysLeft, String cell) {
        public boolean isExpired() {
            return daysLeft < 0;
        }

        public boolean isNear() {
            return daysLeft >= 0 && daysLeft <= NEAR_DAYS;
        }
    }

    public double costOfMonth() {
        return costs.stream().mapToDouble(Cost::sum).sum();
    }

    public List<Test> overdue() {
        return tests.stream().filter(Test::isOverdue).toList();
    }

    public List<Test> oftenerThanNeeded() {
        return tests.stream().filter(t -> t.enoughEvery().isPresent()).toList();
    }
}
