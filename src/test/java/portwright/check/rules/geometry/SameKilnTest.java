package portwright.check.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.function.LongFunction;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.MovedKiln;
import portwright.check.Finding;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.On;

/** One kiln seen in a mirror, or turned with everything in it, has the same findings and figures, to 1e-9. Random kilns; the seed is named. */
class SameKilnTest {
    private static final double SAME = 1e-9;

    private static void figuresSame(String what, Design a, Design b) {
        KilnGeometry ga = KilnGeometry.of(a);
        KilnGeometry gb = KilnGeometry.of(b);
        assertThat(gb.chamberVolumeM3()).as(what).isCloseTo(ga.chamberVolumeM3(), within(SAME * ga.chamberVolumeM3()));
        for (On on : List.of(On.FLOOR, On.LID)) {
            assertThat(gb.weakestSection(on).share())
                    .as(what + ", weakest section of the " + on.id())
                    .isCloseTo(ga.weakestSection(on).share(), within(SAME));
        }
    }

    private static void mirrored(long first, long last, LongFunction<RandomKiln> kilns) {
        for (long seed = first; seed <= last; seed++) {
            RandomKiln k = kilns.apply(seed);
            Design m = MovedKiln.mirrored(k.design(), k.panels());
            UnaryOperator<String> part = p -> p.startsWith("panel ")
                    ? "panel " + MovedKiln.mirroredPanel(Integer.parseInt(p.substring(6)), k.panels())
                    : p;
            List<Finding> before = GeoBench.check(k.design()).findings();
            assertThat(before).isNotEmpty();
            SameFindings.check(
                    "mirrored, seed " + seed, before, GeoBench.check(m).findings(), part);
            figuresSame("mirrored, seed " + seed, k.design(), m);
        }
    }

    private static void turned(long first, long last, LongFunction<RandomKiln> kilns) {
        for (long seed = first; seed <= last; seed++) {
            RandomKiln k = kilns.apply(seed);
            Design t = MovedKiln.turned(k.design(), new Random(seed).nextDouble() * 360);
            SameFindings.check(
                    "turned, seed " + seed,
                    GeoBench.check(k.design()).findings(),
                    GeoBench.check(t).findings(),
                    UnaryOperator.identity());
            figuresSame("turned, seed " + seed, k.design(), t);
        }
    }

    @Test
    void mirroringAKilnMirrorsItsFindings() {
        mirrored(1, 60, RandomKiln::of);
    }

    @Test
    void turningTheWholeKilnChangesNoFigure() {
        turned(1, 60, RandomKiln::of);
    }

    @Test
    void mirroringAnOvalOrOddKilnMirrorsItsFindings() {
        mirrored(1, 40, RandomKiln::odd);
    }

    @Test
    void turningAnOvalOrOddKilnChangesNoFigure() {
        turned(1, 40, RandomKiln::odd);
    }

    @Test
    @Tag("slow")
    void manyKilns() {
        mirrored(61, 2000, RandomKiln::of);
        mirrored(41, 1000, RandomKiln::odd);
        turned(61, 2000, RandomKiln::of);
        turned(41, 1000, RandomKiln::odd);
    }
}
