package soundings.template;

import java.util.List;

/** An item a template may ask for: {@code <@name of="..."/>} with all of its arguments. */
public record Signature(String name, List<String> arguments) {
    public Signature {
        arguments = List.copyOf(arguments);
    }

    @Override
    public String toString() {
        String named =
                String.join("", arguments.stream().map(a -> " " + a + "=...").toList());
        return "<@" + name + named + "/>";
    }
}
