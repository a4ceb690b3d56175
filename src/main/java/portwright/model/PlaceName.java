package portwright.model;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Names of ports that tell a place, as the product gives them: {@code inlet front}, {@code flue back left}. Only such a name is told anew when the
 * port stands elsewhere; a name of any other form is its owner's.
 */
public final class PlaceName {
    /** Clockwise from the back, seen from above, 45° apart. */
    private static final List<String> SIDES =
            List.of("back", "back right", "right", "front right", "front", "front left", "left", "back left");

    private static final double STEP = 2 * Math.PI / SIDES.size();
    /** Up to this much off, rad, a name still tells the place. */
    private static final double NEAR = 1.5 * STEP + 1e-9;

    /** In a wall, where the panel itself has a side: up to where another word is the better one. */
    private static final double NEAR_IN_WALL = 0.625 * STEP + 1e-9;

    private PlaceName() {}

    /**
     * Another name for a port whose name tells a place where it does not stand; null where the name may stay.
     *
     * @param bearing of the port from the chamber's centre, rad clockwise from the back, seen from above
     * @param on the part that the port is in
     * @param taken whether something else bears a name
     */
    public static String truer(String name, Role role, On on, double bearing, Predicate<String> taken) {
        return tells(name, role, on, bearing, false)
                ? null
                : first(role, on, bearing, (a, b) -> Double.compare(rank(a, bearing), rank(b, bearing)), taken);
    }

    /**
     * Whether a name tells no place, or the one where the port stands.
     *
     * @param moved whether the port was laid there anew: only the nearest side tells it then, else one next to that still does
     */
    public static boolean tells(String name, Role role, On on, double bearing, boolean moved) {
        int told = side(name, role.id());
        return told < 0 || off(told * STEP, bearing) <= (on == On.WALL ? NEAR_IN_WALL : moved ? STEP / 2 + 1e-9 : NEAR);
    }

    /** The name of the nearest side that nothing else bears, else one with a letter; null where all are taken. */
    public static String nearest(Role role, On on, double bearing, Predicate<String> taken) {
        return first(role, on, bearing, (a, b) -> Double.compare(nearness(a, bearing), nearness(b, bearing)), taken);
    }

    private static double nearness(int side, double bearing) {
        return off(side * STEP, bearing) + (side % 2 == 0 ? 0 : 1e-9);
    }

    private static String first(Role role, On on, double bearing, Comparator<Integer> order, Predicate<String> taken) {
        double near = on == On.WALL ? NEAR_IN_WALL : NEAR;
        Stream<String> sides = IntStream.range(0, SIDES.size())
                .boxed()
                .filter(i -> off(i * STEP, bearing) <= near)
                .sorted(order)
                .map(SIDES::get);
        Stream<String> letters = IntStream.range(0, 26).mapToObj(i -> String.valueOf((char) ('A' + i)));
        return Stream.concat(sides, letters)
                .map(s -> role.id() + " " + s)
                .filter(n -> !taken.test(n))
                .findFirst()
                .orElse(null);
    }

    /** What stood under a port by the same words, its burner, told anew with it: {@code burner front} of {@code inlet front}; else the name unchanged. */
    public static String following(String burner, String oldPort, String newPort) {
        for (Role role : Role.values()) {
            if (side(oldPort, role.id()) >= 0
                    && burner.equals("burner" + oldPort.substring(role.id().length()))
                    && newPort.startsWith(role.id())) {
                return "burner" + newPort.substring(role.id().length());
            }
        }
        return burner;
    }

    /** One word is told rather than two unless the port stands nearer to a corner by far. */
    private static double rank(int side, double bearing) {
        return off(side * STEP, bearing) + (side % 2 == 0 ? 0 : STEP / 4);
    }

    private static int side(String name, String role) {
        return name.toLowerCase(Locale.ROOT).startsWith(role + " ")
                ? SIDES.indexOf(name.substring(role.length() + 1))
                : -1;
    }

    private static double off(double a, double b) {
        double d = Math.abs(a - b) % (2 * Math.PI);
        return Math.min(d, 2 * Math.PI - d);
    }
}
