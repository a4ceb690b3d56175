package portwright.calc.firing.log;

/** Nearly all element power gone where a step asks for plenty: relay, switch, breaker or controller. */
final class GonePower {
    private static final double GONE = 0.15;
    private static final double LITTLE = 0.3;
    private static final double PLENTY = 0.65;
    private static final double ASKED_LEAST = 0.4;

    private final Followed f;

    GonePower(Followed f) {
        this.f = f;
    }

    /**
     * First of two intervals in a row with hardly any power where the step asks for plenty, or the first of two spells with little power and
     * plenty between; −1 for none.
     */
    int from() {
        int first = -1;
        boolean back = false;
        for (int i = 0; i < f.intervals(); i++) {
            if (gives(i, 0, GONE) && i + 1 < f.intervals() && gives(i + 1, 0, GONE)) {
                return i;
            }
            if (gives(i, 0, LITTLE)) {
                if (back) {
                    return first;
                }
                first = first < 0 ? i : first;
            }
            back |= first >= 0 && gives(i, PLENTY, Double.POSITIVE_INFINITY);
        }
        return -1;
    }

    /** Whether the elements give a share of full power within bounds while the step asks for plenty. */
    private boolean gives(int i, double least, double most) {
        double full = f.c.kiln().elements().fullW();
        double share = f.logged.get(i).neededW() / full;
        return !f.blind[i] && f.leastAsked[i] > ASKED_LEAST * full && share < most && (least == 0 || share > least);
    }

    /** Whether it stays so to the end of the record. */
    boolean lastsToEnd(int from) {
        double full = f.c.kiln().elements().fullW();
        for (int i = from; i < f.intervals(); i++) {
            if (f.logged.get(i).neededW() > 2 * GONE * full) {
                return false;
            }
        }
        return true;
    }
}
