package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SayTest {

    @ParameterizedTest
    @CsvSource({
        "0,0",
        "26400.4,26 400",
        "8079,8080",
        "123456789,123 000 000",
        "0.1684,0.168",
        "12.34,12.3",
        "999.6,1000",
        "-5.25,−5.25",
        "-123.45,−123",
        "1234.4,1230",
        "-1234.4,−1230",
        "-26400.4,−26 400",
        "-123456789,−123 000 000",
        "900,900"
    })
    void threeFigures(double v, String words) {
        assertThat(Say.n(v)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"41.2,41 s", "119,119 s", "600,10 min", "9000,2.5 h"})
    void times(double s, String words) {
        assertThat(Say.time(s)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"760,760,false", "759.9999999999,760,false", "759.99,760,true"})
    void atTheLimitItPasses(double v, double limit, boolean under) {
        assertThat(Say.under(v, limit)).isEqualTo(under);
    }
}
