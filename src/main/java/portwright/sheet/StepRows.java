package portwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.FiringStep;
import portwright.model.Heat;
import portwright.model.PortsState;
import portwright.review.LiveElements;
import portwright.review.StepTime;
import portwright.units.Format;
import portwright.units.Quantity;

/** The rows of the card's table: the steps, the way from gas back to electricity, the end. */
final class StepRows {
    /** Where a cone is asked for faster than its chart has it. */
    static final String BEYOND_CHART = "Chart to 150 °C/h: trust cones.";

    private static final String CLEAR = "shut the cylinder, let the flame die, plate off 10 min until clear";

    private StepRows() {}

    /**
     * The rows. Where a step ends at a cone stands what the forecast expects there, which is lower than the cone's chart after a slow climb; the chart's
     * temperature where there is no forecast. At a hold stands what is to be held; where the forecast sees it sag, a remark below says so.
     */
    static List<CardData.Step> of(Design design, CardForecast computed) {
        List<CardData.Step> out = new ArrayList<>();
        double atC = Double.NaN;
        boolean gas = false;
        boolean burnt = false;
        boolean ended = false;
        List<FiringStep> steps = steps(design);
        LiveElements live = LiveElements.of(design);
        for (int i = 0; i < steps.size(); i++) {
            FiringStep s = steps.get(i);
            if (gas && !burns(s)) {
                out.add(CardData.Step.across((s.heat() == Heat.ELECTRIC ? "Gas back to electricity: " : "Gas off: ")
                        + CLEAR + "; "
                        + (s.ports() == PortsState.OPEN
                                ? "the ports stay open."
                                : live.betweenSteps(s.heat() == Heat.ELECTRIC) + ".")));
            }
            if (burnt && !gas && burns(s)) {
                out.add(CardData.Step.across("Light again, as under Lighting: ports open and plate off first."));
            }
            gas = burns(s);
            burnt |= gas;
            boolean falls = falls(steps, i, computed);
            if (s.hold() == null) {
                atC = s.to() != null ? s.to().celsius() : computed.endsC().getOrDefault(i, StepTime.coneEndC(s));
            }
            String missed = computed.missed().get(i);
            ended |= missed != null && !computed.endsC().containsKey(i);
            atC = ended ? Double.NaN : atC;
            double shownC = computed.coneDown().contains(i) ? StepTime.coneEndC(s) : atC;
            out.add(step(design, s, shownC, falls, computed.plate(i)));
            if (StepTime.beyondChart(s)) {
                out.add(CardData.Step.remark(BEYOND_CHART));
            }
            if (computed.remarks().containsKey(i)) {
                out.add(CardData.Step.remark(computed.remarks().get(i)));
            }
            if (missed != null) {
                out.add(CardData.Step.across(missed));
            }
        }
        out.add(CardData.Step.across(
                gas
                        ? "Shut down: cylinder shut, the flame dies, " + (live.there() ? "elements off, " : "")
                                + "plate off 10 min; only then plug and shut."
                        : "Shut down: elements off, cylinder shut, ports plugged, plate shut until the kiln is cold."));
        computed.notes().forEach(n -> out.add(CardData.Step.remark(n)));
        return out;
    }

    /** Whether a step names a temperature under the one that the steps before it reach. */
    private static boolean falls(List<FiringStep> steps, int index, CardForecast computed) {
        FiringStep s = steps.get(index);
        for (int i = index - 1; s.to() != null && i >= 0; i--) {
            FiringStep before = steps.get(i);
            if (before.hold() == null) {
                return s.to().celsius()
                        < (before.to() != null
                                ? before.to().celsius()
                                : computed.endsC().getOrDefault(i, StepTime.coneEndC(before)));
            }
        }
        return false;
    }

    /** Whether a step with gas is to fall. */
    static boolean fallsWithGas(Design design, CardForecast computed) {
        List<FiringStep> steps = steps(design);
        return IntStream.range(0, steps.size()).anyMatch(i -> burns(steps.get(i)) && falls(steps, i, computed));
    }

    /** Whether any step burns gas; true where the steps are unknown. */
    static boolean gas(Design design) {
        List<FiringStep> steps = steps(design);
        return steps.isEmpty() || steps.stream().anyMatch(StepRows::burns);
    }

    /** Whether electricity goes on alone after a step with gas. */
    static boolean electricAfterGas(Design design) {
        boolean gas = false;
        for (FiringStep s : steps(design)) {
            if (gas && !burns(s)) {
                return true;
            }
            gas |= burns(s);
        }
        return false;
    }

    private static List<FiringStep> steps(Design design) {
        return design.firing() == null || design.firing().steps() == null
                ? List.of()
                : design.firing().steps();
    }

    private static boolean burns(FiringStep s) {
        return s.heat() == Heat.GAS || s.heat() == Heat.BOTH;
    }

    private static CardData.Step step(Design design, FiringStep s, double atC, boolean falls, String plate) {
        boolean gas = burns(s);
        String level =
                !gas ? "air" : s.atmosphere() == null ? "–" : s.atmosphere().id();
        String rate = s.hold() != null ? "–" : s.fullRate() ? "full" : typed(s.rate());
        if (falls && (s.fullRate() || s.rate() != null)) {
            rate = s.fullRate() ? "falls" : "−" + rate;
        }
        if (s.elementShare() != null && s.heat() != Heat.GAS) {
            rate = s.elementShare().typed() + (falls ? ", falls" : " on");
        }
        String to =
                s.hold() != null ? "hold " + s.hold().typed() : s.cone() != null ? "cone " + s.cone() : s.to().typed();
        return new CardData.Step(
                to,
                beside(s, atC, falls),
                rate,
                s.heat() == null ? "–" : s.heat().id(),
                gas ? pressure(design) : "shut",
                level,
                plate,
                flame(gas, level),
                gas,
                "",
                false);
    }

    private static String beside(FiringStep s, double atC, boolean falls) {
        if (Double.isNaN(atC)) {
            return "";
        }
        String celsius = Format.plain(Math.rint(atC), 0) + " °C";
        String fahrenheit = Format.plain(Math.rint(atC * 1.8 + 32), 0) + " °F";
        if (s.to() == null) {
            return celsius + "  " + fahrenheit;
        }
        boolean metric = s.to().typed().toUpperCase(Locale.ROOT).endsWith("C");
        return (metric ? fahrenheit : celsius)
                + (falls ? "" : StepTime.coneAt(s).map(c -> ", cone " + c).orElse(""));
    }

    private static String pressure(Design d) {
        Set<String> all = new LinkedHashSet<>();
        if (d.burners() != null) {
            for (Burner b : d.burners()) {
                Quantity p = b.pressure() != null
                        ? b.pressure()
                        : d.supply() == null ? null : d.supply().pressure();
                all.add(p == null ? "_____" : p.typed());
            }
        }
        return all.isEmpty() ? "_____" : String.join(" / ", all);
    }

    private static String typed(Quantity q) {
        return q == null ? "–" : q.typed();
    }

    /** Flame at flue and spyhole by level (common practice, no source). */
    private static String flame(boolean gas, String level) {
        if (!gas) {
            return "none";
        }
        return switch (level) {
            case "oxidizing" -> "none, clear";
            case "neutral" -> "licks at the flue";
            case "light" -> "short at the flue";
            case "medium" -> "soft at spyhole";
            case "heavy" -> "long and hazy";
            case "beyond" -> "smoke: open plate";
            default -> "watch flue, spyhole";
        };
    }
}
