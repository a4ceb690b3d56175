package portwright.check.rules.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import portwright.check.CheckResult;
import portwright.check.Finding;
import portwright.check.Severity;

/** What a kiln builder who computed by hand asks the room rules for. Figures by hand from common data, no source, unless said. */
class PeopleFirstTest {

    private static List<Finding> of(CheckResult r, String rule) {
        return r.findings().stream().filter(f -> f.rule().equals(rule)).toList();
    }

    /** Lid cracks carry up to 7 % of the gas past a pipe; only a hood has them under it. */
    @Test
    void allLedOutdoorsByAPipeCountsAsNinetyThreePercent() {
        ObjectNode pipe = TestDesigns.edit(TestDesigns.studio(), "room.hood=- ; room.ledOutdoors=\"100 %\"");
        CheckResult r = TestDesigns.check(pipe);
        assertThat(r.figures().ledOutdoorsPct()).isCloseTo(93, within(1e-9));
        assertThat(r.figures().roomCoPeakPpm()).isPositive();
        assertThat(of(r, "room-co")).anyMatch(f -> f.message().contains("counts as 93 %"));
        assertThat(r.assumed())
                .anyMatch(a -> a.field().equals("room.ledOutdoors") && a.value().equals("93 %"));
        CheckResult same = TestDesigns.check(TestDesigns.edit(pipe, "room.ledOutdoors=\"93 %\""));
        assertThat(r.figures().roomCoPeakPpm()).isCloseTo(same.figures().roomCoPeakPpm(), within(1e-9));
        CheckResult hood = TestDesigns.check(TestDesigns.edit(TestDesigns.studio(), "room.ledOutdoors=\"100 %\""));
        assertThat(hood.figures().ledOutdoorsPct()).isCloseTo(100, within(1e-9));
    }

    /** A share that nothing is stated to lead outdoors proves nothing; a hood that catches little takes no more for being stated. */
    @Test
    void whatLeadsTheGasOutdoorsIsAsked() {
        ObjectNode bare = TestDesigns.edit(TestDesigns.studio(), "room.hood=- ; room.ledOutdoors=\"90 %\"");
        assertThat(TestDesigns.lacking(TestDesigns.check(bare)))
                .anyMatch(n -> n.rule().equals("room-co") && n.needs().contains("room.ledBy"));
        assertThat(TestDesigns.lacking(TestDesigns.check(TestDesigns.edit(bare, "room.ledBy=\"hood\""))))
                .anyMatch(n -> n.rule().equals("room-co") && n.needs().contains("room.hood"));
        assertThat(TestDesigns.lacking(TestDesigns.check(TestDesigns.edit(bare, "room.ledBy=\"pipe\""))))
                .isEmpty();
        CheckResult weak = TestDesigns.check(
                TestDesigns.edit(
                        TestDesigns.studio(),
                        "room.ledOutdoors=\"95 %\" ; room.hood={\"flow\":\"60 m3/h\",\"diameter\":\"0.2 m\",\"height\":\"0.4 m\"}"));
        assertThat(weak.figures().ledOutdoorsPct()).isLessThan(5);
        assertThat(of(weak, "room-co")).anyMatch(f -> f.severity() == Severity.STOP);
    }

    /** Propane 46.35 MJ/kg net, 44.1 g/mol, lower limit 1.7 % (IEC 60079-20-1), 24.05 L a mole at 20 °C: 3.2 kW pass 0.069 g/s. */
    @Test
    @Tag("published")
    void slowFlameDevicesStateBothMassesThoughTheChamberIsHot() {
        String slow = "burners[0].flameSafety={\"closes\":\"60 s\"} ; burners[1].flameSafety={\"closes\":\"60 s\"}";
        CheckResult r = TestDesigns.check(TestDesigns.edit(TestDesigns.outdoors(), slow));
        Finding f = of(r, "flame-supervision").stream()
                .filter(x -> x.message().contains("let in"))
                .findFirst()
                .orElseThrow();
        double limit = 0.017 * r.figures().chamberVolumeL() / 24.05 * 44.1;
        double let = 3.2 / 46.35 * 60;
        assertThat(f.measured().value()).isCloseTo(let, within(let * 0.005));
        assertThat(f.limit().value()).isCloseTo(limit / 4, within(limit * 0.005));
        assertThat(f.message())
                .contains(Say.n(f.measured().value()) + " g together")
                .contains(Say.n(f.limit().value() * 4));
        assertThat(r.findings()).noneMatch(x -> x.rule().equals("gas-on-temperature") && x.severity() == Severity.STOP);
    }

    /** The time to an even mix is never given without the pockets that light before it. */
    @Test
    void secondsToTheLowerLimitAreNoTimeInHand() {
        CheckResult r = TestDesigns.check(TestDesigns.edit(TestDesigns.outdoors(), "firing.steps[0].to=\"25 °C\""));
        assertThat(of(r, "gas-on-temperature"))
                .anyMatch(f -> f.message().contains("Evenly mixed")
                        && f.message().contains("lights within seconds: no flame, close the valve at once"));
    }

    @Test
    void aBuildingNotStatedIsNotChecked() {
        for (String place : List.of("studio", "garage")) {
            ObjectNode d = TestDesigns.edit(TestDesigns.studio(), "room.place=\"" + place + "\"");
            assertThat(of(TestDesigns.check(d), "room-place")).as(place).isEmpty();
            assertThat(TestDesigns.lacking(TestDesigns.check(TestDesigns.edit(d, "room.building=-"))))
                    .as(place)
                    .anyMatch(n -> n.rule().equals("room-place") && n.needs().contains("room.building"));
        }
    }

    /** Not stated outdoors counts as none: leaving it out says no less than false. */
    @Test
    void outdoorsAMeterIsAskedForToo() {
        for (String alarm : List.of("false", "-")) {
            assertThat(of(
                            TestDesigns.check(TestDesigns.edit(TestDesigns.outdoors(), "room.coAlarm=" + alarm)),
                            "co-alarm"))
                    .as(alarm)
                    .extracting(Finding::severity)
                    .containsExactly(Severity.CAUTION);
        }
    }

    /** The middle of a level makes less CO than its rich end in hot gas: the finding says which it counts, and what stands between flow and level. */
    @Test
    void theCoCountedIsNamed() {
        CheckResult r =
                TestDesigns.check(TestDesigns.edit(TestDesigns.studio(), "room.hood=- ; room.ledOutdoors=\"0 %\""));
        assertThat(of(r, "room-co"))
                .anyMatch(f -> f.message().contains("rich end of the level")
                        && f.message().contains("counted through 3 (mixing factor"));
        assertThat(r.assumed()).anyMatch(a -> a.value().equals("mixing factor 3"));
        assertThat(r.assumed()).anyMatch(a -> a.value().equals("discharge coefficient 0.65"));
    }

    /** Heat without density says nothing of the gas: not known, not the example gas. */
    @Test
    void halfOfASuppliersFiguresIsNotKnown() {
        CheckResult r = TestDesigns.whole(TestDesigns.design(TestDesigns.edit(
                TestDesigns.outdoors(),
                "supply={\"pressure\":\"11 inH2O\"} ; burners[1].fuel=\"natural-gas\" ; burners[0].fuel=\"natural-gas\" ; "
                        + "burners[0].gas={\"netHeat\":\"36 MJ/m3\"}")));
        assertThat(r.notChecked()).anyMatch(n -> n.needs().contains("burners[0].gas.density"));
    }

    /** The word for an open sky is refused where there is a roof. */
    @Test
    void onlyOutdoorsHasNoCeiling() {
        for (String place : List.of("studio", "open-shed")) {
            assertThat(TestDesigns.read(TestDesigns.edit(
                                    TestDesigns.studio(), "room.ceiling=\"none\" ; room.place=\"" + place + "\""))
                            .problems())
                    .as(place)
                    .anyMatch(
                            p -> p.path().equals("room.ceiling") && p.message().contains("write its height"));
        }
    }

    /** A stated damper that no step uses is named as not used. */
    @Test
    void aDamperThatNoStepUsesIsSaid() {
        String stated = "damper.open=\"5 %\"";
        CheckResult r = TestDesigns.whole(TestDesigns.design(TestDesigns.edit(TestDesigns.outdoors(), stated)));
        assertThat(r.assumed())
                .anyMatch(a -> a.field().equals("damper.open") && a.value().equals("not used"));
        CheckResult used = TestDesigns.whole(TestDesigns.design(
                TestDesigns.edit(TestDesigns.outdoors(), stated + " ; firing.steps[1].atmosphere=-")));
        assertThat(used.assumed()).noneMatch(a -> a.field().equals("damper.open"));
    }
}
