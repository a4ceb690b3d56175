package portwright.calc.firing;

import portwright.data.Brick;

/** One layer of a part of the shell. */
public record Layer(double thicknessM, Conductivity conductivity, double densityKgPerM3, double heatCapacityJPerKgK) {
    public Layer {
        if (!(thicknessM > 0 && densityKgPerM3 > 0 && heatCapacityJPerKgK > 0)) {
            throw new IllegalArgumentException("a layer needs thickness, density and specific heat above zero");
        }
    }

    /** A layer of a brick in the table. */
    public static Layer of(Brick brick, double thicknessM) {
        return new Layer(thicknessM, Conductivity.of(brick), brick.densityKgPerM3(), brick.heatCapacityJPerKgK());
    }

    /** The same layer with its conductivity times a factor. */
    public Layer conducting(double factor) {
        return new Layer(thicknessM, conductivity.times(factor), densityKgPerM3, heatCapacityJPerKgK);
    }
}
