package soundings.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.XMLConstants;
import javax.xml.transform.Source;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import javax.xml.validation.Validator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.xml.sax.ErrorHandler;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Every part of a report's workbook against the schemas of ECMA-376 (transitional), which poi-ooxml-full carries: a spreadsheet may
 * call a file broken that others open.
 */
class WorkbookSchemaTest {
    private static final Path SCHEMAS = Path.of("target", "workbook-schemas", "org/apache/poi/schemas/ooxml/src");

    private static Schema schema;

    @BeforeAll
    static void schemas() throws SAXException {
        Source[] sources = Stream.of("sml.xsd", "dml-spreadsheetDrawing.xsd", "dml-chart.xsd")
                .map(name -> new StreamSource(SCHEMAS.resolve(name).toUri().toString()))
                .toArray(Source[]::new);
        schema = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI).newSchema(sources);
    }

    @Test
    void every_sheet_chart_drawing_and_style_is_valid() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        XlsxReport.write(SampleReport.small(), out);

        List<String> checked = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                if (part.getName().startsWith("xl/") && part.getName().endsWith(".xml")) {
                    checked.add(part.getName());
                    wrong.addAll(wrong(part.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8)));
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(checked)
                .contains("xl/workbook.xml", "xl/styles.xml", "xl/charts/chart1.xml", "xl/drawings/drawing1.xml");
    }

    @Test
    void the_schemas_do_find_what_is_wrong() throws Exception {
        String chart = Files.readString(Path.of("src/test/resources/soundings/xlsx/no-scatter-style.xml"));

        assertThat(wrong("chart", chart)).singleElement().asString().contains("scatterStyle");
    }

    /** White space kept in a text is written with xml:space by every spreadsheet, though the schema's strings have no attributes. */
    private static List<String> wrong(String part, String xml) throws IOException, SAXException {
        List<String> wrong = new ArrayList<>();
        Validator validator = schema.newValidator();
        validator.setErrorHandler(new Noting(part, wrong));
        validator.validate(new StreamSource(new StringReader(xml.replace(" xml:space=\"preserve\"", ""))));
        return wrong;
    }

    private record Noting(String part, List<String> wrong) implements ErrorHandler {
        @Override
        public void warning(SAXParseException e) {
            error(e);
        }

        @Override
        public void error(SAXParseException e) {
            wrong.add(part + ": " + e.getMessage());
        }

        @Override
        public void fatalError(SAXParseException e) {
            error(e);
        }
    }
}
