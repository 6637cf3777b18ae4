package soundings.upkeep;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soundings.reference.ReferenceTables;

class JobWordsTest {
    private static final JobWords WORDS = new JobWords(ReferenceTables.load());

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            return pump rattles, have a look soon           | TO_MEND | return_pump
            Return pump RATTLING!!                          | TO_MEND | return_pump
            pump still rattling - order the part            | TO_MEND | pump
            sump leaks at the corner                        | TO_MEND | leak sump
            small drip under the left bulkhead              | TO_MEND | leak plumbing
            heater needs replacing                          | TO_MEND | heater
            must order a new heater                         | TO_MEND | heater
            float switch stuck again                        | TO_MEND | top_up
            check valve does not work                       | TO_MEND | check_valve
            plug is hot                                     | TO_MEND | power
            repair of the lid put off until the holidays    | TO_MEND | lid
            Heizstab defekt                                 | TO_MEND | heater
            pompe de remontée en panne                      | TO_MEND | return_pump
            the skimmer is very noisy                       | TO_MEND | skimmer
            heater should be fixed tomorrow                 | TO_MEND | heater
            return pump dead                                | TO_MEND | return_pump
            heater not fixed yet                            | TO_MEND | heater
            the heater again: relay chatters, still not done | TO_MEND | heater
            heater clicks on and off, look at it on Saturday | TO_MEND | heater
            heater fine, need to test more often            | NOTHING | ''
            opened wavemaker, shaft worn                    | TO_MEND | circulation_pump
            power strip damp under the stand!!              | TO_MEND | power stand
            Heizstab schaltet nicht ab, nachsehen!          | TO_MEND | heater
            heater cable is chafed, must replace some day   | TO_MEND | heater power
            float again                                     | AGAIN   | top_up
            shaft arrived, wavemaker back in, silent        | MENDED  | circulation_pump
            gasket fitted; skimmer dry now                  | MENDED  | skimmer
            must replace the fan sometime                   | TO_MEND | fan
            return pump fixed                               | MENDED  | return_pump
            new heater fitted                               | MENDED  | heater
            new heater                                      | MENDED  | heater
            new heater leaks                                | TO_MEND | heater leak
            replaced the leaking hose                       | MENDED  | leak plumbing
            sump no longer leaks                            | MENDED  | leak sump
            no leak any more at the sump                    | MENDED  | leak sump
            pump stopped rattling                           | MENDED  | pump
            return pump stopped for feeding                 | NOTHING | ''
            checked the heater                              | NOTHING | ''
            glass cleaned, skimmer cup emptied              | NOTHING | ''
            new lamp over the left side                     | MENDED  | lamp
            fed heavily, fish look well                     | NOTHING | ''
            need to test more often                         | NOTHING | ''
            dead snail behind the pump                      | NOTHING | ''
            frag came loose                                 | NOTHING | ''
            12 % water change                               | NOTHING | ''
            """)
    void a_note_tells_of_something_to_mend_of_something_mended_or_of_neither(String note, String says, String parts) {
        var heard = WORDS.read(note).stream().findFirst();

        assertThat(heard.map(h -> h.says().name()).orElse("NOTHING")).isEqualTo(says);
        assertThat(heard.map(h -> String.join(" ", h.parts().stream().sorted().toList()))
                        .orElse(""))
                .isEqualTo(parts);
    }

    @ParameterizedTest
    @CsvSource({"rattles,rattling", "leak,leaking", "drips,dripping", "noise,noisy", "cracked,cracks", "hoses,hose"})
    void endings_do_not_part_a_word_from_itself(String one, String other) {
        assertThat(Lexicon.stem(one)).isEqualTo(Lexicon.stem(other));
    }
}
