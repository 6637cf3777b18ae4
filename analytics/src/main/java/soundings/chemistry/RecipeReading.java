package soundings.chemistry;

import java.util.function.Function;

/** What came of reading a recipe: a solution, or why not. */
public sealed interface RecipeReading {
    <R> R match(Function<Understood, R> understood, Function<NotUnderstood, R> notUnderstood);

    record Understood(StockSolution solution) implements RecipeReading {
        @Override
        public <R> R match(Function<Understood, R> understood, Function<NotUnderstood, R> notUnderstood) {
            return understood.apply(this);
        }
    }

    /** @param why for the keeper, with what would be understood */
    record NotUnderstood(String written, String why) implements RecipeReading {
        @Override
        public <R> R match(Function<Understood, R> understood, Function<NotUnderstood, R> notUnderstood) {
            return notUnderstood.apply(this);
        }
    }
}
