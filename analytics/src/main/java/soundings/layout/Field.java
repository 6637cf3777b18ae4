package soundings.layout;

import java.util.List;
import java.util.Set;
import soundings.log.Inferred;
import soundings.sheet.Cell;

/**
 * A column of a table and what it was taken for.
 *
 * @param labels the heading cells that stand over it, from top to bottom
 * @param header their texts
 * @param inferred what about it no header says
 */
record Field(int column, List<Cell> labels, String header, Label label, Set<Inferred> inferred, String because) {

    Role role() {
        return label.role();
    }

    Field with(Label other) {
        return new Field(column, labels, header, other, inferred, because);
    }

    Field guessed(Label other, Set<Inferred> how, String why) {
        return new Field(column, labels, header, other, how, why);
    }
}
