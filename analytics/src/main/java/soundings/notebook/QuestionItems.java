package soundings.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.advice.Judgement;
import soundings.advice.Recommendation;
import soundings.advice.Verdict;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;

/** What the findings leave open, each question with room for somebody's answer. */
final class QuestionItems {
    private QuestionItems() {}

    static List<Item> questions(View view) {
        List<Row> rows = new ArrayList<>();
        view.findings().advice().judgements().stream()
                .filter(j -> Tones.of(j.verdict()) == Tone.ACT && view.has(j.tank(), j.parameter()))
                .forEach(j -> rows.add(cause(view, j)));
        view.findings()
                .advice()
                .recommendations()
                .forEach(r -> r.withheld().ifPresent(w -> rows.add(withheld(view, r, w))));
        view.tanks().forEach(tank -> untold(view, tank.tank()).ifPresent(rows::add));
        List<Column> columns = List.of(
                Column.words("Tank"),
                Column.words("Question"),
                Column.words("What is known"),
                new Column("Answer", "", Kind.ANSWER, 0),
                new Column("By", "", Kind.ANSWER, 0),
                new Column("On", "", Kind.ANSWER, 0));
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        "questions", "Questions, with room for an answer", columns, rows, false, List.of()));
    }

    private static Row withheld(View view, Recommendation r, Recommendation.Withheld w) {
        String of = r.additive().isEmpty() ? Sentences.lower(r.parameter().name()) : r.additive();
        return row(
                view,
                r.tank(),
                "What dose of " + of + " would you give?",
                Text.sentence(w.message()) + " " + Text.sentence(w.wouldLift()));
    }

    /** One question for all tests of a tank that cannot be told yet. */
    private static Optional<Row> untold(View view, String tank) {
        List<Judgement> open = view.findings().advice().judgements().stream()
                .filter(j -> j.tank().equals(tank) && j.verdict() == Verdict.CANNOT_TELL)
                .toList();
        String tests = Figures.list(
                open.stream().map(j -> Sentences.lower(j.parameter().name())).toList());
        String known = String.join(
                " ",
                open.stream()
                        .map(j -> Text.sentence(j.because()))
                        .distinct()
                        .limit(3)
                        .toList());
        return open.isEmpty()
                ? Optional.empty()
                : Optional.of(row(view, tank, "How would you judge " + tests + " meanwhile?", known));
    }

    private static Row cause(View view, Judgement j) {
        return row(
                view,
                j.tank(),
                "Why is " + Sentences.lower(j.parameter().name()) + " "
                        + j.verdict().words() + ", and would you act now?",
                Text.sentence(j.because()));
    }

    private static Row row(View view, String tank, String question, String known) {
        Cell name =
                new Cell.Words(view.tankIds().containsKey(tank) ? View.name(view.tank(tank)) : tank, Tone.PLAIN, "");
        return new Row(
                List.of(name, Cell.words(question), Cell.words(known), Cell.NOTHING, Cell.NOTHING, Cell.NOTHING),
                List.of());
    }
}
