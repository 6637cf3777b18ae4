package soundings.results;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.care.Course;
import soundings.findings.Findings;
import soundings.golden.Sampled;

/** The results file against the schema that ships with the program, by a validator of others. */
class ResultsSchemaTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "club log.xlsx",
                "clinic log.xlsx",
                "trace elements.xlsx",
                "exchange school.csv",
                "one line a test.xlsx"
            })
    void the_results_of_every_sample_keep_to_the_schema(String file) throws IOException {
        assertThat(schema().validate(results(file))).isEmpty();
    }

    @Test
    void the_clinics_new_tank_treatment_and_moves_are_in_the_file_as_in_the_findings() throws IOException {
        Findings findings = Sampled.findings("clinic log.xlsx");
        JsonNode care = results("clinic log.xlsx").get("care");

        assertThat(care.get("newTanks")).hasSameSizeAs(findings.care().newTanks());
        assertThat(care.get("courses")).hasSameSizeAs(findings.care().courses()).isNotEmpty();
        assertThat(care.get("moves")).hasSameSizeAs(findings.care().moves()).isNotEmpty();
        Course course = findings.care().courses().get(0);
        JsonNode written = care.get("courses").get(0);
        assertThat(written.get("started").asText()).isEqualTo(course.started().toString());
        assertThat(written.get("doses")).hasSameSizeAs(course.doses());
        assertThat(written.get("day").asLong()).isEqualTo(course.day(course.until()));
    }

    @Test
    void the_clubs_jobs_and_tests_are_in_the_file_as_in_the_findings() throws IOException {
        Findings findings = Sampled.findings("club log.xlsx");
        JsonNode upkeep = results("club log.xlsx").get("upkeep");

        assertThat(upkeep.get("jobs")).hasSameSizeAs(findings.upkeep().jobs()).isNotEmpty();
        assertThat(upkeep.get("jobs").get(0).get("what").asText())
                .isEqualTo(findings.upkeep().jobs().get(0).what());
        assertThat(upkeep.get("tests"))
                .hasSameSizeAs(findings.upkeep().testing().tests());
    }

    @Test
    void the_schema_refuses_what_the_file_must_not_hold() throws IOException {
        ObjectNode results = (ObjectNode) results("trace elements.xlsx");
        ((ObjectNode) results.get("readings").get(0)).put("use", "guessed");
        results.remove("estimates");

        assertThat(schema().validate(results)).hasSize(2);
    }

    private static JsonNode results(String file) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ResultsJson.write(Sampled.findings(file), out);
        return JSON.readTree(out.toByteArray());
    }

    private static JsonSchema schema() throws IOException {
        try (InputStream in = ResultsJson.class.getResourceAsStream("results.schema.json")) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(in);
        }
    }
}
