package portwright.calc.firing.log;

/** A logged damper that lets lambda lie well above what the plan's damper gives. */
final class LeanAir {
    private static final double LEAN = 0.15;
    private static final int LEAN_FOR = 4;

    private LeanAir() {}

    /** First of the intervals in a row that show it; −1 for none. */
    static int from(Followed f) {
        int run = 0;
        for (int i = 0; f.damperLogged && i < f.intervals(); i++) {
            double is = f.logged.get(i).flow().lambda();
            double plan = f.planned.get(i).flow().lambda();
            run = !f.blind[i] && !f.turned.at(i) && f.gasOn(i) && plan > 0 && is > plan + LEAN ? run + 1 : 0;
            if (run == LEAN_FOR) {
                return i - LEAN_FOR + 1;
            }
        }
        return -1;
    }
}
