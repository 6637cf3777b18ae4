package soundings.layout;

import java.util.List;
import java.util.Optional;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.Value;
import soundings.wording.Containers;
import soundings.wording.DecimalMark;
import soundings.wording.Vocabulary;

/** What the keeper's bucket holds, where a cell of the log tells it: {@code 1 bucket = 15 L}. */
final class ToldBucket {
    private static final int LONGEST = 60;

    private ToldBucket() {}

    /** Empty where no cell tells it, or two tell different sizes. */
    static Optional<Containers.Bucket> in(Book book, DecimalMark mark, Vocabulary vocabulary) {
        List<Containers.Bucket> told = book.grids().stream()
                .flatMap(g -> g.cells().stream())
                .flatMap(c -> text(c).stream())
                .flatMap(t -> Containers.bucket(t, mark, vocabulary).stream())
                .distinct()
                .toList();
        return told.size() == 1 ? Optional.of(told.get(0)) : Optional.empty();
    }

    private static Optional<String> text(Cell cell) {
        return cell.value() instanceof Value.Text text && text.text().length() <= LONGEST
                ? Optional.of(text.text())
                : Optional.empty();
    }
}
