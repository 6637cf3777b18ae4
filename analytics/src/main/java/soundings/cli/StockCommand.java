package soundings.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import soundings.chemistry.Creep;
import soundings.chemistry.RecipeReading;
import soundings.chemistry.Recipes;
import soundings.chemistry.Reference;
import soundings.chemistry.StockSolution;
import soundings.reference.ReferenceTables;

/** {@code stock RECIPE...}: how strong each solution is and how they compare. Reads no log. */
@Command(
        name = "stock",
        description = "Strength of stock solutions, and what volume of one equals a mL of another.",
        footer = {
            "",
            "A recipe is written by weight, by what a label says it does, or by strength:",
            "  stock \"KI 5 g in 1 L\" \"I2 5 g + KI 10 g in 100 mL\"",
            "  stock \"CaCl2.2H2O 150 g in 1 L\" \"label: 1 mL in 100 L raises calcium 0.5 mg/L\"",
            "  stock \"20 mg/mL iodine\""
        },
        mixinStandardHelpOptions = true)
final class StockCommand implements Callable<Integer> {
    private static final int DONE = 0;
    private static final int NOT_DONE = 1;

    @Parameters(arity = "1..*", paramLabel = "RECIPE", description = "As \"NaHCO3 80 g in 1 L\".")
    private List<String> recipes = List.of();

    @Option(
            names = "--ml-per-day",
            paramLabel = "ML",
            description = "With --litres: what this dose of each leaves in the tank in 30 days.")
    private Optional<Double> mlPerDay = Optional.empty();

    @Option(names = "--litres", paramLabel = "L", description = "Water in the tank.")
    private Optional<Double> litres = Optional.empty();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        if (mlPerDay.isPresent() != litres.isPresent() || mlPerDay.orElse(1.0) <= 0 || litres.orElse(1.0) <= 0) {
            throw new ParameterException(spec.commandLine(), "--ml-per-day and --litres go together and are above 0");
        }
        Reference reference = ReferenceTables.load();
        List<StockSolution> solutions = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        for (String recipe : recipes) {
            read(recipe, reference, solutions, problems);
        }
        PrintWriter out = spec.commandLine().getOut();
        StockText.lines(solutions, reference).forEach(out::println);
        if (mlPerDay.isPresent() && litres.isPresent() && !solutions.isEmpty()) {
            creep(solutions, reference).forEach(out::println);
        }
        out.flush();
        problems.forEach(spec.commandLine().getErr()::println);
        return problems.isEmpty() ? DONE : NOT_DONE;
    }

    private static void read(String recipe, Reference reference, List<StockSolution> solutions, List<String> problems) {
        RecipeReading reading = Recipes.read(recipe, reference);
        reading.match(u -> solutions.add(u.solution()), n -> problems.add("\"" + n.written() + "\": " + n.why()));
    }

    private List<String> creep(List<StockSolution> solutions, Reference reference) {
        double millilitres = 30 * mlPerDay.orElseThrow();
        List<Creep.Dosed> doses =
                solutions.stream().map(s -> new Creep.Dosed(s, millilitres)).toList();
        return StockText.creep(Creep.of(doses, litres.orElseThrow(), reference));
    }
}
