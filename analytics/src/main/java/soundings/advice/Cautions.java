package soundings.advice;

import soundings.chemistry.Parameter;

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

    static String poison() {
        return "If animals breathe fast or lie down, do not wait for the next test. For a sick animal ask a vet who treats fish";
    }
}
