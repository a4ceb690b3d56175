package portwright.calc.firing;

import java.util.List;
import portwright.units.Celsius;

/** Kilns and gas for tests. */
final class TestKilns {
    private TestKilns() {}

    static final double Z = Celsius.ZERO_C;
    static final double INCH = 0.0254;
    /** Regular polygon kiln: walls with corners, floor, lid. */
    static KilnHeat polygon(
            int sides,
            double acrossFlatsM,
            double heightM,
            double wallM,
            Layer[] layers,
            double lossFactor,
            double loadKg,
            double powerW,
            List<OpenPort> ports,
            double roomK) {
        double tan = Math.tan(Math.PI / sides);
        double outFlats = acrossFlatsM + 2 * wallM;
        double slabIn = sides / 4.0 * acrossFlatsM * acrossFlatsM * tan;
        double slabOut = sides / 4.0 * outFlats * outFlats * tan;
        double wallIn = sides * acrossFlatsM * tan * heightM;
        double wallOut = sides * outFlats * tan * (heightM + 2 * wallM);
        List<Layer> l = List.of(layers);
        List<ShellPart> parts = List.of(
                new ShellPart(
                        "walls", l, wallIn, wallOut, OutsideFilm.of(Facing.SIDE, heightM, OutsideFilm.BRIGHT_JACKET)),
                new ShellPart(
                        "lid", l, slabIn, slabOut, OutsideFilm.of(Facing.UP, acrossFlatsM, OutsideFilm.BRIGHT_JACKET)),
                new ShellPart(
                        "floor",
                        l,
                        slabIn,
                        slabOut,
                        OutsideFilm.of(Facing.DOWN, acrossFlatsM, OutsideFilm.BRIGHT_JACKET)));
        return new KilnHeat(
                parts, lossFactor, loadKg * 1100, wallIn + 2 * slabIn, Elements.fresh(powerW), ports, roomK);
    }

    /** 23 × 27 in decagon, 2.5 in of group 23, 70 kg: the kiln of the independent check rows. They do not state the brick's density: 540 kg/m³ stands between the 520 and 580 of a data sheet. */
    static KilnHeat decagon(double powerW, double lossFactor) {
        return decagon(powerW, lossFactor, 70, List.of());
    }

    static KilnHeat decagon(double powerW, double lossFactor, double loadKg, List<OpenPort> ports) {
        Layer brick = new Layer(2.5 * INCH, Conductivity.linear(0.12, 1e-4), 540, 1050);
        return polygon(
                10, 23 * INCH, 27 * INCH, 2.5 * INCH, new Layer[] {brick}, lossFactor, loadKg, powerW, ports, 20 + Z);
    }

    static final List<OpenPort> FIVE_PORTS = List.of(
            new OpenPort(0.030, 0.064, false),
            new OpenPort(0.030, 0.064, false),
            new OpenPort(0.030, 0.064, false),
            new OpenPort(0.040, 0.064, true),
            new OpenPort(0.040, 0.064, true));

    static Step full(Step.Goal goal) {
        return Step.electric(goal, Step.FULL);
    }

    static Step.To to(double celsius) {
        return new Step.To(celsius + Z);
    }
}
