package portwright.calc.draft;

import java.util.ArrayList;
import java.util.List;

/**
 * Everything the pressure balance needs.
 *
 * @param chamberTemperature K
 * @param chamberHeight hot face of the floor to hot face of the lid, m
 * @param roomTemperature of the air drawn in, K
 * @param atmosphericPressure absolute, Pa
 */
public record DraftCase(
        double chamberTemperature,
        double chamberHeight,
        double roomTemperature,
        double atmosphericPressure,
        List<Inlet> inlets,
        List<Flue> flues,
        List<Crack> cracks,
        List<LeakHole> leaks) {
    public DraftCase {
        Require.positive("chamber temperature, K", chamberTemperature);
        Require.positive("chamber height, m", chamberHeight);
        Require.positive("room temperature, K", roomTemperature);
        Require.positive("atmospheric pressure, Pa", atmosphericPressure);
        inlets = List.copyOf(inlets);
        flues = List.copyOf(flues);
        cracks = List.copyOf(cracks);
        leaks = List.copyOf(leaks);
    }

    /** The same kiln at another chamber temperature, K. */
    public DraftCase at(double kelvin) {
        return new DraftCase(kelvin, chamberHeight, roomTemperature, atmosphericPressure, inlets, flues, cracks, leaks);
    }

    /** The same kiln with every flue at this open share. */
    public DraftCase damper(double share) {
        return withFlues(flues.stream().map(f -> f.withOpenShare(share)).toList());
    }

    /** The same kiln with other flues. */
    public DraftCase withFlues(List<Flue> other) {
        return new DraftCase(
                chamberTemperature, chamberHeight, roomTemperature, atmosphericPressure, inlets, other, cracks, leaks);
    }

    /** The same kiln with other inlets. */
    public DraftCase withInlets(List<Inlet> other) {
        return new DraftCase(
                chamberTemperature, chamberHeight, roomTemperature, atmosphericPressure, other, flues, cracks, leaks);
    }

    /** The same kiln with other leaks. */
    public DraftCase withLeaks(List<Crack> otherCracks, List<LeakHole> otherLeaks) {
        return new DraftCase(
                chamberTemperature,
                chamberHeight,
                roomTemperature,
                atmosphericPressure,
                inlets,
                flues,
                otherCracks,
                otherLeaks);
    }

    /**
     * The same kiln with every port plugged and no gas. What leaves by the joint under the lid must come in somewhere: joint of the floor,
     * plugs of low ports, tails of elements. None of these is known, so half of each leak as high as the lid counts at the floor: the split
     * that lets most air through (own judgement). Leaks at heights of their own stay there.
     */
    public DraftCase plugged() {
        List<Crack> joints = new ArrayList<>();
        List<LeakHole> gaps = new ArrayList<>();
        for (Crack c : cracks) {
            if (c.height() < chamberHeight) {
                joints.add(c);
            } else {
                joints.add(new Crack(0, c.width(), c.length() / 2, c.depth()));
                joints.add(new Crack(c.height(), c.width(), c.length() / 2, c.depth()));
            }
        }
        for (LeakHole h : leaks) {
            if (h.height() < chamberHeight) {
                gaps.add(h);
            } else {
                double half = h.diameter() / Math.sqrt(2);
                gaps.add(new LeakHole(0, half, h.length()));
                gaps.add(new LeakHole(h.height(), half, h.length()));
            }
        }
        return new DraftCase(
                chamberTemperature,
                chamberHeight,
                roomTemperature,
                atmosphericPressure,
                List.of(),
                List.of(),
                joints,
                gaps);
    }

    /** The same kiln with this share of its gas (thrust falls with the square: same jet, lower pressure). */
    public DraftCase gasShare(double share) {
        return withInlets(inlets.stream()
                .map(i -> i.withGas(i.fuel(), i.gasFlow() * share, i.jetThrust() * share * share, i.momentumShare()))
                .toList());
    }

    /** Gas set at the burners, kg/s. */
    public double gasFlow() {
        return inlets.stream().mapToDouble(Inlet::gasFlow).sum();
    }
}
