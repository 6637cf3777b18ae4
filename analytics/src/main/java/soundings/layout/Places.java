package soundings.layout;

import java.util.Map;
import soundings.sheet.CellRef;

/** Where in its sheet a cell of an {@link Area} stands. */
sealed interface Places {
    Places UPRIGHT = new Upright();
    Places TURNED = new Turned();

    CellRef of(CellRef at);

    /** As in the sheet. */
    record Upright() implements Places {
        @Override
        public CellRef of(CellRef at) {
            return at;
        }
    }

    /** Rows and columns are exchanged. */
    record Turned() implements Places {
        @Override
        public CellRef of(CellRef at) {
            return new CellRef(/* row= */ at.column(), /* column= */ at.row());
        }
    }

    /** Laid out anew; each cell of the area with its place in the sheet. */
    record Moved(Map<CellRef, CellRef> places) implements Places {
        @Override
        public CellRef of(CellRef at) {
            return places.getOrDefault(at, at);
        }
    }
}
