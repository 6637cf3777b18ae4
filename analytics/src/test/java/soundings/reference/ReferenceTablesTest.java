package soundings.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;

class ReferenceTablesTest {
    private static final Reference REFERENCE = ReferenceTables.load();

    @ParameterizedTest(name = "{0} {1} {2} is {3}")
    @CsvSource({
        "phosphate, ppb P, 20, 0.0613",
        "phosphate, PO4-P, 0.02, 0.0613",
        "alkalinity, ppm, 146, 8.180",
        "alkalinity, meq/L, 2.9, 8.131",
        "salinity, SG, 1.0264, 35.036",
        "salinity, mS/cm, 53.071, 35.0",
        "temperature, °F, 78, 25.556",
        "temperature, ºC, 25, 25",
        "temperature, K, 298.15, 25",
        "nitrate, NO3-N, 1, 4.4266",
        "iodine, µg/l, 60, 0.060",
        "calcium, mmol/L, 10, 400.78",
        "calcium, mg/kg, 412.09, 421.709",
    })
    void a_unit_as_written_finds_its_scale(String id, String unit, double written, double canonical) {
        Parameter parameter = REFERENCE.parameter(id);

        Scale scale = REFERENCE.findScale(parameter, unit).orElseThrow();

        assertThat(scale.canonical(written)).isCloseTo(canonical, within(0.001 * canonical));
    }

    @Test
    void every_scale_goes_there_and_back() {
        for (Parameter parameter : REFERENCE.parameters()) {
            double middle = (parameter.plausibleLow() + parameter.plausibleHigh()) / 2;
            for (Scale scale : REFERENCE.scales(parameter)) {
                assertThat(scale.canonical(scale.written(middle)))
                        .as(scale.toString())
                        .isCloseTo(middle, within(1e-9 * middle));
            }
        }
    }
}
