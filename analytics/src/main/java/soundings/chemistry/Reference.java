package soundings.chemistry;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toMap;
import static java.util.stream.Collectors.toUnmodifiableMap;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Every fact the program knows, as plain values; loaded once by {@code reference} and handed to each stage. */
public final class Reference {
    private final Map<String, Parameter> parameters;
    private final List<Parameter> parameterList;
    private final Map<String, List<Scale>> scales;
    private final Map<Alias.Kind, List<Alias>> aliases;
    private final Map<Alias.Kind, Map<String, List<Alias>>> aliasesByText;
    private final Map<String, Map<String, Scale>> scalesBySpelling;
    private final List<TargetRange> targets;
    private final Map<String, Constant> constants;
    private final List<Constant> constantList;
    private final List<Source> sources;
    private final Substances substances;
    private final List<Equation> equations;
    private final List<Part> parts;

    public Reference(
            List<Parameter> parameters,
            List<Scale> scales,
            List<Alias> aliases,
            List<TargetRange> targets,
            List<Constant> constants,
            List<Source> sources,
            Substances substances,
            List<Equation> equations,
            List<Part> parts) {
        this.parameterList = List.copyOf(parameters);
        this.parameters = parameterList.stream().collect(toMap(Parameter::id, Function.identity()));
        this.scales = scales.stream().collect(groupingBy(s -> s.parameter().id()));
        this.aliases = aliases.stream().collect(groupingBy(Alias::kind));
        this.aliasesByText = aliases.stream().collect(groupingBy(Alias::kind, groupingBy(Alias::text)));
        this.scalesBySpelling = parameterList.stream().collect(toUnmodifiableMap(Parameter::id, this::spellings));
        this.targets = List.copyOf(targets);
        this.constantList = List.copyOf(constants);
        this.constants = constantList.stream().collect(toMap(Constant::id, Function.identity()));
        this.sources = List.copyOf(sources);
        this.substances = substances;
        this.equations = List.copyOf(equations);
        this.parts = List.copyOf(parts);
    }

    public Reference(
            List<Parameter> parameters,
            List<Scale> scales,
            List<Alias> aliases,
            List<TargetRange> targets,
            List<Constant> constants,
            List<Source> sources) {
        this(parameters, scales, aliases, targets, constants, sources, Substances.NONE, List.of(), List.of());
    }

    /** Every folded spelling that finds a scale of this parameter; a scale's own id first, then spellings limited to it, then general ones. */
    private Map<String, Scale> spellings(Parameter parameter) {
        Map<String, Scale> byId = scales(parameter).stream().collect(toMap(Scale::id, Function.identity()));
        Map<String, Scale> found = new HashMap<>();
        byId.forEach((id, scale) -> found.put(Names.fold(id), scale));
        scales(parameter).forEach(s -> found.putIfAbsent(Names.fold(s.label()), s));
        for (String scope : List.of(parameter.id(), "")) {
            for (Alias alias : aliases(Alias.Kind.UNIT)) {
                if (alias.scope().equals(scope) && byId.containsKey(alias.means())) {
                    found.putIfAbsent(alias.text(), byId.get(alias.means()));
                }
            }
        }
        return Map.copyOf(found);
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

    /** The parameter a keeper's word names: {@code "Carb. hardness"} gives alkalinity. */
    public Optional<Parameter> findParameterNamed(String word) {
        return find(Alias.Kind.PARAMETER, word).stream().findFirst().flatMap(a -> findParameter(a.means()));
    }

    /** What to say of where a fact comes from; the key itself where it is no key of a source. */
    public String citation(String key) {
        return sources().stream()
                .filter(s -> s.key().equals(key))
                .findFirst()
                .map(s -> s.commonPractice() ? "common practice, no source" : s.citation())
                .orElse(key);
    }

    /** Whether a name, of an additive say, is the parameter's or has it as a word: {@code potassium iodide mix}. */
    public boolean isNamedIn(Parameter parameter, String name) {
        String folded = Names.fold(name);
        List<String> words = List.of(folded.split("[^\\p{L}\\p{N}]+"));
        return aliases(Alias.Kind.PARAMETER).stream()
                .filter(a -> a.means().equals(parameter.id()))
                .anyMatch(a -> folded.equals(a.text()) || words.contains(a.text()));
    }

    /** The scales one parameter may be written in, the canonical one first. */
    public List<Scale> scales(Parameter parameter) {
        return scales.getOrDefault(parameter.id(), List.of());
    }

    /** The scales worth trying where a unit is not written, the canonical one first. */
    public List<Scale> usualScales(Parameter parameter) {
        return scales(parameter).stream().filter(Scale::usual).toList();
    }

    public Scale canonicalScale(Parameter parameter) {
        return scales(parameter).stream()
                .filter(s -> s.id().equals(parameter.unit()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(parameter.id() + " has no scale in its own unit"));
    }

    /** The scale a unit as written stands for with this parameter: {@code ppb p} with phosphate gives {@code ug/L P}. */
    public Optional<Scale> findScale(Parameter parameter, String unitAsWritten) {
        Map<String, Scale> spellings = scalesBySpelling.getOrDefault(parameter.id(), Map.of());
        return Optional.ofNullable(spellings.get(Names.fold(unitAsWritten)));
    }

    public List<Alias> aliases(Alias.Kind kind) {
        return aliases.getOrDefault(kind, List.of());
    }

    /** What a word, folded first, stands for as a word of this kind; a unit's spelling may have one meaning a parameter. */
    public List<Alias> find(Alias.Kind kind, String word) {
        return aliasesByText.getOrDefault(kind, Map.of()).getOrDefault(Names.fold(word), List.of());
    }

    public Optional<TargetRange> findTarget(Parameter parameter) {
        return targets.stream().filter(t -> t.parameter().equals(parameter)).findFirst();
    }

    public List<TargetRange> targets() {
        return targets;
    }

    public List<Constant> constants() {
        return constantList;
    }

    public Optional<Constant> findConstant(String id) {
        return Optional.ofNullable(constants.get(id));
    }

    /** The default limit on a day's rise, canonical unit; common practice. */
    public Optional<Constant> findMaxRisePerDay(Parameter parameter) {
        return findConstant("max_rise_per_day_" + parameter.id());
    }

    public List<Source> sources() {
        return sources;
    }

    public Substances substances() {
        return substances;
    }

    /** Equipment and what is at risk when it fails. */
    public List<Part> parts() {
        return parts;
    }

    /** The published relations behind what is computed. */
    public List<Equation> equations() {
        return equations;
    }
}
