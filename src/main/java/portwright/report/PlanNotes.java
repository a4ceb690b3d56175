package portwright.report;

import static portwright.units.Celsius.ZERO_C;

import java.util.ArrayList;
import java.util.List;
import portwright.calc.firing.Forecast;
import portwright.review.AgainstPlan;
import portwright.review.OffForecast;
import portwright.units.Format;

/** What a record tells against its plan without proving a fault, in words. */
public final class PlanNotes {
    private PlanNotes() {}

    /** One sentence or more a note; none for a record that keeps the plan. */
    public static List<String> words(AgainstPlan p) {
        List<String> out = new ArrayList<>();
        if (!p.slow().isEmpty()) {
            out.add(
                    "slower than asked in " + p.slow().size() + " steps: "
                            + String.join(
                                    ", ",
                                    p.slow().stream()
                                            .map(s -> "step " + (s.index() + 1) + " " + n(s.climbKPerS() * 3600)
                                                    + " of " + n(s.askedKPerS() * 3600) + " °C/h")
                                            .toList())
                            + ". The forecast keeps these rates. A fuller kiln or more loss does this, and so do lost elements, a relay or a leg of the supply, with gas also a damper too far open: measure the elements cold and unplugged. One step at full power (rate full) before the gas in the next log tells which");
        }
        p.off().stream().filter(o -> !o.far()).map(PlanNotes::off).forEach(out::add);
        p.sags()
                .ifPresent(row ->
                        out.add("the forecast sags alike: it has the hold of step " + (row.index() + 1) + " end at "
                                + n(row.endC()) + " °C where " + n(row.holdC())
                                + " °C were to be held. It is the plan, not a fault of this firing"));
        p.lit().ifPresent(l -> out.add(lit(l)));
        return out;
    }

    /** Climbs so far over the forecast that relays must be looked at before the next firing; a slower one has many harmless causes and is a note. */
    public static List<String> cautions(AgainstPlan p) {
        return p.off().stream().filter(OffForecast::far).map(PlanNotes::off).toList();
    }

    private static String off(OffForecast o) {
        String steps = String.join(
                ", ",
                o.steps().stream()
                        .map(s -> "step " + (s.index() + 1) + " climbs " + n(s.climbKPerS() * 3600) + " for "
                                + n(s.forecastKPerS() * 3600) + " °C/h")
                        .toList());
        String far = ", farther off than the " + n(Forecast.RATE_BAND * 100) + " % that a forecast is good to. ";
        if (o.fast()) {
            return "faster than forecast: " + steps + far
                    + (o.atShare()
                            ? "The elements may give more than the share that the plan asks: a relay or contactor stuck shut, or the share set higher. "
                            : "")
                    + (o.gas() ? "More gas than the design says, less ware, or a damper farther shut" : "Less ware")
                    + " does this as well. Look at "
                    + (o.atShare() ? "relays and contactors" : "the circuit")
                    + " with the kiln cold and unplugged before the next firing";
        }
        return "slower than forecast: " + steps + far
                + (o.gas()
                        ? "More air than logged does this (plate off its place, a port or the lid open), or less gas than the design says; and so do lost elements, a relay, a fuller kiln or more loss. Look at plate and ports, and measure"
                        : "Lost elements, a relay, a leg of the supply, a fuller kiln or more loss do this. Measure")
                + " the elements with the kiln cold and unplugged";
    }

    private static String lit(AgainstPlan.Lit l) {
        boolean late = l.lateS() > 0;
        return "gas is lit " + n(Math.abs(l.lateS()) / 60) + " min " + (late ? "later" : "earlier")
                + " than planned, at "
                + n(l.kelvin() - ZERO_C) + " °C; the plan lights it for step " + (l.index() + 1) + " at "
                + n(l.goalK() - ZERO_C) + " °C. "
                + (late
                        ? "Reduction began so much later: body and glaze had that time without it"
                        : "Reduction began so much earlier, in a colder kiln: look that the chamber glowed where gas was lit");
    }

    private static String n(double v) {
        return Format.plain(v, 0);
    }
}
