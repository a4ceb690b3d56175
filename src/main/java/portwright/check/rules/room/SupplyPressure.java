package portwright.check.rules.room;

import java.util.List;
import java.util.Set;
import portwright.check.Findings;
import portwright.check.Forbids;
import portwright.check.Limits;
import portwright.check.Measure;
import portwright.check.Rule;
import portwright.check.Severity;
import portwright.model.Burner;
import portwright.model.Supply;
import portwright.review.Review;
import portwright.source.Source;

/** Burner, regulator and supply agree in pressure. */
public final class SupplyPressure implements Rule {

    /** A supply so many times over the burner's pressure is told (own judgement). */
    private static final double TOLD_OVER = 1.1;

    /** Pressures typed in two units are the same within so much: 11 in w.c. is 27.4 mbar (own judgement). */
    private static final double SAME = 1.002;

    private static final Source SOURCE =
            Source.practice("the regulator must reach what the burner asks, and not pass what it bears");

    @Override
    public String id() {
        return "supply-pressure";
    }

    @Override
    public Set<Forbids> canForbid() {
        return Say.LIGHTING;
    }

    @Override
    public void check(Review review, Limits limits, Findings out) {
        Supply s = review.design().supply();
        if (review.design().burners() == null) {
            out.lacks(this, "burners");
            return;
        }
        if (review.design().allElectric()) {
            return;
        }
        if (s == null || s.pressure() == null) {
            out.lacks(this, "supply.pressure");
            return;
        }
        double supply = s.pressure().si();
        double high = limits.value(id(), "caution");
        boolean mixed = mixed(review, limits, out);
        if (!mixed && Say.over(supply, high)) {
            out.add(Say.finding(
                    this,
                    Severity.CAUTION,
                    new Measure(supply, "Pa"),
                    new Measure(high, "Pa"),
                    "The supply runs at " + Say.justOver(Say.n(supply / 100) + " mbar", Say.n(high / 100) + " mbar")
                            + ", over " + Say.n(high / 100) + " mbar.",
                    "Use a high-pressure regulator and hose marked for LP gas at this pressure, and burners rated for it.",
                    limits.source(id(), "caution"),
                    limits.setByUser(id(), "caution")));
        }
        boolean beyond = s.regulatorMax() != null
                && Say.over(supply, SAME * s.regulatorMax().si());
        if (s.regulatorMax() == null && Boolean.TRUE.equals(review.supply().bottled())) {
            out.lacks(this, "supply.regulator.max");
        } else if (beyond) {
            out.add(Say.stop(
                    this,
                    new Measure(supply, "Pa"),
                    new Measure(s.regulatorMax().si(), "Pa"),
                    "The supply pressure of " + Say.n(supply / 100) + " mbar is over the "
                            + Say.n(s.regulatorMax().si() / 100) + " mbar that the regulator gives.",
                    "Fit a regulator for " + Say.n(supply / 100)
                            + " mbar, or run the burners at the regulator's pressure.",
                    SOURCE));
        }
        for (int i = 0; i < review.design().burners().size(); i++) {
            Burner b = review.design().burners().get(i);
            if (b.pressure() == null) {
                out.lacks(this, "burners[" + i + "].pressure");
            } else if (Say.over(b.pressure().si(), SAME * supply)) {
                out.add(Say.stop(
                        this,
                        new Measure(b.pressure().si(), "Pa"),
                        new Measure(supply, "Pa"),
                        b.name() + " asks for " + Say.n(b.pressure().si() / 100) + " mbar; the supply gives "
                                + Say.n(supply / 100) + " mbar.",
                        "Raise the supply to " + Say.n(b.pressure().si() / 100)
                                + " mbar with a regulator made for it, or fit burners and jets made for "
                                + Say.n(supply / 100) + " mbar.",
                        SOURCE,
                        b.name()));
            } else if (!mixed
                    && !beyond
                    && Say.over(supply, TOLD_OVER * b.pressure().si())) {
                throttled(b, supply, out);
            }
        }
    }

    /** Nothing in the file holds the burner under the supply's pressure. The flow of a jet goes with the root of its pressure. */
    private void throttled(Burner b, double supply, Findings out) {
        double made = b.pressure().si();
        String own = Say.n(made / 100) + " mbar";
        out.add(Say.caution(
                this,
                new Measure(supply, "Pa"),
                new Measure(made, "Pa"),
                "The supply gives " + Say.n(supply / 100) + " mbar; " + b.name() + " is counted at " + own
                        + ". Fed with all of it the burner takes "
                        + Say.n(Math.rint((Math.sqrt(supply / made) - 1) * 100))
                        + " % more gas than any figure here.",
                "Have a regulator, or a valve with a gauge after it, hold " + own + " at " + b.name()
                        + " and read that gauge; else give the burner the supply's pressure.",
                SOURCE,
                b.name()));
    }

    /** A low-pressure burner behind a regulator or a line of high pressure; true when it was said. */
    private boolean mixed(Review review, Limits limits, Findings out) {
        Supply s = review.design().supply();
        double border = limits.value(id(), "stop");
        double most = Math.max(
                s.pressure().si(),
                s.regulatorMax() == null ? 0 : s.regulatorMax().si());
        List<Burner> low = review.design().burners().stream()
                .filter(b -> b.pressure() != null && !Say.over(b.pressure().si(), border))
                .toList();
        if (low.isEmpty() || !Say.over(most, border)) {
            return false;
        }
        double made = low.stream().mapToDouble(b -> b.pressure().si()).min().orElseThrow();
        String[] names = low.stream().map(Burner::name).toArray(String[]::new);
        boolean line = Say.over(s.pressure().si(), border);
        out.add(Say.finding(
                this,
                Severity.STOP,
                new Measure(most, "Pa"),
                new Measure(border, "Pa"),
                (line ? "The supply runs at " : "The regulator gives up to ")
                        + Say.n((line ? s.pressure().si() : most) / 100) + " mbar; " + String.join(", ", names)
                        + (names.length == 1 ? " is" : " are") + " made for " + Say.n(made / 100)
                        + " mbar: low and high pressure are not mixed. A turn too far bursts valve and hose or blows the flame off.",
                "Fit a fixed regulator for " + Say.n(made / 100) + " mbar (not over " + Say.n(border / 100)
                        + " mbar), or burners, valves and hose that are all rated for " + Say.n(most / 100) + " mbar.",
                limits.source(id(), "stop"),
                limits.setByUser(id(), "stop"),
                names));
        return true;
    }
}
