package soundings.layout;

import java.util.ArrayList;
import java.util.List;
import soundings.chemistry.Parameter;

/** The results under one heading, or of one test named in the rows or in running text. */
record Series(Parameter parameter, String header, String unit, List<Raw> raws) {
    static Series of(Parameter parameter, String header, String unit) {
        return new Series(parameter, header, unit, new ArrayList<>());
    }
}
