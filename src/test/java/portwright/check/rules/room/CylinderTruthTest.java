package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.calc.supply.Drum;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Verdict;
import portwright.data.CylinderSize;

/** What is said of a cylinder is true of it: its measures hold its contents, and its pressure is named. */
class CylinderTruthTest {
    private static final double LB = 0.45359237;
    private static final double INCH = 0.0254;

    private static Finding boilOff(CheckResult r) {
        return r.findings().stream()
                .filter(f -> f.rule().equals("cylinder-boil-off"))
                .findFirst()
                .orElseThrow();
    }

    /** 29 CFR 1910.110 (b)(19), published: contents at most 42 % of the water capacity by weight. 3 in by 10 in is 1158 cm³: 0.486 kg. */
    @Test
    @Tag("published")
    void aDrumHoldsItsWaterTimesTheFillingDensity() {
        assertThat(Drum.mostKg(3 * INCH, 10 * INCH, 510)).isCloseTo(0.4865, within(0.0002));
        assertThat(Drum.mostKg(12.5 * INCH, 18 * INCH, 510)).isCloseTo(15.20, within(0.01));
        // 80 % of the volume of a heavier liquid, butane of 580 kg/m³: 0.464 kg a litre
        assertThat(Drum.mostKg(12.5 * INCH, 18 * INCH, 580)).isCloseTo(36.198 * 0.464, within(0.01));
    }

    /** The sizes of consumer guides hold what they are named for: the check refuses no true cylinder. */
    @Test
    @Tag("published")
    void everyUsualCylinderHoldsItsName() {
        for (CylinderSize c : CylinderSize.all()) {
            assertThat(Drum.mostKg(c.diameterIn() * INCH, c.heightIn() * INCH, 510))
                    .as(c.capacityLb() + " lb")
                    .isGreaterThan(c.capacityLb() * LB);
        }
    }

    /** A bottle as thin as a pipe would boil off much through its long wall: without its length nobody knows that it is none. */
    @Test
    void aNarrowCylinderWithoutLengthIsNotBelieved() {
        String pipe = "supply.cylinder.diameter=\"3 in\" ; supply.cylinder.length=-";
        CheckResult r = TestDesigns.check(TestDesigns.edit(TestDesigns.outdoors(), pipe));
        assertThat(TestDesigns.lacking(r))
                .anyMatch(n -> n.rule().equals("cylinder-boil-off") && n.needs().contains("supply.cylinder.length"));
        assertThat(r.lighting()).isEqualTo(Verdict.INCOMPLETE);
        CheckResult usual =
                TestDesigns.check(TestDesigns.edit(TestDesigns.outdoors(), "supply.cylinder.diameter=\"12.5 in\""));
        assertThat(r.figures().boilOffKgPerH()).isCloseTo(usual.figures().boilOffKgPerH(), within(1e-9));
    }

    /**
     * Butane at 0 °C: 103 kPa absolute (vapour pressure tables of n-butane, boiling point -0.5 °C; from memory). An 11 in w.c. regulator needs 2.74 kPa, its
     * headroom of 1 bar and the atmosphere: 204 kPa.
     */
    @Test
    @Tag("published")
    void butaneInTheColdHasPressureButTooLittle() {
        CheckResult r = TestDesigns.check(TestDesigns.edit(
                TestDesigns.outdoors(),
                "burners[0].fuel=\"butane\" ; burners[1].fuel=\"butane\" ; supply.ambient=\"0 °C\""));
        assertThat(boilOff(r).remedy())
                .containsPattern("pressure of 10[234](\\.\\d)? kPa absolute")
                .contains("204 kPa");
    }

    /** Butane at 20 °C has 208 kPa (vapour pressure tables, from memory), hardly more than the regulator needs: no number of cylinders mends that. */
    @Test
    void butaneOnAMildDayIsNotCuredByMoreCylinders() {
        CheckResult r = TestDesigns.check(TestDesigns.edit(
                TestDesigns.outdoors(),
                "burners[0].fuel=\"butane\" ; burners[1].fuel=\"butane\" ; supply.ambient=\"20 °C\""));
        assertThat(boilOff(r).remedy()).contains("pure propane").doesNotContain("Join");
    }

    /** In the open no room is counted, and who writes its volume is told so. */
    @Test
    void aRoomsVolumeInTheOpenIsNotUsed() {
        CheckResult r = TestDesigns.check(TestDesigns.edit(TestDesigns.outdoors(), "room.volume=\"60 m3\""));
        assertThat(r.assumed()).anySatisfy(a -> {
            assertThat(a.field()).isEqualTo("room.volume");
            assertThat(a.value()).isEqualTo("not used");
        });
    }

    /** EN 298 and EN 746-2 give devices seconds; none closes in no time. */
    @Test
    void aFlameDeviceTakesItsTime() {
        String closes = "burners[0].flameSafety={\"closes\":\"%s\"}";
        assertThat(TestDesigns.read(TestDesigns.edit(TestDesigns.outdoors(), String.format(closes, "0 s")))
                        .problems())
                .singleElement()
                .satisfies(p -> assertThat(p.toString()).contains("closes").contains("at least 1 s"));
        assertThat(TestDesigns.read(TestDesigns.edit(TestDesigns.outdoors(), String.format(closes, "1 s")))
                        .ok())
                .isTrue();
    }
}
