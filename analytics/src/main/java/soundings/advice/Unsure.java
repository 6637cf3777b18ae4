package soundings.advice;

import java.util.Optional;
import soundings.chemistry.Reference;
import soundings.setup.Setup;

/** How well a tank's volume and an additive's strength are known; shares within which nine in ten lie. */
final class Unsure {
    static final String FROM =
            "common practice, no source; yours: Preferences, volume unsure and strength unsure, in %";

    private Unsure() {}

    /** Both together, root of the sum of squares. */
    static double of(Setup setup, Reference reference) {
        return Math.hypot(share("volume", setup, reference), share("strength", setup, reference));
    }

    private static double share(String what, Setup setup, Reference reference) {
        return setup.findPreference(what + " unsure")
                .flatMap(Unsure::percent)
                .or(() -> reference.findConstant(what + "_unsure").map(c -> c.value()))
                .orElse(0.0);
    }

    private static Optional<Double> percent(String written) {
        String number = written.replace("%", "").replace(',', '.').strip();
        return number.matches("\\d{1,2}(\\.\\d+)?") ? Optional.of(Double.parseDouble(number) / 100) : Optional.empty();
    }
}
