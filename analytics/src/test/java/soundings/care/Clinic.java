package soundings.care;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.care.Plans.PlannedMove;
import soundings.care.Plans.Treatment;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.history.WrittenLog;
import soundings.reference.ReferenceTables;
import soundings.setup.Setup;

/** Tanks, plans and setups made by hand for these tests. */
final class Clinic {
    static final Reference REFERENCE = ReferenceTables.load();
    static final LocalDate FIRST = WrittenLog.FIRST;

    private Clinic() {}

    static WrittenLog log() {
        return new WrittenLog(REFERENCE);
    }

    static Parameter test(String id) {
        return REFERENCE.parameter(id);
    }

    static Setup tanks(Setup.Tank... tanks) {
        return tanks(Map.of(), tanks);
    }

    static Setup tanks(Map<String, String> preferences, Setup.Tank... tanks) {
        return new Setup(
                List.of(tanks),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                preferences,
                List.of());
    }

    /** A tank of so many litres, filled on the log's first day less {@code daysBefore}. */
    static Setup.Tank tank(String name, double litres, int daysBefore) {
        return new Setup.Tank(
                name, OptionalDouble.of(litres), List.of(), Optional.of(FIRST.minusDays(daysBefore)), "Tanks!B2");
    }

    static Setup.Tank tank(String name, double litres) {
        return new Setup.Tank(name, OptionalDouble.of(litres), List.of(), Optional.empty(), "Tanks!B2");
    }

    /** A course from the log's first day on; a negative number leaves that answer blank. */
    static Plans course(String tank, double amount, String unit, double keepAt, double signFreeDays) {
        return plans(new Treatment(
                tank,
                "angelfish",
                "bittersalt",
                Optional.of(FIRST),
                Optional.empty(),
                some(amount),
                unit,
                OptionalDouble.of(2),
                some(keepAt),
                some(signFreeDays),
                "",
                "Treatments!C2"));
    }

    static Plans plans(Treatment... treatments) {
        return new Plans(List.of(treatments), List.of(), List.of());
    }

    static Plans moves(PlannedMove... moves) {
        return new Plans(List.of(), List.of(moves), List.of());
    }

    private static OptionalDouble some(double value) {
        return value < 0 ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
