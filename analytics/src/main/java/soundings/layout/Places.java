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

    /** Columns were put before the sheet's own; each of their cells stands elsewhere in the sheet. */
    record Prefixed(int columns, Map<CellRef, CellRef> elsewhere) implements Places {
        @Override
        public CellRef of(CellRef at) {
            CellRef own = new CellRef(at.row(), Math.max(0, at.column() - columns));
            return elsewhere.getOrDefault(at, own);
        }
    }
}
