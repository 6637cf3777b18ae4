package soundings.estimate;

import java.util.function.Function;
import soundings.chemistry.Parameter;

/** What could be worked out for one test of one tank. */
public sealed interface Outcome permits Estimate, NotEnough {
    String tank();

    Parameter parameter();

    <R> R match(Function<Estimate, R> estimate, Function<NotEnough, R> notEnough);
}
