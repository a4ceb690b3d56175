package portwright.report;

import static portwright.units.Celsius.ZERO_C;

import java.util.List;
import portwright.calc.firing.log.OtherFiring;
import portwright.calc.firing.log.OwnFiring;
import portwright.calc.firing.log.RecordResult;
import portwright.units.Format;

/** What is said of a firing that is not the plan's. */
final class OwnFiringLines {
    /** Under this share full power would be short by more than load, brick and voltage explain. */
    private static final double SHORT = 0.83;

    private OwnFiringLines() {}

    static void add(List<ReportLine> b, RecordResult x) {
        OwnFiring own = x.own();
        b.add(new ReportLine(
                "firing",
                "another than the plan: " + why(own.why())
                        + ". Read as fired by electricity alone, ports plugged. Compared: cones with the thermocouple, falls of temperature, the most power; before the plan's gas also power that comes on in a steady climb, and a climb that falls off at a power that stays. Not compared: goal, rates and shares of the plan. If it was the plan's firing, write gas pressure or damper into the log"
                        + (own.why() == OtherFiring.Why.FAST_START
                                ? "; then elements that are on over the plan from the first minute are a relay stuck shut"
                                : "")));
        b.add(new ReportLine("top", Format.plain(x.topK() - ZERO_C, 0) + " °C by the thermocouple"));
        if (x.elements()) {
            b.add(new ReportLine("power", power(own)));
        }
    }

    private static String power(OwnFiring own) {
        String unknown = "at what share the elements ran the log cannot say";
        if (Double.isNaN(own.mostShare())) {
            return unknown + "; it was never over 450 °C for half an hour";
        }
        return unknown + "; the most that they gave for half an hour is about "
                + Format.plain(own.mostShare() * 100, 0) + " % of the design's full power, at "
                + Format.plain(own.mostK() - ZERO_C, 0) + " °C"
                + (own.mostShare() < SHORT
                        ? ". If all elements were full on there, the rest is missing; a controller that held them back looks the same"
                        : "");
    }

    private static String why(OtherFiring.Why w) {
        return switch (w) {
            case NOTE -> "a note says that it was fired by electricity";
            case NO_GAS -> "the log has no gas where the plan burns it, and the kiln climbs on";
            case OWN_RATE ->
                "no gas and no damper in the log, and a steady climb at a rate that no step in question asks";
            case FAST_START -> "no gas and no damper in the log, and faster than the plan from the first minute";
            case NOT -> "";
        };
    }
}
