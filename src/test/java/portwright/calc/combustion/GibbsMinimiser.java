package portwright.calc.combustion;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import portwright.data.SpeciesData;
import portwright.data.SpeciesTable;

/**
 * General-purpose free-energy minimiser for a gas of any species at given temperature, pressure and elements: Newton on
 * the element potentials and the logarithms of the moles. It knows no reactions, no equilibrium constants and no lambda
 * and reads the polynomials by itself, so that it shares nothing with the product's solver but the table.
 */
public final class GibbsMinimiser {

    /** Species of the product's solver. */
    public static final List<String> SIX = List.of("CO", "CO2", "H2", "H2O", "O2", "N2");

    /** The wider set of the reference model, less graphite. */
    public static final List<String> ELEVEN =
            List.of("CO", "CO2", "H2", "H2O", "O2", "N2", "CH4", "OH", "H", "O", "NO");

    private static final Map<String, SpeciesData> DATA = SpeciesTable.load();
    private static final double R = 8.314462618;

    private final List<String> species;
    private final List<String> elements = List.of("C", "H", "O", "N");
    private final double[][] a;

    public GibbsMinimiser(List<String> species) {
        this.species = species;
        a = new double[elements.size()][species.size()];
        for (int i = 0; i < elements.size(); i++) {
            for (int j = 0; j < species.size(); j++) {
                a[i][j] = DATA.get(species.get(j)).atoms().getOrDefault(elements.get(i), 0);
            }
        }
    }

    /** Moles by species. Elements in mol of C, H, O, N; pressure in bar; inert: moles of gas that do not react. */
    public Map<String, Double> solve(double[] b, double t, double pBar, double inert) {
        int ne = elements.size();
        int ns = species.size();
        double[] g = new double[ns];
        double[] lnN = new double[ns];
        double sum = 0;
        for (double v : b) {
            sum += v;
        }
        for (int j = 0; j < ns; j++) {
            SpeciesData d = DATA.get(species.get(j));
            double[] c = t < d.tJoint() ? d.low() : d.high();
            g[j] = SpeciesData.h(c, t) - SpeciesData.s(c, t) + Math.log(pBar);
            lnN[j] = Math.log(sum / 2 / ns);
        }
        double lnTotal = Math.log(sum / 2 + inert);
        for (int iteration = 0; iteration < 500; iteration++) {
            RealMatrix m = new Array2DRowRealMatrix(ne + 1, ne + 1);
            RealVector rhs = new ArrayRealVector(ne + 1);
            double total = Math.exp(lnTotal);
            double moles = inert;
            for (int j = 0; j < ns; j++) {
                double n = Math.exp(lnN[j]);
                double mu = g[j] + lnN[j] - lnTotal;
                moles += n;
                for (int k = 0; k < ne; k++) {
                    for (int i = 0; i < ne; i++) {
                        m.addToEntry(k, i, a[k][j] * a[i][j] * n);
                    }
                    m.addToEntry(k, ne, a[k][j] * n);
                    m.addToEntry(ne, k, a[k][j] * n);
                    rhs.addToEntry(k, a[k][j] * n * (mu - 1));
                }
                rhs.addToEntry(ne, n * mu);
            }
            for (int k = 0; k < ne; k++) {
                rhs.addToEntry(k, b[k]);
            }
            m.addToEntry(ne, ne, moles - inert + inert - total);
            rhs.addToEntry(ne, total - moles);
            RealVector x = new QRDecomposition(m).getSolver().solve(rhs);
            double dTotal = x.getEntry(ne);
            double[] step = new double[ns];
            double biggest = 5 * Math.abs(dTotal);
            double change = Math.abs(dTotal);
            for (int j = 0; j < ns; j++) {
                double s = dTotal - (g[j] + lnN[j] - lnTotal);
                for (int i = 0; i < ne; i++) {
                    s += a[i][j] * x.getEntry(i);
                }
                step[j] = s;
                biggest = Math.max(biggest, Math.abs(s));
                change = Math.max(change, Math.abs(s));
            }
            double damping = Math.min(1, 2 / Math.max(1e-300, biggest));
            for (int j = 0; j < ns; j++) {
                lnN[j] += damping * step[j];
            }
            lnTotal += damping * dTotal;
            if (change < (iteration < 100 ? 1e-10 : 1e-6)) {
                Map<String, Double> out = new LinkedHashMap<>();
                for (int j = 0; j < ns; j++) {
                    out.put(species.get(j), Math.exp(lnN[j]));
                }
                return out;
            }
        }
        throw new IllegalStateException("no minimum found at " + t + " K");
    }

    /** Enthalpy, J, of a composition at t. */
    public static double enthalpy(Map<String, Double> moles, double t) {
        double h = 0;
        for (Map.Entry<String, Double> e : moles.entrySet()) {
            SpeciesData d = DATA.get(e.getKey());
            h += e.getValue() * R * t * SpeciesData.h(t < d.tJoint() ? d.low() : d.high(), t);
        }
        return h;
    }

    /** Temperature, K, at which the minimum has an enthalpy, J; inert gas stores 2.5 R a mol (argon). */
    public double adiabatic(double[] b, double enthalpy, double pBar, double inert) {
        double lo = 800;
        double hi = 3500;
        for (int i = 0; i < 60; i++) {
            double t = 0.5 * (lo + hi);
            double h = enthalpy(solve(b, t, pBar, inert), t) + inert * 2.5 * R * (t - 298.15);
            if (h < enthalpy) {
                lo = t;
            } else {
                hi = t;
            }
        }
        return 0.5 * (lo + hi);
    }
}
