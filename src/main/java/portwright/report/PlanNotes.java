package portwright.report;

import java.util.ArrayList;
import java.util.List;
import portwright.review.AgainstPlan;
import portwright.units.Format;

/** What a record tells against its plan without proving a fault, in words. */
public final class PlanNotes {
    private static final double ZERO_C = 273.15;

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
        p.lit().ifPresent(l -> out.add(lit(l)));
        return out;
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
