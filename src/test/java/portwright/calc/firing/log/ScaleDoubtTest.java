package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.calc.firing.SyntheticFiring;
import portwright.calc.firing.SyntheticFiring.Fault;

/** A log whose header may name the wrong scale gives that finding and no other; a kiln that ran away is no wrong scale. */
class ScaleDoubtTest {
    @Test
    void aDoubtedScaleGivesNoOtherFinding() {
        SyntheticFiring f = new SyntheticFiring(4, Fault.ELEMENT, true);
        RecordResult r =
                RecordResult.of(f.beside(LogParser.parse(f.log().replace("temperature °C", "temperature °F"))));
        assertThat(r.findings()).extracting(LogFinding::kind).containsExactly(LogFinding.Kind.SCALE);
        assertThat(r.offsets()).isEmpty();
        assertThat(r.powerShare()).isNaN();
    }

    @Test
    void aColdStartInCelsiusThatRunsAwayIsRead() {
        StringBuilder b = new StringBuilder("elapsed min,temp °C\n");
        for (int i = 0; i <= 160; i++) {
            b.append(5 * i).append(',').append(20 + 10 * i).append('\n');
        }
        assertThat(LogParser.parse(b.toString()).scaleDoubted()).isFalse();
        // The same numbers from 70 on: no room in °C, a room in °F.
        assertThat(LogParser.parse(b.toString().replaceAll("(?m)^(0|5|10|15|20),\\d+$", "$1,70"))
                        .scaleDoubted())
                .isTrue();
    }
}
