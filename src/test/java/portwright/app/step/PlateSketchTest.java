package portwright.app.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import portwright.file.DesignText;
import portwright.file.Starters;
import portwright.geometry.Hole;
import portwright.geometry.KilnGeometry;
import portwright.model.Design;
import portwright.model.Role;

/** The plate as typed and the flues have one scale in the sketch beside the damper's curves. Plane geometry, by hand. */
class PlateSketchTest {
    private static DesignText kiln() {
        return Starters.find("octagon-17").orElseThrow();
    }

    private static DesignText twoFlues() {
        return Starters.names().stream()
                .map(n -> Starters.find(n).orElseThrow())
                .filter(t -> flues(t.read().design()).size() > 1)
                .findFirst()
                .orElseThrow();
    }

    private static List<Hole> flues(Design d) {
        return KilnGeometry.of(d).holes().stream()
                .filter(h -> h.port().role() == Role.FLUE)
                .toList();
    }

    private static PlateSketch laid(DesignText kiln, String width, String length, boolean shared, double travel) {
        Design d = kiln.setText("damper.plate.width", width)
                .setText("damper.plate.length", length)
                .set("damper.plate.shared", String.valueOf(shared))
                .read()
                .design();
        List<Hole> flues = flues(d);
        return PlateSketch.of(flues, flues.stream().map(f -> 0.0).toList(), d.damper(), travel, 10, 20, 270, 98);
    }

    @Test
    void eachFlueHasThePlateAsTypedInItsOwnScale() {
        double[][] sizes = {{100, 150}, {200, 60}, {60, 200}};
        for (DesignText kiln : List.of(kiln(), twoFlues())) {
            for (double[] s : sizes) {
                PlateSketch p = laid(kiln, s[0] + " mm", s[1] + " mm", false, 12);
                List<Hole> flues = flues(kiln.read().design());
                assertThat(p.plates()).hasSameSizeAs(flues);
                for (int i = 0; i < flues.size(); i++) {
                    PlateSketch.Rect r = p.plates().get(i);
                    PlateSketch.Disc f = p.flues().get(i);
                    double px = 2 * f.r() / flues.get(i).diameter();
                    assertThat(px).isCloseTo(p.scale(), within(1e-9));
                    assertThat(r.w()).isCloseTo(Math.min(s[0], s[1]) * px, within(1e-9));
                    assertThat(r.h()).isCloseTo(Math.max(s[0], s[1]) * px, within(1e-9));
                    assertThat(r.x() + r.w() / 2).isCloseTo(f.x(), within(1e-9));
                    // from the flue's front rim to the plate's edge: the travel
                    assertThat(f.y() + f.r() - (r.y() + r.h())).isCloseTo(12 * px, within(1e-9));
                    assertThat(r.x()).isGreaterThanOrEqualTo(10);
                    assertThat(r.y()).isGreaterThanOrEqualTo(20);
                }
            }
        }
    }

    @Test
    void aSharedPlateLiesOnceOverAllWithItsLongerSideAcross() {
        PlateSketch p = laid(twoFlues(), "100 mm", "500 mm", true, 0);
        assertThat(p.plates()).hasSize(1);
        assertThat(p.plates().get(0).w()).isCloseTo(500 * p.scale(), within(1e-9));
        assertThat(p.plates().get(0).h()).isCloseTo(100 * p.scale(), within(1e-9));
    }

    @Test
    void aPlateWithoutItsSizeIsNotDrawn() {
        Design d = kiln().remove("damper.plate.length").read().design();
        List<Hole> flues = flues(d);
        assertThat(PlateSketch.of(flues, flues.stream().map(f -> 0.0).toList(), d.damper(), 5, 0, 0, 270, 98)
                        .plates())
                .isEmpty();
    }
}
