package portwright.layout;

import java.util.SplittableRandom;
import portwright.geometry.Pt;

/** Numbers that move the holes of one role so that they stay even: turned and widened about the middle, or each pair as mirrors. Lengths in mm. */
interface EvenHold {
    /** How far mirrored holes are thrown about. */
    double THROWN_MM = 60;

    /** Where the holes are. */
    double[] start();

    /** The holes at numbers from one on. */
    Spots at(double[] p, int from);

    /** Writes numbers at random from one on. */
    void thrown(double[] p, int from, SplittableRandom random);

    /** The hold on places that are {@link Spots#kept even}. */
    static EvenHold of(Spots s, Pt middle) {
        return s.mirror() != null ? mirrored(s) : turned(s, middle);
    }

    private static EvenHold mirrored(Spots s) {
        double[] start = s.mirror().start(s.x(), s.y());
        return new EvenHold() {
            @Override
            public double[] start() {
                return start.clone();
            }

            @Override
            public Spots at(double[] p, int from) {
                double[] x = new double[start.length];
                double[] y = new double[start.length];
                s.mirror().place(p, from, x, y);
                return s.at(x, y);
            }

            @Override
            public void thrown(double[] p, int from, SplittableRandom random) {
                for (int i = 0; i < start.length; i++) {
                    p[from + i] = start[i] + THROWN_MM * random.nextGaussian();
                }
            }
        };
    }

    private static EvenHold turned(Spots s, Pt middle) {
        double most = 1;
        for (int i = 0; i < s.x().length; i++) {
            most = Math.max(most, Math.hypot(s.x()[i] - middle.x(), s.y()[i] - middle.y()));
        }
        double reach = most;
        return new EvenHold() {
            @Override
            public double[] start() {
                return new double[] {reach, 0};
            }

            @Override
            public Spots at(double[] p, int from) {
                double along = p[from] / reach;
                double across = p[from + 1] / reach;
                double[] x = new double[s.x().length];
                double[] y = new double[x.length];
                for (int i = 0; i < x.length; i++) {
                    double dx = s.x()[i] - middle.x();
                    double dy = s.y()[i] - middle.y();
                    x[i] = middle.x() + along * dx - across * dy;
                    y[i] = middle.y() + along * dy + across * dx;
                }
                return s.at(x, y);
            }

            /** Turned by any angle and widened or drawn in by up to half. */
            @Override
            public void thrown(double[] p, int from, SplittableRandom random) {
                double r = reach * (0.5 + random.nextDouble());
                double w = 2 * Math.PI * random.nextDouble();
                p[from] = r * Math.cos(w);
                p[from + 1] = r * Math.sin(w);
            }
        };
    }
}
