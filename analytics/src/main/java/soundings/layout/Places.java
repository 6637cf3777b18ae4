package soundings.layout;

import java.util.HashMap;
import java.util.Map;
import soundings.sheet.CellRef;

/** Where in its sheet a cell of an {@link Area} stands. */
sealed interface Places {
    Places UPRIGHT = new Upright();
    Places TURNED = new Turned();

    CellRef of(CellRef at);

    /** The places of the same area with rows and columns exchanged. */
    Places turn();

    /** Whether rows and columns are exchanged. */
    boolean turned();

    /** As in the sheet. */
    record Upright() implements Places {
        @Override
        public CellRef of(CellRef at) {
            return at;
        }

        @Override
        public Places turn() {
            return TURNED;
        }

        @Override
        public boolean turned() {
            return false;
        }
    }

    /** Rows and columns are exchanged. */
    record Turned() implements Places {
        @Override
        public CellRef of(CellRef at) {
            return exchanged(at);
        }

        @Override
        public Places turn() {
            return UPRIGHT;
        }

        @Override
        public boolean turned() {
            return true;
        }
    }

    /**
     * Laid out anew; each cell of the area with its place in the sheet.
     *
     * @param dated whether the first two columns were made to hold the day and the tank of each line
     */
    record Moved(Map<CellRef, CellRef> places, boolean turned, boolean dated) implements Places {
        static Moved of(Map<CellRef, CellRef> places, boolean dated) {
            return new Moved(Map.copyOf(places), false, dated);
        }

        @Override
        public CellRef of(CellRef at) {
            return places.getOrDefault(at, at);
        }

        @Override
        public Places turn() {
            Map<CellRef, CellRef> other = new HashMap<>();
            places.forEach((at, place) -> other.put(exchanged(at), place));
            return new Moved(Map.copyOf(other), !turned, false);
        }
    }

    private static CellRef exchanged(CellRef at) {
        return new CellRef(/* row= */ at.column(), /* column= */ at.row());
    }
}
