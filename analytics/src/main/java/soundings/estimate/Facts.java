package soundings.estimate;

import java.util.Optional;
import soundings.chemistry.Constant;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;

/** What the reference tables say about a parameter that the estimates need. */
final class Facts {
    private Facts() {}

    private static Optional<Double> find(String id, Reference reference) {
        return reference.constants().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .map(Constant::value);
    }

    /** One standard deviation of a home test at this level, canonical unit; a fiftieth of the level where no row says. */
    static double kitError(Parameter parameter, double level, Reference reference) {
        double fixed = find("kit_error." + parameter.id(), reference).orElse(0.0);
        double share = find("kit_error_share." + parameter.id(), reference).orElse(fixed > 0 ? 0.0 : 0.02);
        return Math.max(Math.max(fixed, share * Math.abs(level)), Math.pow(10, -parameter.decimals()) / 2);
    }

    /** A use, or for a condition a drift, that is nothing out of the way; a two-hundredth of the level where no row says. */
    static double usualUse(Parameter parameter, double level, Reference reference) {
        return find("usual_use." + parameter.id(), reference)
                .orElse(Math.max(Math.abs(level) / 200, Math.pow(10, -parameter.decimals()) / 10));
    }
}
