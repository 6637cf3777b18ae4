package soundings.forms;

import java.util.List;
import java.util.Optional;

/**
 * What one sheet asks for.
 *
 * @param about what the sheet is for, a sentence or two for the guide
 */
record Form(String sheet, String about, List<Field> fields) {
    Form {
        fields = List.copyOf(fields);
    }

    /** The fields that tell one row from another. */
    List<Field> keys() {
        return fields.stream().filter(f -> f.part() == Field.Part.KEY).toList();
    }

    Optional<Field> findField(String header) {
        return fields.stream().filter(f -> f.header().equals(header)).findFirst();
    }
}
