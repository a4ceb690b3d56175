package portwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import portwright.data.HoleSaw;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.Role;
import portwright.model.UnitSystem;
import portwright.units.Format;

/** Numbers and saw sizes worth trying: burners fit, flue against inlet area within its limits, and the draft burns the gas clean. */
final class Sizes {
    /** Smallest and largest hole that the rule book calls usual, mm. */
    private static final double LEAST_MM = 19;

    private static final double MOST_MM = 102;
    private static final int INLET_SIZES = 3;
    /** Usual inlet where nothing asks for another: common practice, no source. */
    private static final double USUAL_INLET_MM = 35;

    private final Design design;
    private final Wishes wishes;
    private final Fire fire;
    private final LayoutLimits limits;
    private final List<Double> saws;

    Sizes(Design design, Wishes wishes, LayoutLimits limits) {
        this.design = design;
        this.wishes = wishes;
        this.limits = limits;
        this.fire = new Fire(design);
        boolean inch = design.units() != UnitSystem.METRIC;
        saws = HoleSaw.all().stream()
                .filter(s -> s.inch() == inch)
                .map(HoleSaw::diameterMm)
                .filter(d -> d >= LEAST_MM && d <= MOST_MM)
                .sorted()
                .toList();
    }

    /**
     * One choice.
     *
     * @param lambdaLow lower end of lambda at the tighter of gas-on and top, flues open; null when not known
     */
    record Choice(int inlets, double inletMm, int flues, double flueMm, Double lambdaLow) {
        /** Whether the gas burns clean with the flues open, as far as the design lets one know. */
        boolean clean() {
            return lambdaLow == null || lambdaLow >= 1;
        }

        /** Whether numbers and sizes are the same, whatever air they draw. */
        boolean sameHoles(Choice o) {
            return inlets == o.inlets && flues == o.flues && inletMm == o.inletMm && flueMm == o.flueMm;
        }

        double ratio() {
            return flues * flueMm * flueMm / (inlets * inletMm * inletMm);
        }
    }

    /** Which numbers and sizes were tried, in a sentence; those that were asked for go without saying. */
    String tried() {
        return wishes.flueMm() != null
                ? ""
                : " Tried: " + words(flues(), "flue") + " of every saw from " + Format.plain(saws.get(0), 0) + " to "
                        + Format.plain(saws.get(saws.size() - 1), 0) + " mm over " + words(inlets(), "inlet")
                        + (wishes.inletMm() != null ? "" : " of every saw that clears the tip") + ".";
    }

    private static String words(Set<Integer> numbers, String what) {
        return numbers.stream().sorted().map(String::valueOf).collect(Collectors.joining(", ")) + " " + what
                + (numbers.size() == 1 && numbers.contains(1) ? "" : "s");
    }

    /** Choices that keep the ratio of areas; where none does, the one nearest to it. */
    List<Choice> list() {
        List<Choice> out = choices(inletSizes());
        return out.isEmpty() ? List.of(nearest()) : out;
    }

    /**
     * Choices with inlets smaller than any of {@link #list()}, by saw, the largest first; each leaves the widest tip some air. None where the size of the
     * inlets is asked for.
     */
    List<List<Choice>> smaller() {
        if (wishes.inletMm() != null) {
            return List.of();
        }
        double usual = usualInlet();
        return saws.stream()
                .filter(d -> d < usual - 1e-9 && d > widestTip() + 1e-9)
                .sorted(Comparator.reverseOrder())
                .map(d -> choices(Set.of(d)))
                .filter(l -> !l.isEmpty())
                .toList();
    }

    private List<Choice> choices(Set<Double> inletsMm) {
        List<Choice> out = new ArrayList<>();
        for (int in : inlets()) {
            for (double dIn : inletsMm) {
                for (int fl : flues()) {
                    Choice c = choice(in, dIn, fl);
                    if (c != null) {
                        out.add(c);
                    }
                }
            }
        }
        return out;
    }

    /** The smallest inlet that is usual here, mm. */
    double usualInlet() {
        return inletSizes().stream().min(Comparator.naturalOrder()).orElse(LEAST_MM);
    }

    /** The widest burner tip, mm; 0 where none is stated. */
    double widestTip() {
        return tips().mapToDouble(b -> b.tip().mm()).max().orElse(0);
    }

    private Stream<Burner> tips() {
        return design.burners() == null
                ? Stream.empty()
                : design.burners().stream().filter(b -> b.tip() != null);
    }

    /** Ring of air that a tip wants round it, mm. */
    double ring(double tipMm) {
        return Math.max(limits.value("burner-fit", "gap"), limits.value("burner-fit", "gap-share") * tipMm);
    }

    /** The saws that are tried, mm. */
    List<Double> saws() {
        return saws;
    }

    /** What was asked for. */
    Wishes asked() {
        return wishes;
    }

    /** Where no saw keeps the ratio, the one that comes nearest to it. */
    private Choice nearest() {
        double low = limits.value("flue-inlet-ratio", "caution");
        double high = limits.value("flue-inlet-ratio", "caution-high");
        Choice best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int in : inlets()) {
            for (double dIn : inletSizes()) {
                for (int fl : flues()) {
                    for (double d : saws) {
                        double ratio = fl * d * d / (in * dIn * dIn);
                        double off = Math.max(low / ratio, ratio / high);
                        if (off < least) {
                            least = off;
                            best = new Choice(in, dIn, fl, d, null);
                        }
                    }
                }
            }
        }
        Double lambda = fire.lambdaLow(best.inlets(), best.inletMm(), best.flues(), best.flueMm());
        return new Choice(best.inlets(), best.inletMm(), best.flues(), best.flueMm(), lambda);
    }

    private Set<Integer> inlets() {
        Set<Integer> out = new LinkedHashSet<>();
        long has = count(Role.INLET);
        if (wishes.inlets() != null) {
            out.add(wishes.inlets());
        } else if (design.burners() != null && !design.burners().isEmpty()) {
            out.add((int) Math.max(
                    1,
                    design.burners().stream()
                            .map(Burner::port)
                            .filter(Objects::nonNull)
                            .distinct()
                            .count()));
        } else {
            if (has > 0 && has <= Wishes.MOST) {
                out.add((int) has);
            }
            out.addAll(List.of(2, 3, 4));
        }
        return out;
    }

    private Set<Integer> flues() {
        Set<Integer> out = new LinkedHashSet<>();
        if (wishes.flues() != null) {
            out.add(wishes.flues());
            return out;
        }
        long has = count(Role.FLUE);
        if (has > 0 && has <= Wishes.MOST) {
            out.add((int) has);
        }
        out.addAll(List.of(1, 2, 3, 4));
        return out;
    }

    private long count(Role role) {
        return design.ports() == null
                ? 0
                : design.ports().stream().filter(p -> p.role() == role).count();
    }

    /** Smallest inlet that leaves the widest tip its ring of air, mm; 0 without burners. */
    double leastInlet() {
        return tips().mapToDouble(b -> b.tip().mm() + 2 * ring(b.tip().mm()))
                .max()
                .orElse(0);
    }

    private Set<Double> inletSizes() {
        Set<Double> out = new LinkedHashSet<>();
        if (wishes.inletMm() != null) {
            out.add(wishes.inletMm());
            return out;
        }
        double least = Math.max(LEAST_MM, leastInlet());
        double usual = design.ports() == null
                ? 0
                : design.ports().stream()
                        .filter(p -> p.role() == Role.INLET)
                        .mapToDouble(p -> p.diameter().mm())
                        .max()
                        .orElse(0);
        double wanted = usual >= least && usual <= MOST_MM ? usual : Math.max(least, USUAL_INLET_MM);
        if (leastInlet() > 0) {
            saws.stream().filter(s -> s >= least - 1e-9).limit(1).forEach(out::add);
        }
        saws.stream().filter(s -> s >= wanted - 1e-9).limit(INLET_SIZES - 1).forEach(out::add);
        return out;
    }

    /** The same numbers and inlets with every other flue saw that keeps the ratio, those nearest in size first; none where the flue's size is asked for. */
    List<Choice> others(Choice c) {
        if (wishes.flueMm() != null) {
            return List.of();
        }
        return saws.stream()
                .filter(d -> d != c.flueMm() && keepsRatio(c.inlets(), c.inletMm(), c.flues(), d))
                .sorted(Comparator.comparingDouble(d -> Math.abs(d - c.flueMm())))
                .map(d -> new Choice(
                        c.inlets(), c.inletMm(), c.flues(), d, fire.lambdaLow(c.inlets(), c.inletMm(), c.flues(), d)))
                .toList();
    }

    private boolean keepsRatio(int in, double dIn, int fl, double d) {
        double ratio = fl * d * d / (in * dIn * dIn);
        return ratio >= limits.value("flue-inlet-ratio", "caution")
                && ratio <= limits.value("flue-inlet-ratio", "caution-high");
    }

    /** The smallest flue that burns clean and keeps the ratio; where none burns clean, the largest within the ratio. */
    private Choice choice(int in, double dIn, int fl) {
        if (wishes.flueMm() != null) {
            return new Choice(in, dIn, fl, wishes.flueMm(), fire.lambdaLow(in, dIn, fl, wishes.flueMm()));
        }
        Choice best = null;
        for (double d : saws) {
            if (keepsRatio(in, dIn, fl, d)) {
                best = new Choice(in, dIn, fl, d, fire.lambdaLow(in, dIn, fl, d));
                if (best.clean()) {
                    return best;
                }
            }
        }
        return best;
    }
}
