package portwright.calc.firing.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import portwright.calc.combustion.AtmosphereLevel;
import portwright.calc.firing.log.Ledger.Due;

/** What counts over a kiln's records, by records written by hand. That a firing to 700 °C renews oxide is practice (newsgroup post 2004); the rest is counting. */
class LedgerCountsTest {
    /** A record that can be changed: an electric firing to 1000 °C that reached its goal. */
    private static final class Rec {
        Map<AtmosphereLevel, Double> air = Map.of();
        double unknownS = 0;
        GasUse gas = GasUse.of(0);
        GasUse sinceRefill;
        double topC = 1000;
        boolean reached = true;
        boolean gasLogged = false;
        boolean damperLogged = true;
        boolean elements = true;
        boolean scaleDoubted = false;
        boolean gasDoubted = false;
        double sagK = 0;
        Repairs repairs = Repairs.NONE;
        OwnFiring own;
        List<ConeOffset> cones = List.of();
        List<LogFinding> findings = List.of();

        RecordResult done() {
            return new RecordResult(
                    findings,
                    List.of(),
                    cones,
                    List.of(new StepRecord(0, 0, 1, 1, 1, 0, 0, sagK)),
                    air,
                    unknownS,
                    gas,
                    sinceRefill,
                    topC + 273.15,
                    0.9,
                    PowerTrace.NONE,
                    60,
                    reached,
                    gasLogged,
                    damperLogged,
                    List.of(),
                    0.15,
                    Double.NaN,
                    elements,
                    scaleDoubted,
                    repairs,
                    own,
                    List.of(),
                    0,
                    Map.of(),
                    gasDoubted,
                    0);
        }
    }

    private static Rec reduced(double hours, double kg) {
        Rec r = new Rec();
        r.air = Map.of(AtmosphereLevel.MEDIUM, hours * 3600);
        r.gas = GasUse.of(kg);
        r.topC = 1280;
        return r;
    }

    private static Ledger of(Cylinders c, Rec... records) {
        List<RecordResult> all = new ArrayList<>();
        for (Rec r : records) {
            all.add(r.done());
        }
        int n = records.length;
        return Ledger.of(
                all,
                new LogOrder(
                        IntStream.range(0, n).boxed().toList(),
                        Collections.nCopies(n, -1),
                        false,
                        false,
                        List.of(),
                        Collections.nCopies(n, Double.NaN)),
                c);
    }

    private static Ledger of(Rec... records) {
        return of(new Cylinders(20, 1), records);
    }

    @Test
    void everyRicherAtmosphereAndAnUnknownOneCount() {
        Rec r = new Rec();
        r.air = Map.of(
                AtmosphereLevel.OXIDIZING, 3600.0,
                AtmosphereLevel.NEUTRAL, 1800.0,
                AtmosphereLevel.LIGHT, 3600.0,
                AtmosphereLevel.BEYOND, 7200.0);
        r.unknownS = 1800;
        Ledger l = of(r);
        assertThat(l.reductionHours()).isCloseTo(3.5, within(1e-12));
        assertThat(l.neutralHours()).isCloseTo(0.5, within(1e-12));
        assertThat(l.due()).contains(Due.OXIDISING_FIRING);
        assertThat(of(new Rec()).due()).isEmpty();
        r.elements = false;
        assertThat(of(r).due()).doesNotContain(Due.OXIDISING_FIRING);
        assertThat(of(r).elements()).isFalse();
        // as long in the one as in the other
        Rec both = new Rec();
        both.air = Map.of(AtmosphereLevel.NEUTRAL, 3600.0, AtmosphereLevel.LIGHT, 3600.0);
        assertThat(of(reduced(1, 1), both).reductionHours()).isCloseTo(2, within(1e-12));
        // neutral alone asks for none
        Rec n = new Rec();
        n.air = Map.of(AtmosphereLevel.NEUTRAL, 1800.0);
        assertThat(of(n).due()).isEmpty();
    }

    @Test
    void whatRenewsTheElements() {
        Rec e = new Rec();
        assertThat(of(reduced(2, 1), e).reductionHours()).isZero();
        e.topC = 700;
        assertThat(of(reduced(2, 1), e).oxidisedSince()).isTrue();
        e.topC = 699;
        assertThat(of(reduced(2, 1), e).oxidisedSince()).isFalse();
        e.topC = 1000;
        e.reached = false;
        assertThat(of(reduced(2, 1), e).oxidisedSince()).isFalse();
        e.gasLogged = true;
        assertThat(of(reduced(2, 1), e).oxidisedSince()).isTrue();
        e.gasLogged = false;
        e.own = new OwnFiring(OtherFiring.Why.NOTE, 0.5, 1000);
        assertThat(of(reduced(2, 1), e).oxidisedSince()).isTrue();
    }

    /** By its pace alone another firing, or one that fits no gas better: it counts for neither, and leaves open what is due. */
    @Test
    void firingsThatDoNotTell() {
        Rec own = new Rec();
        own.own = new OwnFiring(OtherFiring.Why.OWN_RATE, 0.5, 1000);
        Ledger l = of(own);
        assertThat(l.notTold()).containsExactly(0);
        assertThat(l.oxidisedSince()).isFalse();
        assertThat(l.due()).containsExactly(Due.OXIDISING_FIRING);
        assertThat(of(own, new Rec()).due()).isEmpty();
        Rec doubted = reduced(2, 1);
        doubted.gasDoubted = true;
        l = of(doubted);
        assertThat(l.notTold()).containsExactly(0);
        assertThat(l.reductionHours()).isZero();
        assertThat(l.due()).contains(Due.OXIDISING_FIRING);
        doubted.air = Map.of(AtmosphereLevel.NEUTRAL, 1800.0);
        assertThat(of(doubted).neutralHours()).isZero();
        own.own = new OwnFiring(OtherFiring.Why.NOTE, 0.5, 1000);
        assertThat(of(own).notTold()).isEmpty();
    }

    @Test
    void whichRecordsAreNamed() {
        Rec shortOne = new Rec();
        shortOne.reached = false;
        assertThat(of(new Rec(), shortOne).stoppedShort()).containsExactly(1);
        shortOne.own = new OwnFiring(OtherFiring.Why.NOTE, 0.5, 1000);
        assertThat(of(shortOne).stoppedShort()).isEmpty();
        shortOne.own = null;
        shortOne.topC = 1431;
        assertThat(of(shortOne).stoppedShort()).isEmpty();
        // what a frozen thermocouple reads is no missed goal
        shortOne.topC = 1000;
        shortOne.findings = List.of(new LogFinding(LogFinding.Kind.FROZEN, 1, 1, 1, Double.NaN, false, false));
        assertThat(of(shortOne).stoppedShort()).isEmpty();
        shortOne.findings = List.of(new LogFinding(LogFinding.Kind.RELAY, 1, 1, 1, Double.NaN, false, false));
        assertThat(of(shortOne).stoppedShort()).containsExactly(0);
        Rec sags = new Rec();
        sags.sagK = 11;
        assertThat(of(new Rec(), sags).notKept()).containsExactly(1);
        sags.reached = false;
        assertThat(of(sags).notKept()).isEmpty();
        Rec plan = reduced(1, 1);
        plan.damperLogged = false;
        assertThat(of(new Rec(), plan).byPlan()).containsExactly(1);
        plan.damperLogged = true;
        assertThat(of(plan).byPlan()).isEmpty();
        Rec none = new Rec();
        none.damperLogged = false;
        assertThat(of(none).byPlan()).isEmpty();
        none.air = Map.of(AtmosphereLevel.NEUTRAL, 1.0);
        assertThat(of(none).byPlan()).containsExactly(0);
        // a doubted scale: nothing of it counts
        Rec scale = reduced(5, 3);
        scale.scaleDoubted = true;
        Ledger l = of(reduced(1, 1), scale);
        assertThat(l.notRead()).containsExactly(1);
        assertThat(l.reductionHours()).isCloseTo(1, within(1e-12));
        assertThat(l.gasUsed().kg()).isCloseTo(1, within(1e-12));
        assertThat(l.powerShares()).containsExactly(0.9);
        assertThat(l.thermocoupleK()).isNaN();
        assertThat(l.conesLogged()).isFalse();
    }

    @Test
    void cylindersAndRefills() {
        Rec refilled = reduced(1, 4);
        refilled.sinceRefill = GasUse.of(1);
        // 20 less 5 less 3, then full, less 1, less 2
        Ledger l = of(new Cylinders(20, 1), reduced(1, 5), refilled, reduced(1, 2));
        assertThat(l.refilled()).isEqualTo(1);
        assertThat(l.gasLeftKg()).isCloseTo(17, within(1e-12));
        assertThat(l.gasUsed().kg()).isCloseTo(11, within(1e-12));
        assertThat(l.due()).containsExactly(Due.OXIDISING_FIRING);
        // of two cylinders one is full: 40 less 25 less 3 leaves 12, and 20 more; then 1 less
        assertThat(of(new Cylinders(20, 2), reduced(1, 25), refilled).gasLeftKg())
                .isCloseTo(31, within(1e-12));
        assertThat(of(reduced(1, 1)).refilled()).isEqualTo(-1);
        // more than there was
        l = of(new Cylinders(4, 1), reduced(1, 5));
        assertThat(l.gasLeftKg()).isCloseTo(-1, within(1e-12));
        assertThat(l.gasLeftMostKg()).isZero();
        assertThat(l.gasLeftLeastKg()).isZero();
    }

    /** Another like the last must be in it; after one that stopped short or was no firing of the plan, like the largest. */
    @Test
    void theNextCylinder() {
        assertThat(of(new Cylinders(10, 1), reduced(1, 6), reduced(1, 2)).due()).containsExactly(Due.OXIDISING_FIRING);
        assertThat(of(new Cylinders(9.9, 1), reduced(1, 6), reduced(1, 2)).due())
                .contains(Due.CYLINDER);
        Rec small = reduced(1, 2);
        small.reached = false;
        assertThat(of(new Cylinders(13.9, 1), reduced(1, 6), small).due()).contains(Due.CYLINDER);
        assertThat(of(new Cylinders(14, 1), reduced(1, 6), small).due()).doesNotContain(Due.CYLINDER);
        small.reached = true;
        small.own = new OwnFiring(OtherFiring.Why.NOTE, 0.5, 1000);
        assertThat(of(new Cylinders(13.9, 1), reduced(1, 6), small).due()).contains(Due.CYLINDER);
        assertThat(of(Cylinders.NONE, reduced(1, 6)).due()).doesNotContain(Due.CYLINDER);
        assertThat(of(new Cylinders(1, 1)).due()).isEmpty();
    }

    private static Rec cones(ConeOffset... c) {
        Rec r = new Rec();
        r.cones = List.of(c);
        return r;
    }

    /** The hottest cone of the last record that has any; a new thermocouple clears what was before it. */
    @Test
    void theThermocouple() {
        ConeOffset cold = new ConeOffset("6", 7200, 1490, 40, 40);
        ConeOffset hot = new ConeOffset("10", 3600, 1540, 16, 15);
        assertThat(of(cones(cold, hot)).thermocoupleK()).isEqualTo(15);
        assertThat(of(cones(cold, hot)).due()).containsExactly(Due.THERMOCOUPLE);
        assertThat(of(cones(new ConeOffset("10", 3600, 1540, 16, -15))).due()).containsExactly(Due.THERMOCOUPLE);
        assertThat(of(cones(new ConeOffset("10", 3600, 1540, 16, 14.9))).due()).isEmpty();
        assertThat(of(cones(cold, hot), new Rec()).thermocoupleK()).isEqualTo(15);
        Rec renewed = new Rec();
        renewed.repairs = new Repairs(Double.NaN, 0);
        assertThat(of(cones(cold, hot), renewed).thermocoupleK()).isNaN();
        assertThat(of(cones(cold, hot), renewed).conesLogged()).isTrue();
        // renewed between the two cones: the one after it counts
        Rec within = cones(cold, hot);
        within.repairs = new Repairs(Double.NaN, 3600);
        assertThat(of(within).thermocoupleK()).isEqualTo(40);
    }

    @Test
    void whatIsBrokenIsDue() {
        Rec r = new Rec();
        r.findings = List.of(new LogFinding(LogFinding.Kind.RELAY, 1, 1, 1, Double.NaN, false, false));
        assertThat(of(r).due()).containsExactly(Due.REPAIR_POWER);
        assertThat(of(new Rec(), r).broken().power()).isEqualTo(1);
        r.findings = List.of(new LogFinding(LogFinding.Kind.FROZEN, 1, 1, 1, Double.NaN, false, false));
        assertThat(of(r).due()).containsExactly(Due.REPAIR_PROBE);
        assertThat(of(r, new Rec()).due()).isEmpty();
    }
}
