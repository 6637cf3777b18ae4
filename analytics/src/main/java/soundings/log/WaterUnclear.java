package soundings.log;

import java.util.Optional;

/** Columns of one test under different names may be one tank's or several tanks'; those under a name were not used. */
public record WaterUnclear(AsWritten at, String headers) implements Issue {
    @Override
    public Severity severity() {
        return Severity.SERIOUS;
    }

    @Override
    public Optional<AsWritten> where() {
        return Optional.of(at);
    }

    @Override
    public String message() {
        return "whose water is it under " + headers + "? The same test stands under another heading with other values, "
                + "so these are not used until sheet Columns of the setup names the tank of each";
    }
}
