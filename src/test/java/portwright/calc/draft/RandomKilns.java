package portwright.calc.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import portwright.calc.combustion.Fuel;
import portwright.calc.combustion.Fuels;

/** Seeded random kilns over all that a design file admits. */
final class RandomKilns {
    private RandomKilns() {}

    static DraftCase of(long seed) {
        SplittableRandom r = new SplittableRandom(seed);
        double height = r.nextDouble(0.2, 1.2);
        double slab = r.nextDouble(0.04, 0.13);
        double t = r.nextDouble(280, 1700);
        Fuel[] fuels = {Fuels.propane(), Fuels.butane(), Fuels.methane()};
        List<Inlet> in = new ArrayList<>();
        for (int i = r.nextInt(5); i > 0; i--) {
            boolean wall = r.nextInt(3) == 0;
            double d = r.nextInt(12) == 0 ? 0 : r.nextDouble(0.01, 0.1);
            Inlet hole = new Inlet(
                    "inlet " + i,
                    d,
                    slab,
                    wall ? r.nextDouble(0, height) : 0,
                    r.nextInt(2) == 0 ? 0 : r.nextDouble(-2, 2),
                    null,
                    0,
                    0,
                    0,
                    0);
            if (r.nextInt(4) != 0) {
                double gas = Math.pow(10, r.nextDouble(-6, -3));
                hole = hole.withGas(
                        fuels[r.nextInt(fuels.length)],
                        gas,
                        gas * r.nextDouble(10, 250),
                        r.nextInt(2) == 0 ? 0 : r.nextDouble(0, 1));
            }
            if (r.nextInt(4) == 0) {
                hole = hole.withStream(r.nextDouble(500, 1500));
            }
            in.add(hole);
        }
        List<Flue> out = new ArrayList<>();
        for (int i = r.nextInt(4); i > 0; i--) {
            out.add(new Flue(
                    "flue " + i,
                    r.nextInt(12) == 0 ? 0 : r.nextDouble(0.01, 0.1),
                    slab,
                    height + slab,
                    r.nextInt(4) == 0 ? 0 : r.nextInt(3) == 0 ? 1 : r.nextDouble(),
                    r.nextInt(2) == 0 ? 0 : r.nextDouble(-2, 2)));
        }
        List<Crack> cracks = r.nextBoolean()
                ? List.of()
                : List.of(new Crack(height, r.nextDouble(0, 2e-3), r.nextDouble(0.5, 3), 0.06));
        List<LeakHole> leaks = r.nextBoolean()
                ? List.of()
                : List.of(LeakHole.ofArea(r.nextDouble(0, height), r.nextDouble(0, 2e-4), 0.06));
        return new DraftCase(
                t, height, r.nextDouble(255, 315), Cases.pressure(r.nextDouble(0, 3500)), in, out, cracks, leaks);
    }
}
