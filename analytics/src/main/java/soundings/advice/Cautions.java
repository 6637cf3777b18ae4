package soundings.advice;

import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;

/** What to mind when handling or giving something; the usual cautions, which take the place of no label, rule or vet. */
final class Cautions {
    private Cautions() {}

    /** Empty where nothing beyond the label needs saying. */
    static String of(Parameter parameter) {
        if (parameter.id().equals("iodine")) {
            return "Concentrated iodine and iodide are poisonous and burn skin and eyes: gloves, good light, a measured syringe, out "
                    + "of children's reach. Read the label and local rules. Too much harms faster than too little";
        }
        if (parameter.kind() == Parameter.Kind.TRACE) {
            return "Between enough and too much of a trace element lies little: measure small volumes with a syringe, change one "
                    + "thing at a time, and test before the next step";
        }
        return parameter.id().equals("alkalinity")
                ? "Give it slowly where the water moves fast, apart from calcium; strong solutions of carbonate or hydroxide burn "
                        + "skin and eyes"
                : "";
    }

    /** A level that is let fall: nothing strong is handled, but too fast a fall harms as well. */
    static String ofPause(Recommendation.Pause pause, Scale scale) {
        return "It should not fall by more than " + Phrases.small(scale.change(pause.mostPerDay(), pause.goal()))
                + Phrases.unit(scale)
                + " a day: where a test shows it does, give a part of the dose again. Watch the animals "
                + "meanwhile";
    }

    static String poison() {
        return "If animals breathe fast or lie down, do not wait for the next test. For a sick animal ask a vet who treats fish";
    }
}
