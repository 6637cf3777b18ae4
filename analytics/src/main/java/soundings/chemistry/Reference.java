package soundings.chemistry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Every fact the program knows, as plain values; loaded once by {@code reference} and handed to each stage. */
public final class Reference {
    private final Map<String, Parameter> parameters;
    private final List<Parameter> parameterList;
    private final List<Scale> scales;
    private final List<Alias> aliases;
    private final List<TargetRange> targets;
    private final List<Constant> constants;
    private final List<Source> sources;

    public Reference(
            List<Parameter> parameters,
            List<Scale> scales,
            List<Alias> aliases,
            List<TargetRange> targets,
            List<Constant> constants,
            List<Source> sources) {
        this.parameterList = List.copyOf(parameters);
        this.parameters = parameterList.stream().collect(Collectors.toMap(Parameter::id, Function.identity()));
        this.scales = List.copyOf(scales);
        this.aliases = List.copyOf(aliases);
        this.targets = List.copyOf(targets);
        this.constants = List.copyOf(constants);
        this.sources = List.copyOf(sources);
    }

    public List<Parameter> parameters() {
        return parameterList;
    }

    public Optional<Parameter> findParameter(String id) {
        return Optional.ofNullable(parameters.get(id));
    }

    /** @throws IllegalArgumentException naming the valid ids */
    public Parameter parameter(String id) {
        return findParameter(id)
                .orElseThrow(() -> new IllegalArgumentException(
                        "no parameter '" + id + "'; there are " + String.join(", ", parameters.keySet())));
    }

    /** The scales one parameter may be written in, the canonical one first. */
    public List<Scale> scales(Parameter parameter) {
        return scales.stream().filter(s -> s.parameter().equals(parameter)).toList();
    }

    public Scale canonicalScale(Parameter parameter) {
        return scales(parameter).stream()
                .filter(s -> s.id().equals(parameter.unit()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(parameter.id() + " has no scale in its own unit"));
    }

    /** The scale a unit as written stands for with this parameter: {@code ppb p} with phosphate gives {@code ug/L P}. */
    public Optional<Scale> findScale(Parameter parameter, String unitAsWritten) {
        String folded = Names.fold(unitAsWritten);
        List<Scale> of = scales(parameter);
        Optional<Scale> direct =
                of.stream().filter(s -> Names.fold(s.id()).equals(folded)).findFirst();
        if (direct.isPresent()) {
            return direct;
        }
        return aliases.stream()
                .filter(a -> a.kind() == Alias.Kind.UNIT && a.text().equals(folded))
                .filter(a -> a.scope().isEmpty() || a.scope().equals(parameter.id()))
                .flatMap(a -> of.stream().filter(s -> s.id().equals(a.means())))
                .findFirst();
    }

    public List<Alias> aliases(Alias.Kind kind) {
        return aliases.stream().filter(a -> a.kind() == kind).toList();
    }

    public Optional<TargetRange> findTarget(Parameter parameter) {
        return targets.stream().filter(t -> t.parameter().equals(parameter)).findFirst();
    }

    public List<TargetRange> targets() {
        return targets;
    }

    public List<Constant> constants() {
        return constants;
    }

    public List<Source> sources() {
        return sources;
    }
}
