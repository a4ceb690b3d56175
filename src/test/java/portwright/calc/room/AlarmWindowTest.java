package portwright.calc.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.data.CoAlarmPoint;

/** Alarm points of UL 2034, as printed in alarm manuals: at 70 ppm silent for 60 min, sounding by 240 min; at 30 ppm it never has to sound. */
@Tag("published")
class AlarmWindowTest {
    private static CoAlarmPoint point(double ppm) {
        return CoAlarmPoint.all().stream()
                .filter(p -> p.standard().equals("UL 2034") && p.ppm() == ppm)
                .findFirst()
                .orElseThrow();
    }

    /** A room held at a level for some hours after one clean hour: much air in little room, so that it follows at once. */
    private static RoomCo held(double ppm, double hours) {
        double mol = ppm * 1e-6 / Dilution.MOLAR_VOLUME_20C;
        return RoomCo.of(
                List.of(new RoomCo.Segment(3600, 0), new RoomCo.Segment(hours * 3600, mol * 1.001)), 1, 1, 1, 1);
    }

    @Test
    void seventyPpmForSixHoursMustSoundByFour() {
        AlarmWindow w = AlarmWindow.of(held(70, 6), point(70));
        assertThat(w.earliestS() / 60).isCloseTo(60 + 60, within(2.0));
        assertThat(w.latestS().orElseThrow() / 60).isCloseTo(60 + 240, within(2.0));
    }

    @Test
    void twoHoursMaySoundAndNeedNot() {
        AlarmWindow w = AlarmWindow.of(held(70, 2), point(70));
        assertThat(w.latestS()).isEmpty();
        assertThat(w.untilS()).isGreaterThan(w.earliestS());
    }

    @Test
    void halfAnHourOrThirtyPpmStaysSilent() {
        assertThat(AlarmWindow.of(held(70, 0.5), point(70))).isNull();
        assertThat(AlarmWindow.of(held(30, 9), point(30))).isNull();
    }

    /** UL 2034 as printed in alarm manuals: at 70 ppm it sounds within 240 min, at 30 ppm it need not within 30 days. */
    @Test
    @Tag("published")
    void oneSetOfWordsSaysHowLittleAQuietAlarmProves() {
        assertThat(CoAlarmPoint.quiet()).isEqualTo("a house alarm stays silent at 30 ppm and may take 4 h at 70 ppm");
    }
}
