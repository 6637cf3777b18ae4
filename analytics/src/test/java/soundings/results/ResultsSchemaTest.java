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
