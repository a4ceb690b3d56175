package portwright.calc.firing.log;

import java.util.ArrayList;
import java.util.List;

/**
 * Element power that a record shows where a step asks for a known power, so that another firing of the same kiln can be laid beside it.
 *
 * @param points in time order
 * @param loadTold whether a note of the log tells the load, so that it is no guess
 */
public record PowerTrace(List<Point> points, boolean loadTold) {
    /** Nothing told. */
    public static final PowerTrace NONE = new PowerTrace(List.of(), false);

    private static final double WARM_K = 723.15;

    /**
     * One interval of five minutes.
     *
     * @param kelvin reading
     * @param gas whether gas burns
     * @param share power needed against power asked
     * @param moves what that share moves by when one input of this firing is off by its standard deviation: load, voltage, gas, thermocouple
     *     (two ways)
     */
    public record Point(double kelvin, boolean gas, double share, double[] moves) {}

    public PowerTrace {
        points = List.copyOf(points);
    }

    static PowerTrace of(Followed f) {
        List<Integer> list = new ArrayList<>();
        for (int i = 0; i < f.intervals(); i++) {
            if (!Double.isNaN(f.asked[i]) && f.kelvin[i] > WARM_K) {
                list.add(i);
            }
        }
        if (list.isEmpty()) {
            return NONE;
        }
        int[] told = list.stream().mapToInt(Integer::intValue).toArray();
        Unsure u = new Unsure(f, told);
        List<double[]> columns = new ArrayList<>(List.of(u.load(), u.power(), u.gas()));
        columns.addAll(u.probe());
        double full = f.c.kiln().elements().fullW();
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < told.length; i++) {
            double asked = f.asked[told[i]];
            double[] moves = new double[columns.size()];
            for (int k = 0; k < moves.length; k++) {
                moves[k] = columns.get(k)[i] * full / asked;
            }
            out.add(new Point(
                    f.kelvin[told[i]], f.gasOn(told[i]), f.logged.get(told[i]).neededW() / asked, moves));
        }
        return new PowerTrace(out, !Double.isNaN(Notes.loadKg(f.c.log())));
    }
}
