package soundings.notebook;

import java.util.List;

/**
 * A heading and what stands under it.
 *
 * @param depth 2 for a section of the report, 3 for a part of the section before it
 */
public record Section(String id, String heading, int depth, List<Item> items) {
    public Section {
        if (depth < 2 || depth > 4) {
            throw new IllegalArgumentException("a section stands at depth 2, 3 or 4, not " + depth);
        }
        items = List.copyOf(items);
    }
}
