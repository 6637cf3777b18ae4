package soundings.setup;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import soundings.chemistry.Parameter;
import soundings.chemistry.RecipeReading;
import soundings.chemistry.Recipes;
import soundings.chemistry.Reference;
import soundings.setup.SheetTable.Row;

/** A row of the sheet Additives: what so much of it does to so much water. */
final class AdditiveRow {
    private static final double DEFAULT_ML = 1;
    private static final double DEFAULT_LITRES = 100;

    /** What comes along with most salts and is not what they are given for. */
    private static final Set<String> SALT = Set.of("salinity", "sodium", "chloride", "sulfate", "sulfur");

    private AdditiveRow() {}

    static Optional<Setup.Additive> read(Row row, Cells cells) {
        return SetupReading.isPrompt(row, "Parameter", "Rise", "Recipe", "Max rise a day")
                ? Optional.empty()
                : SetupReading.named(row, "Additive", cells)
                        .flatMap(name -> parameter(row, cells).map(parameter -> additive(name, parameter, row, cells)));
    }

    private static Optional<Parameter> parameter(Row row, Cells cells) {
        if (row.cell("Parameter").isPresent() || row.text("Recipe").isBlank()) {
            return cells.parameter(row);
        }
        List<Parameter> raised = raised(row.text("Recipe"), cells);
        List<Parameter> meant = meant(row.text("Additive"), raised, cells.reference());
        if (meant.size() != 1) {
            cells.issues().add(new SetupIssues.NothingToRaise(row.at("Recipe"), names(raised)));
            return Optional.empty();
        }
        cells.issues()
                .add(new SetupIssues.Assumed(
                        row.at("Recipe"),
                        "the recipe is taken to be given for "
                                + meant.get(0).name().toLowerCase(Locale.ROOT)
                                + "; the column Parameter takes another answer"));
        return Optional.of(meant.get(0));
    }

    /** What an additive of that name is given for: what it is called after, else the one thing besides common salt that it raises. */
    private static List<Parameter> meant(String name, List<Parameter> raised, Reference reference) {
        List<Parameter> called =
                raised.stream().filter(p -> reference.isNamedIn(p, name)).toList();
        return called.size() == 1
                ? called
                : raised.stream().filter(p -> !SALT.contains(p.id())).toList();
    }

    private static List<String> names(List<Parameter> parameters) {
        return parameters.stream().map(p -> p.name().toLowerCase(Locale.ROOT)).toList();
    }

    /** What the recipe raises; empty where it cannot be read. */
    private static List<Parameter> raised(String recipe, Cells cells) {
        return Recipes.read(recipe, cells.reference())
                .match(
                        u -> cells.reference().parameters().stream()
                                .filter(p -> u.solution().rise(p, 1, 1) > 0)
                                .toList(),
                        n -> List.of());
    }

    private static Setup.Additive additive(String name, Parameter parameter, Row row, Cells cells) {
        return new Setup.Additive(
                name,
                Cells.names(row, "Written as"),
                parameter,
                strength(row, parameter, cells),
                row.text("Recipe"),
                positive(cells.difference(row, "Max rise a day", parameter), row, "Max rise a day", cells),
                row.place(isByRecipe(row) ? "Recipe" : "Rise"));
    }

    /** The rise where one is written; else what the recipe tells; never the name. */
    private static OptionalDouble strength(Row row, Parameter parameter, Cells cells) {
        return isByRecipe(row) ? byRecipe(row, parameter, cells) : byRise(row, parameter, cells);
    }

    private static boolean isByRecipe(Row row) {
        return row.cell("Rise").isEmpty() && !row.text("Recipe").isBlank();
    }

    private static OptionalDouble byRecipe(Row row, Parameter parameter, Cells cells) {
        RecipeReading reading = Recipes.read(row.text("Recipe"), cells.reference());
        OptionalDouble rise =
                reading.match(u -> u.solution().risePerMlInOneLitre(parameter), n -> OptionalDouble.empty());
        if (rise.isEmpty() || rise.getAsDouble() <= 0) {
            String raises = "a recipe that raises " + parameter.name().toLowerCase(Locale.ROOT);
            String why = reading.match(u -> raises, n -> raises + " (" + n.why() + ")");
            cells.issues().add(new SetupIssues.UnreadableSetting(row.at("Recipe"), why));
            return OptionalDouble.empty();
        }
        return rise;
    }

    /** {@code ofMl} in {@code inLitres} raise by {@code rise}: 1 mL in 1 L raises by rise * inLitres / ofMl. */
    private static OptionalDouble byRise(Row row, Parameter parameter, Cells cells) {
        OptionalDouble rise = positive(cells.difference(row, "Rise", parameter), row, "Rise", cells);
        OptionalDouble ofMl = filled(cells.millilitres(row, "Of mL"), row, "Of mL", DEFAULT_ML);
        OptionalDouble inLitres = filled(cells.litres(row, "In litres"), row, "In litres", DEFAULT_LITRES);
        return rise.isPresent() && ofMl.isPresent() && inLitres.isPresent()
                ? OptionalDouble.of(rise.getAsDouble() * inLitres.getAsDouble() / ofMl.getAsDouble())
                : OptionalDouble.empty();
    }

    /** The default stands for a blank cell only, never for one that could not be read. */
    private static OptionalDouble filled(OptionalDouble read, Row row, String column, double blank) {
        return row.cell(column).isEmpty() ? OptionalDouble.of(blank) : read;
    }

    private static OptionalDouble positive(OptionalDouble number, Row row, String column, Cells cells) {
        if (number.isPresent() && number.getAsDouble() <= 0) {
            cells.issues().add(new SetupIssues.UnreadableSetting(row.at(column), "a rise above zero"));
            return OptionalDouble.empty();
        }
        return number;
    }
}
