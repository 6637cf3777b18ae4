package soundings.estimate;

import java.util.function.Function;
import soundings.chemistry.Parameter;

/** No estimate, the reason in words, and what would lift it. */
public record NotEnough(String tank, Parameter parameter, int readings, int spanDays, String why, String wouldNeed)
        implements Outcome {
    @Override
    public <R> R match(Function<Estimate, R> estimate, Function<NotEnough, R> notEnough) {
        return notEnough.apply(this);
    }
}
