package portwright.geometry;

/**
 * One wall panel between its mitre lines.
 *
 * @param number from 1
 * @param a inside corner at the left end seen from inside (u = −width/2)
 * @param b inside corner at the right end seen from inside (u = +width/2)
 * @param outerA outside corner at a's mitre line
 * @param outerB outside corner at b's mitre line
 * @param bearing direction of the outward normal, rad clockwise from the back
 */
public record Panel(int number, Pt a, Pt b, Pt outerA, Pt outerB, double bearing) {
    /** Inside width, mm. */
    public double width() {
        return a.distance(b);
    }
}
