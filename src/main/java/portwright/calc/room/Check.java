package portwright.calc.room;

/** Guards for the inputs of this package. */
final class Check {

    private Check() {}

    static double atLeastZero(double v, String what) {
        if (!(v >= 0) || !Double.isFinite(v)) {
            throw new IllegalArgumentException(what + " must be a number of at least 0, got " + v);
        }
        return v;
    }

    static double aboveZero(double v, String what) {
        if (!(v > 0) || !Double.isFinite(v)) {
            throw new IllegalArgumentException(what + " must be a number above 0, got " + v);
        }
        return v;
    }

    static double share(double v, String what) {
        if (!(v >= 0 && v <= 1)) {
            throw new IllegalArgumentException(what + " must lie from 0 to 1, got " + v);
        }
        return v;
    }
}
