package soundings.chemistry;

import java.util.Map;

/** What matter is made of: atomic weights, and the formula each parameter's canonical unit counts. */
public record Substances(Elements elements, Map<String, Formula> counted) {
    public static final Substances NONE = new Substances(new Elements(Map.of()), Map.of());

    public Substances {
        counted = Map.copyOf(counted);
    }
}
