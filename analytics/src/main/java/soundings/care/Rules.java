package soundings.care;

import java.util.Optional;
import soundings.chemistry.Constant;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;

/** The rules of thumb used here; rows of {@code care-rules.csv}, all of them common practice without a source. */
record Rules(Reference reference) {
    Parameter parameter(String id) {
        return reference.parameter(id);
    }

    /** At or below it a test counts as showing none, canonical unit. */
    double none(String parameter) {
        return value("care_none_" + parameter);
    }

    /** At or above it animals are in danger, canonical unit. */
    double danger(String parameter) {
        return value("care_danger_" + parameter);
    }

    /** The largest difference between two tanks that an animal is moved over at once, canonical unit. */
    Optional<Double> straightOver(String parameter) {
        return reference.findConstant("care_move_" + parameter).map(Constant::value);
    }

    /** How much of a difference an animal is taken through in an hour, canonical unit. */
    double perHour(String parameter) {
        return value("care_per_hour_" + parameter);
    }

    int days(String id) {
        return (int) value("care_" + id);
    }

    private double value(String id) {
        return reference
                .findConstant(id)
                .map(Constant::value)
                .orElseThrow(() -> new IllegalArgumentException("care-rules.csv has no row " + id));
    }
}
