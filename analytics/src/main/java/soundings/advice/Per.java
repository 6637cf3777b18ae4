package soundings.advice;

import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.quantity.Interval;

/** What is used of an ion for each unit of alkalinity, both as the keeper writes them; worked out in mg/L for each dKH. */
record Per(Scale ion, Scale alkalinity) {
    static Per of(Matter any, String ion) {
        return new Per(scale(any, ion), scale(any, "alkalinity"));
    }

    private static Scale scale(Matter any, String id) {
        Parameter parameter = any.reference().parameter(id);
        return any.of(parameter).scale();
    }

    private double factor() {
        return ion.change(1, 0) / alkalinity.change(1, 0);
    }

    Interval shown(Interval perDkh) {
        return perDkh.times(factor());
    }

    String each() {
        return alkalinity.label();
    }

    String unit() {
        return ion.label() + " per " + each();
    }

    String number(double perDkh) {
        double shown = perDkh * factor();
        return shown < 0.1 ? Phrases.small(shown) : Phrases.number(shown, 2);
    }

    /** {@code 7.15 mg/L for each dKH}. */
    String words(double perDkh) {
        return number(perDkh) + " " + ion.label() + " for each " + each();
    }
}
