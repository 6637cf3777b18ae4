package soundings.notebook;

import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import soundings.template.Signature;

/** An item a template may ask for, what it answers, and the function that makes it. */
record Offered(Signature signature, String answers, BiFunction<View, Map<String, String>, List<Item>> items) {
    static Offered whole(String name, String answers, java.util.function.Function<View, List<Item>> items) {
        return new Offered(new Signature(name, List.of()), answers, (view, arguments) -> items.apply(view));
    }

    static Offered ofTank(String name, String answers, BiFunction<View, String, List<Item>> items) {
        return new Offered(
                new Signature(name, List.of("tank")),
                answers,
                (view, arguments) -> items.apply(view, arguments.getOrDefault("tank", "")));
    }

    static Offered ofKind(String name, String answers, BiFunction<View, String, List<Item>> items) {
        return new Offered(
                new Signature(name, List.of("kind")),
                answers,
                (view, arguments) -> items.apply(view, arguments.getOrDefault("kind", "")));
    }

    /** An item of the one thing its argument names. */
    static Offered of(String name, String argument, String answers, BiFunction<View, String, List<Item>> items) {
        return new Offered(
                new Signature(name, List.of(argument)),
                answers,
                (view, arguments) -> items.apply(view, arguments.getOrDefault(argument, "")));
    }

    static Offered ofTest(String name, String answers, BiFunction<View, View.Test, List<Item>> items) {
        return new Offered(new Signature(name, List.of("tank", "test")), answers, (view, arguments) -> {
            String tank = arguments.getOrDefault("tank", "");
            String test = arguments.getOrDefault("test", "");
            return items.apply(view, new View.Test(view.tank(tank), view.series(tank, test)));
        });
    }
}
