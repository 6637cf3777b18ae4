package soundings.corpus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import soundings.Analysis;
import soundings.advice.Action;
import soundings.care.Clearing;
import soundings.care.Course;
import soundings.care.Move;
import soundings.care.NewTank;
import soundings.findings.Findings;
import soundings.findings.Provenance;
import soundings.notebook.Notebook;
import soundings.notebook.Notebooks;
import soundings.reference.ReferenceTables;
import soundings.setup.Settings;
import soundings.template.Shipped;
import soundings.workbook.WorkbookReader;

/** The clinic's sample workbook from the file to the page, against what its generator knows. */
class ClinicSampleTest {
    private static final Path SAMPLES = Path.of("..", "sample-workbooks");
    private static final Findings FINDINGS = Analysis.of(
            WorkbookReader.read(SAMPLES.resolve("clinic log.xlsx"), Optional.empty()),
            Optional.of(WorkbookReader.read(SAMPLES.resolve("clinic log-setup.xlsx"), Optional.empty())),
            new Provenance("clinic log.xlsx", "", "", "", ""),
            ReferenceTables.load(),
            new Settings(LocalDate.of(2026, 11, 2), Optional.empty()));

    private static String[] fact(String kind) throws IOException {
        return Files.readAllLines(SAMPLES.resolve("clinic log.expected.csv")).stream()
                .map(l -> l.split(",", -1))
                .filter(f -> f[0].equals(kind))
                .findFirst()
                .orElseThrow();
    }

    private static Course course() {
        assertThat(FINDINGS.care().courses()).hasSize(1);
        return FINDINGS.care().courses().get(0);
    }

    @Test
    void the_day_is_counted_from_the_dates_and_the_one_wrong_note_is_named() throws IOException {
        assertThat((double) course().day(course().until())).isEqualTo(Double.parseDouble(fact("day")[5]));
        assertThat(course().disputes()).singleElement().satisfies(d -> {
            assertThat(d.called()).isEqualTo(8);
            assertThat(d.isDay()).isEqualTo(9);
        });
    }

    @Test
    void what_is_left_of_the_medicine_is_what_the_generator_left() throws IOException {
        assertThat(course().left().orElseThrow()).isCloseTo(Double.parseDouble(fact("left")[5]), within(1e-4));
    }

    @Test
    void the_relapse_and_the_earliest_end_are_found() throws IOException {
        assertThat(course().relapses())
                .singleElement()
                .satisfies(r -> assertThat(r.on().toString()).isEqualTo(fact("relapse")[2]));
        assertThat(course().signFree().end().map(Object::toString)).contains(fact("earliestEnd")[2]);
        assertThat(course().better().answer()).isEqualTo(Course.Better.Answer.BETTER);
    }

    @Test
    void the_lagoon_is_not_ready_for_its_nitrite_and_the_interval_holds_the_true_day() throws IOException {
        assertThat(FINDINGS.care().newTanks()).extracting(NewTank::tank).containsExactly("Lagoon");
        NewTank lagoon = FINDINGS.care().newTanks().get(0);
        Clearing nitrite = lagoon.clearings().get(1);
        String[] gone = fact("gone");
        double days = Double.parseDouble(gone[5])
                + ChronoUnit.DAYS.between(nitrite.peak().orElseThrow().date(), LocalDate.parse(gone[2]));

        assertThat(lagoon.lacks()).isEqualTo(NewTank.Lacks.NITRITE_GONE);
        assertThat(nitrite.gone().orElseThrow().day()).satisfies(i -> {
            assertThat(i.low()).isLessThanOrEqualTo(days);
            assertThat(i.high()).isGreaterThanOrEqualTo(days);
        });
    }

    @Test
    void the_seagrass_tank_says_how_long_it_took() throws IOException {
        assertThat(FINDINGS.care().newTanks().get(0).earlier())
                .singleElement()
                .satisfies(e -> assertThat((double) e.daysToZeros().orElseThrow())
                        .isEqualTo(Double.parseDouble(fact("zeros")[5])));
    }

    @Test
    void the_blenny_is_not_to_go_straight_back_to_saltier_water() {
        Move planned = FINDINGS.care().moves().stream()
                .filter(Move::planned)
                .findFirst()
                .orElseThrow();

        assertThat(planned.sides().stream()
                        .filter(s -> s.standing() == Move.Standing.APART)
                        .map(s -> s.parameter().id()))
                .containsExactly("salinity");
        assertThat(planned.medicines()).hasSize(1);
        assertThat(FINDINGS.care().moves()).anyMatch(m -> !m.planned() && m.to().equals("Sick bay"));
    }

    @Test
    void ammonia_in_the_sick_bay_comes_first_and_the_empty_lagoon_raises_no_alarm() {
        List<Action> now = FINDINGS.advice().actions().stream()
                .filter(a -> a.urgency() == Action.Urgency.NOW)
                .toList();

        assertThat(FINDINGS.advice().actions().get(0).urgency()).isEqualTo(Action.Urgency.NOW);
        assertThat(now).anyMatch(a -> a.tank().equals("Sick bay"));
        assertThat(now).noneMatch(a -> a.tank().equals("Lagoon"));
    }

    @Test
    void the_notebooks_say_it_in_sentences_with_the_cautions() {
        Notebook course = Notebooks.run(Shipped.named("course"), FINDINGS);
        String text = text(course);

        assertThat(text).contains("Ask a vet").contains("never down a drain").contains("calls it day 8");
        assertThat(text(Notebooks.run(Shipped.named("new-tank"), FINDINGS))).contains("Not ready on day 33");
        assertThat(text(Notebooks.run(Shipped.named("monthly"), FINDINGS))).contains("Not straight over");
    }

    private static String text(Notebook notebook) {
        return notebook.items()
                .flatMap(i -> i.match(
                        p -> p.blocks().stream().map(b -> b.text()),
                        t -> java.util.stream.Stream.of(t.caption()),
                        c -> java.util.stream.Stream.of(c.spec().finding()),
                        w -> java.util.stream.Stream.of(w.result()),
                        a -> a.entries().stream().map(e -> e.what())))
                .collect(Collectors.joining("\n"));
    }
}
