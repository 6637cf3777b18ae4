package soundings.notebook;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** A report: what the reader sees first stands first. Section ids are unique; links point to them or to item ids. */
public record Notebook(String title, String subtitle, List<Section> sections) {
    public Notebook {
        sections = List.copyOf(sections);
    }

    /** Every item in reading order. */
    public Stream<Item> items() {
        return sections.stream().flatMap(s -> s.items().stream());
    }

    /** The tables in reading order, wherever they stand. */
    public Stream<TableItem> tables() {
        return only(item -> item.match(
                p -> Optional.empty(),
                Optional::of,
                c -> Optional.empty(),
                w -> Optional.empty(),
                a -> Optional.empty()));
    }

    /** The charts in reading order. */
    public Stream<ChartItem> charts() {
        return only(item -> item.match(
                p -> Optional.empty(),
                t -> Optional.empty(),
                Optional::of,
                w -> Optional.empty(),
                a -> Optional.empty()));
    }

    /** The workings in reading order. */
    public Stream<WorkingItem> workings() {
        return only(item -> item.match(
                p -> Optional.empty(),
                t -> Optional.empty(),
                c -> Optional.empty(),
                Optional::of,
                a -> Optional.empty()));
    }

    private <T> Stream<T> only(Function<Item, Optional<T>> pick) {
        return items().map(pick).flatMap(Optional::stream);
    }
}
