package soundings.advice;

import java.util.Optional;
import soundings.chemistry.Parameter;
import soundings.chemistry.TargetRange;
import soundings.estimate.KitStep;
import soundings.estimate.TestsNeeded;

/**
 * A verdict on one test of one tank, its probability (0 to 1) and the reason in a sentence.
 *
 * @param testsNeeded where it cannot be told yet: how many more tests, and when, would tell
 * @param tooCoarse where the kit's step or scatter is too great for the range it must judge
 */
public record Judgement(
        String tank,
        Parameter parameter,
        Verdict verdict,
        double probability,
        String because,
        Optional<TargetRange> target,
        Optional<TestsNeeded> testsNeeded,
        Optional<KitStep> tooCoarse) {

    public Judgement(
            String tank,
            Parameter parameter,
            Verdict verdict,
            double probability,
            String because,
            Optional<TargetRange> target) {
        this(tank, parameter, verdict, probability, because, target, Optional.empty(), Optional.empty());
    }
}
