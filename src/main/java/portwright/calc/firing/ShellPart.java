package portwright.calc.firing;

import java.util.List;

/**
 * One part of the shell: all wall panels together, the floor, or the lid. Its area grows in a straight line from the hot
 * face to the cold face, so that corners and edges are counted once.
 *
 * @param layers hot face first
 * @param innerAreaM2 hot face
 * @param outerAreaM2 cold face, corners and edges included
 * @param film from the cold face to the room
 */
public record ShellPart(String name, List<Layer> layers, double innerAreaM2, double outerAreaM2, Film film) {
    public ShellPart {
        layers = List.copyOf(layers);
        if (layers.isEmpty() || !(innerAreaM2 > 0 && outerAreaM2 > 0)) {
            throw new IllegalArgumentException(name + ": needs a layer, two areas above zero");
        }
    }

    /** The same part with the conductivity of every layer times a factor. */
    public ShellPart conducting(double factor) {
        return new ShellPart(
                name, layers.stream().map(l -> l.conducting(factor)).toList(), innerAreaM2, outerAreaM2, film);
    }

    double thicknessM() {
        return layers.stream().mapToDouble(Layer::thicknessM).sum();
    }
}
