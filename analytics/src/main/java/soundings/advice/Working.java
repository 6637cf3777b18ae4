package soundings.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import soundings.advice.Recommendation.WorkingLine;

/** Gathers the lines of a working; a worked line's value comes from its formula and from nothing else. */
final class Working {
    private final List<WorkingLine> lines = new ArrayList<>();
    private final Map<String, Double> values = new LinkedHashMap<>();

    /** A number put in, from a place or an estimate. */
    double given(String id, String label, double value, String unit, String from) {
        return add(new WorkingLine(id, label, value, unit, "", from));
    }

    /** A number worked out from those above it. */
    double worked(String id, String label, String unit, String formula) {
        return add(new WorkingLine(id, label, Formulas.value(formula, values), unit, formula, ""));
    }

    private double add(WorkingLine line) {
        if (values.putIfAbsent(line.id(), line.value()) != null) {
            throw new IllegalArgumentException("the working has two lines '" + line.id() + "'");
        }
        lines.add(line);
        return line.value();
    }

    List<WorkingLine> lines() {
        return List.copyOf(lines);
    }
}
