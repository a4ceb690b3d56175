package portwright.calc.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import portwright.data.LpGas;
import portwright.units.Celsius;

/**
 * The liquid in a cylinder: one LP gas or an ideal mix of them.
 *
 * <p>Formulas: {@code ln(p/pc) = (Tc/T)(a t + b t^1.5 + c t^2.5 + d t^5)}, t = 1 - T/Tc; Raoult {@code p = sum x_i p_i};
 * vapour {@code y_i = x_i p_i / p}; latent heat {@code l1 (1 - Tr)^(l2 + l3 Tr + l4 Tr^2)} J/mol. Range -50 to 60 °C.
 * Real commercial propane holds ethane or propylene and stands 5 to 10 % higher in pressure. Example: pure propane at
 * 20 °C 836.6 kPa absolute. Source: see {@link LpGas#source()}; Raoult's law for the mix (judgement: the two paraffins
 * mix almost ideally).
 *
 * @param gases the components
 * @param moleShares their mole shares in the liquid, each at least 0, sum 1
 */
public record Liquid(List<LpGas> gases, List<Double> moleShares) {

    private static final double SHARE_TOLERANCE = 1e-9;
    private static final double MOST_TAKEN = 0.99;
    private static final int STEPS = 400;

    public Liquid {
        gases = List.copyOf(gases);
        moleShares = List.copyOf(moleShares);
        if (gases.isEmpty() || gases.size() != moleShares.size()) {
            throw new IllegalArgumentException("a liquid needs as many mole shares as gases, got " + gases.size()
                    + " gases, " + moleShares.size() + " shares");
        }
        double sum = 0;
        for (double x : moleShares) {
            if (!(x >= 0)) {
                throw new IllegalArgumentException("a mole share must be at least 0, got " + x);
            }
            sum += x;
        }
        if (!(Math.abs(sum - 1) <= SHARE_TOLERANCE)) {
            throw new IllegalArgumentException("mole shares must add up to 1, got " + sum);
        }
    }

    /** A pure liquid. */
    public static Liquid pure(LpGas gas) {
        return new Liquid(List.of(gas), List.of(1.0));
    }

    /** A propane/butane mix by mole share of propane. */
    public static Liquid propaneButane(double propaneMoleShare) {
        return new Liquid(
                List.of(LpGas.named("propane"), LpGas.named("butane")),
                List.of(propaneMoleShare, 1 - propaneMoleShare));
    }

    /** A propane/butane mix by mass share of propane, as sellers state it. */
    public static Liquid propaneButaneByMass(double propaneMassShare) {
        double p = propaneMassShare / LpGas.named("propane").molarMassKgPerMol();
        double b = (1 - propaneMassShare) / LpGas.named("butane").molarMassKgPerMol();
        return propaneButane(p / (p + b));
    }

    /**
     * What is left when a share of the mass has boiled off slowly: the lighter gas goes first. {@code dm_i = -w_i dm}, w the mass shares of the vapour
     * (Rayleigh's distillation, in steps). Example: a mix of equal masses at 10 °C, half boiled off: 0.26 propane by mass is left (own working).
     *
     * @param takenShare of the mass, 0 to 1; counted to 0.99 at most
     */
    public Liquid leftAfter(double takenShare, double tK) {
        double[] m = new double[gases.size()];
        double all = 0;
        for (int i = 0; i < m.length; i++) {
            m[i] = moleShares.get(i) * gases.get(i).molarMassKgPerMol();
            all += m[i];
        }
        double dm = all * Math.min(MOST_TAKEN, Math.max(0, takenShare)) / STEPS;
        for (int k = 0; k < STEPS; k++) {
            double vapour = 0;
            double[] w = new double[m.length];
            for (int i = 0; i < m.length; i++) {
                w[i] = m[i] * purePressure(gases.get(i), tK); // x_i p_i M_i: mass of each in the vapour
                vapour += w[i];
            }
            for (int i = 0; i < m.length; i++) {
                m[i] = Math.max(0, m[i] - dm * w[i] / vapour);
            }
        }
        double moles = 0;
        for (int i = 0; i < m.length; i++) {
            m[i] /= gases.get(i).molarMassKgPerMol();
            moles += m[i];
        }
        List<Double> shares = new ArrayList<>();
        for (double n : m) {
            shares.add(n / moles);
        }
        return new Liquid(gases, shares);
    }

    /** Absolute vapour pressure in Pa at a temperature in K. */
    public double vapourPressurePa(double tK) {
        double p = 0;
        for (int i = 0; i < gases.size(); i++) {
            p += moleShares.get(i) * purePressure(gases.get(i), tK);
        }
        return p;
    }

    /**
     * Temperature in K at which the vapour pressure is {@code pPa} absolute, by bisection over the range of use.
     *
     * @throws IllegalArgumentException if the pressure lies outside what the liquid has between -50 and 60 °C
     */
    public double saturationK(double pPa) {
        double lo = minK();
        double hi = maxK();
        if (!(pPa >= vapourPressurePa(lo) && pPa <= vapourPressurePa(hi))) {
            throw new IllegalArgumentException("no temperature from " + (lo - Celsius.ZERO_C) + " to "
                    + (hi - Celsius.ZERO_C) + " °C gives " + pPa + " Pa absolute in this liquid");
        }
        while (hi - lo > 1e-9) {
            double mid = (lo + hi) / 2;
            if (vapourPressurePa(mid) < pPa) {
                lo = mid;
            } else {
                hi = mid;
            }
        }
        return (lo + hi) / 2;
    }

    /** Latent heat in J per kg of the vapour that leaves, at a temperature in K. */
    public double latentJPerKg(double tK) {
        double heat = 0;
        double mass = 0;
        for (int i = 0; i < gases.size(); i++) {
            LpGas g = gases.get(i);
            double y = moleShares.get(i) * purePressure(g, tK);
            heat += y * pureLatent(g, tK);
            mass += y * g.molarMassKgPerMol();
        }
        return heat / mass;
    }

    /** Latent heat at the normal boiling point in J/kg, weighted by mass in the liquid; what the boil-off fit uses. */
    public double boilingLatentJPerKg() {
        return byMass(LpGas::boilingLatentJPerKg);
    }

    /** Liquid density in kg/m³ near 15 °C, ideal volumes added. */
    public double densityKgPerM3() {
        return 1 / byMass(g -> 1 / g.liquidDensity());
    }

    /** Lowest temperature of use in K. */
    public double minK() {
        return gases.stream().mapToDouble(LpGas::minK).max().orElseThrow();
    }

    /** Highest temperature of use in K. */
    public double maxK() {
        return gases.stream().mapToDouble(LpGas::maxK).min().orElseThrow();
    }

    private double byMass(ToDoubleFunction<LpGas> of) {
        double sum = 0;
        double mass = 0;
        for (int i = 0; i < gases.size(); i++) {
            double m = moleShares.get(i) * gases.get(i).molarMassKgPerMol();
            sum += m * of.applyAsDouble(gases.get(i));
            mass += m;
        }
        return sum / mass;
    }

    private static double purePressure(LpGas g, double tK) {
        if (!(tK >= g.minK() - 1e-6 && tK <= g.maxK() + 1e-6)) {
            throw new IllegalArgumentException(
                    "vapour pressure of " + g.id() + " is known from " + (g.minK() - Celsius.ZERO_C) + " to "
                            + (g.maxK() - Celsius.ZERO_C) + " °C, asked at " + (tK - Celsius.ZERO_C) + " °C");
        }
        double t = 1 - tK / g.tcK();
        var w = g.wagner();
        return g.pcPa()
                * Math.exp(g.tcK()
                        / tK
                        * (w.get(0) * t
                                + w.get(1) * Math.pow(t, 1.5)
                                + w.get(2) * Math.pow(t, 2.5)
                                + w.get(3) * Math.pow(t, 5)));
    }

    private static double pureLatent(LpGas g, double tK) {
        double tr = tK / g.latentTcK();
        var l = g.latent();
        return l.get(0) * Math.pow(1 - tr, l.get(1) + l.get(2) * tr + l.get(3) * tr * tr);
    }
}
