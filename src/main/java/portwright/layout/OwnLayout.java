package portwright.layout;

import java.util.List;
import java.util.Optional;
import portwright.check.CheckResult;
import portwright.check.rules.RuleBook;
import portwright.check.rules.Unknowns;
import portwright.data.LimitTable;
import portwright.model.Design;
import portwright.model.On;
import portwright.model.Port;
import portwright.model.Role;
import portwright.review.Review;
import portwright.units.Format;

/**
 * The layout that a design has, on the scales of its proposals.
 *
 * @param limiting what limits its margin
 * @param lambdaLow lower end of lambda with the flues open at full gas, the figure of {@link Proposal#lambdaLow()}; null when the design does not say enough
 * @param stops rules that stop it, drilling or lighting; empty where it passes
 * @param unknown what was not checked of it
 */
public record OwnLayout(Term limiting, Double lambdaLow, List<String> stops, Unknowns unknown) {
    /** Figures are told with two decimals; what differs by less is alike. */
    private static final double ALIKE = 0.005;

    /** One of which everything was checked. */
    OwnLayout(Term limiting, Double lambdaLow, List<String> stops) {
        this(limiting, lambdaLow, stops, Unknowns.NONE);
    }

    public OwnLayout {
        stops = List.copyOf(stops);
    }

    /** Empty unless a design has inlets of one size in floor or wall and lid flues of one size and no other ports. */
    static Optional<OwnLayout> of(Design design, LayoutTerms terms, LimitTable table) {
        List<Port> ports = design.ports() == null ? List.of() : design.ports();
        List<Port> in = ports.stream()
                .filter(p -> p.role() == Role.INLET && p.on() != On.LID)
                .toList();
        List<Port> out = ports.stream()
                .filter(p -> p.role() == Role.FLUE && p.on() == On.LID)
                .toList();
        if (in.isEmpty()
                || out.isEmpty()
                || in.size() + out.size() < ports.size()
                || in.stream().anyMatch(p -> p.on() != in.get(0).on())
                || !oneSize(in)
                || !oneSize(out)) {
            return Optional.empty();
        }
        Double air = new Fire(design).lambdaLow(in.size(), mm(in), out.size(), mm(out));
        Sizes.Choice c = new Sizes.Choice(in.size(), mm(in), out.size(), mm(out), air);
        Review review = Review.of(design);
        CheckResult check = new RuleBook(table).check(review);
        return Optional.of(new OwnLayout(
                terms.of(c, ports).get(0),
                Fire.lowEnd(review.fire()),
                Stops.of(check).rules(),
                Unknowns.of(check)));
    }

    private static double mm(List<Port> ports) {
        return ports.get(0).diameter().mm();
    }

    private static boolean oneSize(List<Port> ports) {
        return ports.stream().mapToDouble(p -> p.diameter().mm()).distinct().count() == 1;
    }

    /** Its least margin, on the scale of {@link Proposal#margin()}. */
    public double margin() {
        return limiting.margin();
    }

    /** Whether no rule stops it. */
    public boolean passes() {
        return stops.isEmpty() && !limiting.isStop();
    }

    /** What is told of its air, a sentence; empty where that is not known. */
    public String air() {
        return lambdaLow == null ? "" : (Fire.words(lambdaLow) + ".").strip();
    }

    /** How a proposal compares with it, in a sentence; empty where it does not pass or margin and air are alike. */
    public String beside(Proposal p) {
        boolean air = lambdaLow != null && p.lambdaLow() != null;
        boolean otherAir = air && Math.abs(lambdaLow - p.lambdaLow()) >= ALIKE;
        if (!passes() || !otherAir && Math.abs(margin() - p.margin()) < ALIKE) {
            return "";
        }
        return "Your own layout beside it: margin " + Format.plain(margin(), 2)
                + (otherAir ? ", lambda " + Format.plain(lambdaLow, 2) + " at the low end" : "") + "; this one "
                + Format.plain(p.margin(), 2)
                + (!otherAir
                        ? "."
                        : " and " + Format.plain(p.lambdaLow(), 2)
                                + (p.lambdaLow() < lambdaLow ? ": less air to spare." : ": more air to spare."));
    }
}
