package soundings.chemistry;

import java.util.List;
import java.util.Map;

/**
 * A substance keepers dissolve.
 *
 * @param equivalents of alkalinity a formula unit brings; negative for acids
 * @param countsFor parameter id to how many of the parameter's substance a formula unit holds, beyond single elements (nitrate, sulfate ...)
 * @param caution how to handle it; empty where no special care is known to be needed
 */
public record Salt(
        Formula formula, List<String> names, double equivalents, Map<String, Double> countsFor, String caution) {
    public Salt {
        names = List.copyOf(names);
        countsFor = Map.copyOf(countsFor);
    }
}
