package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Measure;
import portwright.file.ReadResult;

/** Whatever the reader lets through is answered with finite numbers. */
class ExtremesTest {

    private static final long SEED = 20260107;
    private static final List<String> EDITS = List.of(
            "room.volume=\"0.001 m3\"",
            "room.volume=\"100000 m3\"",
            "room.openings=[]",
            "room.openings[0].area=\"0 m2\"",
            "room.openings[0].free=\"0 %\"",
            "room.openings[0].level=\"50 m\"",
            "room.wind=\"60 m/s\"",
            "room.temperature=\"-40 °C\"",
            "room.temperature=\"60 °C\"",
            "room.outdoor=\"60 °C\"",
            "room.outdoor=\"-60 °C\"",
            "room.altitude=\"6000 m\"",
            "room.hood.flow=\"0 m3/h\"",
            "room.hood.height=\"0.01 m\"",
            "room.hood.height=\"20 m\"",
            "room.hood.diameter=\"0.01 m\"",
            "room.ledOutdoors=\"0 %\"",
            "room.ledOutdoors=\"100 %\"",
            "room.burntAtFlue=\"100 %\"",
            "room.ceiling=\"0.5 m\"",
            "room.ceiling=\"20 m\"",
            "room.hood=-",
            "room.openings=-",
            "supply.cylinder.fill=\"0 %\"",
            "supply.cylinder.fill=\"100 %\"",
            "supply.cylinder.capacity=\"0.1 kg\"",
            "supply.cylinder.capacity=\"1000 kg\"",
            "supply.cylinder.diameter=-",
            "supply.ambient=\"-60 °C\"",
            "supply.ambient=\"60 °C\"",
            "supply.pressure=\"20 bar\"",
            "supply.pressure=\"0 Pa\"",
            "supply.count=100",
            "burners=[]",
            "burners[0].fuel=\"butane\"",
            "burners[0].fuel=\"natural-gas\"",
            "burners[0].heat=\"0 kW\"",
            "burners[0].heat=\"500 kW\"",
            "firing.steps=[]",
            "firing.steps[2].hold=\"0 s\"",
            "firing.steps[2].hold=\"1000 h\"",
            "firing.steps[0].to=\"1600 °C\"",
            "firing.steps[0].to=\"-60 °C\"",
            "firing.steps[1].atmosphere=\"beyond\"",
            "firing.steps[1].atmosphere=-",
            "kiln.power=\"0 W\"",
            "kiln.fittings=[]",
            "kiln.fittings[0].type=\"J\"",
            "room.floor=\"cheese\"",
            "room=-",
            "supply=-");

    @Test
    void answersAreFinite() {
        Random random = new Random(SEED);
        int checked = 0;
        for (int i = 0; i < 400; i++) {
            ObjectNode d = TestDesigns.base(random.nextBoolean() ? "studio" : "outdoors");
            StringBuilder did = new StringBuilder("case " + i + " of seed " + SEED + ":");
            for (int k = 1 + random.nextInt(4); k > 0; k--) {
                String edit = EDITS.get(random.nextInt(EDITS.size()));
                try {
                    d = TestDesigns.edit(d, edit);
                    did.append(' ').append(edit);
                } catch (NullPointerException | ClassCastException e) {
                    did.append(" (gone: ").append(edit).append(')'); // an earlier edit took the place away
                }
            }
            ReadResult read = TestDesigns.read(d);
            if (!read.ok()) {
                continue;
            }
            checked++;
            CheckResult r = check(read, did.toString());
            r.findings().forEach(f -> {
                finite(f.measured(), did + " " + f);
                finite(f.limit(), did + " " + f);
                assertThat(f.message() + f.remedy())
                        .as(did.toString())
                        .doesNotContain("NaN")
                        .doesNotContain("Infinity")
                        .doesNotContain("∞");
            });
        }
        assertThat(checked).isGreaterThan(100);
    }

    private static CheckResult check(ReadResult read, String did) {
        try {
            return TestDesigns.check(read.design());
        } catch (RuntimeException e) {
            throw new AssertionError(did, e);
        }
    }

    private static void finite(Measure m, String as) {
        if (m != null) {
            assertThat(Double.isFinite(m.value())).as(as).isTrue();
        }
    }
}
