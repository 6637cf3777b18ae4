package soundings.wording;

import java.util.List;

/** A name of the keeper's own (an additive, a tank) and the other ways it is written. */
public record Named(String name, List<String> writtenAs) {
    public Named {
        writtenAs = List.copyOf(writtenAs);
    }
}
