package portwright.review;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import portwright.data.NumberDrill;
import portwright.model.Burner;
import portwright.model.Design;
import portwright.model.Jet;
import portwright.units.Format;

/** Other amounts of gas that the burners of a design can be set to: jets as drills are sold, pressures that the regulator gives. */
final class GasCures {
    /** Nearer than this to the gas of now is no other amount. */
    private static final double SAME = 0.03;

    private final Double boreMm;
    private final Double pressurePa;
    private final Double mostPa;

    GasCures(Design design) {
        List<Burner> burners = design.burners() == null ? List.of() : design.burners();
        List<Double> bores = burners.stream().map(b -> bore(b.jet())).distinct().toList();
        boreMm = bores.size() == 1 ? bores.get(0) : null;
        List<Double> pressures = burners.stream()
                .map(b -> b.pressure() == null ? null : b.pressure().si())
                .distinct()
                .toList();
        pressurePa = pressures.size() == 1 ? pressures.get(0) : null;
        mostPa = design.supply() == null || design.supply().regulatorMax() == null
                ? null
                : design.supply().regulatorMax().si();
    }

    private static Double bore(Jet jet) {
        return jet == null
                ? null
                : jet.diameter() != null
                        ? Double.valueOf(jet.diameter().mm())
                        : Double.valueOf(NumberDrill.of(jet.drillNumber()).diameterMm());
    }

    /** Shares of the gas of now as near to the wanted ones as drills give; the wanted ones where the burners' bore is not one and known. */
    double[] shares(double[] wanted) {
        return boreMm == null
                ? wanted
                : Arrays.stream(wanted)
                        .map(w -> share(NumberDrill.nearest(boreMm * Math.sqrt(w))))
                        .filter(s -> Math.abs(s - 1) > SAME)
                        .distinct()
                        .toArray();
    }

    private double share(NumberDrill d) {
        return d.diameterMm() * d.diameterMm() / (boreMm * boreMm);
    }

    /** The flow goes with the root of the pressure and the square of the bore. A pressure is told only where the regulator gives it. */
    String words(double share) {
        String amount = Format.plain(Math.abs(share - 1) * 100, 0) + " % " + (share < 1 ? "less" : "more") + " gas";
        String jet = share < 1 ? "smaller jets" : "larger jets";
        if (boreMm != null) {
            NumberDrill d = NumberDrill.load().stream()
                    .min(Comparator.comparingDouble(x -> Math.abs(share(x) - share)))
                    .orElseThrow();
            jet = "jets #" + d.number() + ", " + Format.plain(d.diameterMm(), 2) + " mm, for " + Format.plain(boreMm, 2)
                    + " mm";
        }
        double pa = pressurePa == null ? Double.NaN : pressurePa * share * share;
        boolean given = pa <= pressurePaOr(Double.NaN) || mostPa != null && pa <= mostPa;
        return amount + " (" + jet
                + (given ? ", or " + Format.plain(pa / 100, 1) + " mbar for " + Format.plain(pressurePa / 100, 1) : "")
                + ")";
    }

    private double pressurePaOr(double other) {
        return pressurePa == null ? other : pressurePa;
    }
}
