package portwright.check.rules.fire;

import java.util.List;
import portwright.check.Finding;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.data.HoleSaw;
import portwright.data.NumberDrill;
import portwright.model.Burner;
import portwright.model.Role;
import portwright.model.UnitSystem;
import portwright.review.Review;
import portwright.units.BothSystems;
import portwright.units.Format;

/** Builds the findings of this section and its remedies. */
final class Say {
    /** Relative tolerance of every comparison: at the limit a rule passes. */
    static final double TOLERANCE = Limits.TOLERANCE;

    private Say() {}

    static boolean over(double value, double limit) {
        return value > limit + Math.abs(limit) * TOLERANCE;
    }

    static boolean under(double value, double limit) {
        return value < limit - Math.abs(limit) * TOLERANCE;
    }

    /** A finding on the limit of that name. */
    static void add(
            Findings out,
            Rule rule,
            Limits limits,
            String name,
            Severity severity,
            Forbids forbids,
            List<String> parts,
            Measure measured,
            Measure limit,
            String message,
            String remedy) {
        out.add(new Finding(
                rule.id(),
                severity,
                forbids,
                parts,
                measured,
                limit,
                message,
                remedy,
                limits.source(rule.id(), name),
                limits.setByUser(rule.id(), name),
                List.of()));
    }

    static String n(double v, int decimals) {
        return Format.plain(v, decimals);
    }

    static List<String> ports(Review review, Role role) {
        return review.design().ports().stream()
                .filter(p -> p.role() == role)
                .map(p -> p.name())
                .toList();
    }

    static List<String> burners(Review review) {
        return review.design().burners() == null
                ? List.of()
                : review.design().burners().stream().map(Burner::name).toList();
    }

    static double area(Review review, Role role) {
        return review.geometry().holes().stream()
                .filter(h -> h.port().role() == role)
                .mapToDouble(h -> Math.PI / 4 * h.diameter() * h.diameter())
                .sum();
    }

    /** "Enlarge the flues to 44 mm (1.73 in)", the next saw of the design's series: all flues grown alike by an area factor; without flues the area to add, that of the inlets. */
    static String enlargeFlues(Review review, double areaFactor) {
        double largest = review.geometry().holes().stream()
                .filter(h -> h.port().role() == Role.FLUE)
                .mapToDouble(h -> h.diameter())
                .max()
                .orElse(0);
        if (largest == 0) {
            return "Add flues of " + BothSystems.told(area(review, Role.INLET), 0, "mm²")
                    + " in all, as much as the inlets have,";
        }
        double wanted = largest * Math.sqrt(areaFactor) - 1e-6;
        boolean inch = review.design().units() != UnitSystem.METRIC;
        return HoleSaw.all().stream()
                .filter(s -> s.inch() == inch && s.diameterMm() >= wanted)
                .findFirst()
                .map(s -> "Enlarge the flues to "
                        + (inch
                                ? s.size().typed() + " (" + n(s.diameterMm(), 1) + " mm)"
                                : n(s.diameterMm(), 0) + " mm (" + n(s.diameterMm() / 25.4, 2) + " in)"))
                .orElse("Drill further flues: no saw is wide enough for " + n(area(review, Role.FLUE) * areaFactor, 0)
                        + " mm² in these,");
    }

    /** "fit a smaller jet: #72" or the heat to set, for a share of the gas. */
    static String lessGas(Review review, double share) {
        Double kw = review.supply().netW() == null ? null : review.supply().netW() / 1000 * share;
        String heat = kw == null ? "use less gas" : "burn at most " + n(Math.floor(kw * 100) / 100, 2) + " kW in all";
        for (Burner b : review.design().burners()) {
            if (b.jet() != null) {
                double mm = b.jet().diameter() != null
                        ? b.jet().diameter().mm()
                        : NumberDrill.of(b.jet().drillNumber()).diameterMm();
                double wanted = mm * Math.sqrt(share);
                String drill = NumberDrill.load().stream()
                        .filter(d -> d.diameterMm() <= wanted)
                        .max((x, y) -> Double.compare(x.diameterMm(), y.diameterMm()))
                        .map(d -> "#" + d.number() + " (" + n(d.diameterMm(), 2) + " mm)")
                        .orElse(n(wanted, 2) + " mm");
                return "fit a smaller jet: " + drill + " for " + b.name() + ", so that the burners give "
                        + (kw == null ? "less" : BothSystems.told(kw, 2, "kW") + " in all");
            }
        }
        return heat;
    }
}
