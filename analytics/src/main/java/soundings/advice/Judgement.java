package soundings.advice;

import java.util.Optional;
import soundings.chemistry.Parameter;
import soundings.chemistry.TargetRange;

/** A verdict on one test of one tank, its probability (0 to 1) and the reason in a sentence. */
public record Judgement(
        String tank,
        Parameter parameter,
        Verdict verdict,
        double probability,
        String because,
        Optional<TargetRange> target) {}
