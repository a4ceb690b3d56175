package portwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import portwright.calc.firing.KilnHeat;
import portwright.calc.firing.SteadyShell;
import portwright.file.DesignText;
import portwright.file.Starters;

/** A lid of bare brick radiates more than one under bright metal: some percent of the lid's loss, about one of the kiln's. */
class BareLidTest {
    private static final double K1280 = 1553.15;

    private static KilnHeat kiln(DesignText d) {
        return Review.of(d.read().design()).firing().kiln().value();
    }

    @Test
    void bareBrickLosesALittleMore() {
        DesignText bare = Starters.find("decagon-23").orElseThrow();
        DesignText covered = bare.set("kiln.lid.pan", "true");
        double lid = lid(bare) / lid(covered);
        double all = SteadyShell.lossW(kiln(bare), K1280) / SteadyShell.lossW(kiln(covered), K1280);
        assertThat(lid).isBetween(1.03, 1.10);
        assertThat(all).isBetween(1.003, 1.02);
        assertThat(SteadyShell.lossW(kiln(bare.remove("kiln.lid.pan")), K1280))
                .isEqualTo(SteadyShell.lossW(kiln(covered), K1280));
    }

    private static double lid(DesignText d) {
        KilnHeat k = kiln(d);
        return SteadyShell.partLossW(k.parts().get(2), k.lossFactor(), k.roomK(), K1280);
    }
}
