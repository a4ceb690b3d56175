package portwright.calc.firing.log;

/** Numbers at the intervals of a record, one beside another. */
final class Columns {
    private Columns() {}

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** How much missing power a unit of an input explains. */
    static double[] slope(double[] before, double[] after, double by) {
        double[] out = new double[before.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = (before[i] - after[i]) / by;
        }
        return out;
    }
}
