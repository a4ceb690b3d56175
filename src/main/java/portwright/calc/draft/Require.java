package portwright.calc.draft;

/** Refuses numbers that no kiln has, with the words of the quantity. */
final class Require {
    private Require() {}

    static void positive(String what, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be above zero, not " + value);
        }
    }

    static void atLeastZero(String what, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be zero or more, not " + value);
        }
    }

    static void finite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be a number, not " + value);
        }
    }

    static void share(String what, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(what + " must lie between 0 and 1, not " + value);
        }
    }
}
