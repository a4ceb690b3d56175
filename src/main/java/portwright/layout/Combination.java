package portwright.layout;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import portwright.geometry.Pt;
import portwright.geometry.ShelfPlate;

/**
 * Inlets and flues together, with the rules that look at both. Layouts are weighed on two levels: first the margin, then what their places give beside
 * that. Numbers and sizes of the holes can hold the margin down wherever these lie; then the least margin of the places decides ({@link #room()}).
 * Where one role is held down for reasons of its own, the other still counts ({@link #ease()}).
 */
record Combination(Sizes.Choice choice, Spots inlets, Spots flues, double cross, double sizes, int nearFlame) {
    /** What an even arrangement of one role is worth once no rule cautions, on the scale of {@link #rank()} (judgement). */
    private static final double EVEN_WORTH = 0.12;

    /** What one fitting near a mouth costs on the same scale (judgement). */
    private static final double NEAR_FLAME_COST = 0.04;

    /** Margin from which a layout counts as free of cautions: not at the very limit, where a tape's error brings one (judgement). */
    private static final double CLEAR = 1.02;

    /** Weight of what places give where sizes hold the margin down: too little to outweigh a margin that is told otherwise. */
    private static final double SECOND = 1e-4;

    /** The most that ease adds in {@link #places}. */
    static final double MOST_EASE = 2 * SECOND;

    /** By margin, then by what places give, the narrowest first. */
    static final Comparator<Combination> WIDTH = Comparator.comparingDouble(Combination::margin)
            .thenComparingDouble(Combination::room)
            .thenComparingDouble(Combination::ease);

    double margin() {
        return Math.min(room(), sizes);
    }

    /** The least margin of all that places change; for the same holes wherever they lie it tells both levels. */
    double room() {
        return Math.min(Math.min(inlets.margin(), flues.margin()), cross);
    }

    /** Whether numbers and sizes hold the margin down, wherever the holes lie. */
    boolean sized() {
        return sizes < room();
    }

    /** The least margin of the role that has more room than the other. */
    double ease() {
        return Math.min(Math.max(inlets.margin(), flues.margin()), cross);
    }

    /**
     * For ranking. Up to the caution limits every bit of margin counts; beyond them more room is worth ever less, so that an arrangement about the
     * middle, which heats evenly, comes before one that only gains some room. Where sizes hold the margin down below that, places are ranked by their
     * own room, evenness with it. What does not burn clean comes last.
     */
    double rank() {
        int roles = even() ? 2 : inlets.even() || flues.even() ? 1 : 0;
        double places = rank(room(), roles, ease());
        double all = sized() ? rank(sizes, sizes < CLEAR ? 2 : roles, Scale.FREE) + SECOND * places : places;
        double fire = choice.clean() ? 0 : -1000 * (1 - choice.lambdaLow());
        return all + fire - NEAR_FLAME_COST * nearFlame;
    }

    private static double rank(double margin, int evenRoles, double ease) {
        double alike = SlabSearch.SYMMETRY_WORTH / 2 * Math.min(1, Math.abs(margin));
        double even = margin < CLEAR ? SlabSearch.SYMMETRY_WORTH / 2 * Math.abs(margin) : EVEN_WORTH;
        double other = margin < CLEAR ? Math.max(0, worth(ease)) : worth(Scale.FREE);
        return worth(margin) + evenRoles * even + alike * other;
    }

    /** Of layouts of the same holes the one with most room; where rules caution even that, of those with nearly as much the one with most ease. */
    static Combination widest(List<Combination> some) {
        Combination most = some.stream().max(WIDTH).orElse(null);
        if (most == null || most.room() >= CLEAR) {
            return most;
        }
        double nearly = most.room() - SlabSearch.SYMMETRY_WORTH / 2 * Math.abs(most.room());
        return some.stream()
                .filter(c -> c.room() >= nearly)
                .max(Comparator.comparingDouble(Combination::ease))
                .orElse(most);
    }

    /** What a climb or rounding of the same holes goes by: room, and where that is the same ease. */
    static double places(double inlets, double flues, double cross) {
        return Math.min(Math.min(inlets, flues), cross) + SECOND * worth(Math.min(Math.max(inlets, flues), cross));
    }

    private static double worth(double margin) {
        return margin <= 1 ? margin : 2 - 1 / margin;
    }

    /** Whether it has clearly more margin than another, or for the same holes as much and clearly more room for them. */
    boolean gainsOn(Combination o) {
        return gains(margin(), o.margin()) || choice.equals(o.choice) && gains(room(), o.room());
    }

    /** Whether it gives the same holes as much room as another, and the role that has more of it clearly more. */
    boolean easier(Combination o) {
        return choice.equals(o.choice) && !gains(o.room(), room()) && gains(ease(), o.ease());
    }

    /** Whether one margin is larger than another by more than evenness is worth. */
    static boolean gains(double margin, double over) {
        return margin > over + SlabSearch.SYMMETRY_WORTH * Math.abs(over);
    }

    /** Whether both roles lie evenly, about the middle or as mirrors. */
    boolean even() {
        return inlets.even() && flues.even() && oneAxis();
    }

    /** Whether across a line that one role mirrors the other does too, if but by where it lies. */
    boolean oneAxis() {
        Axis a = inlets.axis() == null ? flues.axis() : inlets.axis();
        return a == null || Stream.of(inlets, flues).allMatch(s -> a.equals(s.axis()) || s.mirrors(a, Axis.ROUNDED_MM));
    }

    /** Whether neither inlets nor flues stay where the design has them. */
    boolean anew() {
        return !inlets.family().equals(Spots.AS_THEY_ARE) && !flues.family().equals(Spots.AS_THEY_ARE);
    }

    /** Whether both have their inlets in the floor, or both in the wall. */
    boolean samePart(Combination o) {
        return inlets.inWall() == o.inlets.inWall();
    }

    /** Whether this even layout leaves little to gain by an uneven one with the same holes. */
    boolean evenAndAsGoodAs(Combination o) {
        return even()
                && !o.even()
                && samePart(o)
                && choice.equals(o.choice)
                && room() >= o.room() * (1 - SlabSearch.SYMMETRY_WORTH);
    }

    /**
     * Other numbers, an inlet beside its old place (a hole's diameter off or more), or a flue beside its old place in another arrangement. A mirror
     * image, or the same flues turned over the same inlets, is no choice, and neither are holes that overlap the old ones.
     */
    boolean clearlyDiffers(Combination o) {
        if (choice.inlets() != o.choice.inlets() || choice.flues() != o.choice.flues()) {
            return true;
        }
        if (choice.equals(o.choice)
                && inlets.family().equals(o.inlets.family())
                && flues.family().equals(o.flues.family())
                && (inlets.inWall() || elsewhere(o) <= Choosing.CLEAR)
                && Math.abs(room() - o.room()) < SlabSearch.SYMMETRY_WORTH * Math.abs(room())) {
            return false;
        }
        return !sharesInlets(o) || !sharesFlues(o) && !flues.family().equals(o.flues.family());
    }

    /** Whether numbers and families are the same. */
    boolean sameArrangement(Combination o) {
        return choice.inlets() == o.choice.inlets()
                && choice.flues() == o.choice.flues()
                && inlets.family().equals(o.inlets.family())
                && flues.family().equals(o.flues.family());
    }

    /**
     * How much of the drilling goes elsewhere: of inlets and of flues the share of both layouts' holes that have none of the other within a hole's
     * diameter, and the mean of the two; 0 where all stand in the same places, 1 where none does, at most one half where inlets or flues stay.
     */
    double elsewhere(Combination o) {
        return elsewhere(o, 0);
    }

    /** The same where a hole counts as elsewhere only so much farther off, mm. */
    double elsewhere(Combination o, double fartherMm) {
        return (inlets.elsewhere(o.inlets, fartherMm + Math.max(choice.inletMm(), o.choice.inletMm()))
                        + flues.elsewhere(o.flues, fartherMm + Math.max(choice.flueMm(), o.choice.flueMm())))
                / 2;
    }

    /** Whether no inlet lies a hole's diameter or more from where the other layout has one. */
    boolean sharesInlets(Combination o) {
        return inletsFar(o) < Math.max(choice.inletMm(), o.choice.inletMm());
    }

    /** The same of flues. */
    boolean sharesFlues(Combination o) {
        return fluesFar(o) < Math.max(choice.flueMm(), o.choice.flueMm());
    }

    /** How far an inlet lies from the other layout's nearest, mm, at most. */
    double inletsFar(Combination o) {
        return Math.max(inlets.farFrom(o.inlets), o.inlets.farFrom(inlets));
    }

    /** The same of flues. */
    double fluesFar(Combination o) {
        return Math.max(flues.farFrom(o.flues), o.flues.farFrom(flues));
    }

    /** Margin of the flues' distance from the inlets' axes where no shelf lies between. */
    static double cross(Sizes.Choice c, Spots in, Spots fl, List<ShelfPlate> shelves) {
        double limit = c.inletMm() + c.flueMm();
        double m = Scale.FREE;
        for (int i = 0; !in.inWall() && i < in.x().length; i++) {
            Pt p = new Pt(in.x()[i], in.y()[i]);
            if (shelves.stream().noneMatch(s -> s.shape().contains(p))) {
                for (int j = 0; j < fl.x().length; j++) {
                    m = Math.min(m, Scale.atLeast(Math.hypot(p.x() - fl.x()[j], p.y() - fl.y()[j]), Double.NaN, limit));
                }
            }
        }
        return m;
    }
}
