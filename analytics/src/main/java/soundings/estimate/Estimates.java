package soundings.estimate;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import soundings.chemistry.Parameter;

/** An outcome for every tank and parameter that has a reading. */
public record Estimates(List<Outcome> outcomes) {
    public Estimates {
        outcomes = List.copyOf(outcomes);
    }

    public Optional<Outcome> find(String tank, Parameter parameter) {
        return outcomes.stream()
                .filter(o -> o.tank().equals(tank) && o.parameter().equals(parameter))
                .findFirst();
    }

    /** The readings that the models set aside. */
    public List<Estimate.Doubt> doubts() {
        return outcomes.stream()
                .flatMap(o -> o.match(e -> e.setAside().stream(), n -> Stream.<Estimate.Doubt>empty()))
                .toList();
    }
}
