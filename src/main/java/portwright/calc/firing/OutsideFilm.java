package portwright.calc.firing;

/** Heat from the cold face of a part to the room. */
public final class OutsideFilm {
    private OutsideFilm() {}

    /** Emissivity of a bright stainless jacket: 0.3 (from memory of heat-transfer handbooks). */
    public static final double BRIGHT_JACKET = 0.3;

    /**
     * Emissivity of bare insulating brick: 0.8 (from memory of heat-transfer handbooks). On a lid without a metal cover the film carries
     * half as much again as under bright metal; brick resists several times as much, so the lid loses about 7 % more and the kiln 1 %.
     */
    public static final double BARE_BRICK = 0.8;

    /** The film of a face of one size and emissivity. */
    public static Film of(Facing facing, double lengthM, double emissivity) {
        if (!(lengthM > 0 && emissivity >= 0 && emissivity <= 1)) {
            throw new IllegalArgumentException("a film needs a length above zero and an emissivity of 0 to 1");
        }
        return (faceK, roomK) -> coefficient(facing, lengthM, emissivity, faceK, roomK);
    }

    /**
     * Film coefficient h = h_natural + h_radiation, W/(m² K).
     *
     * <p>Natural convection in room air, the simplified forms of heat-transfer handbooks (from memory): side
     * 1.31 Δ^⅓, looking up 1.52 Δ^⅓ (both turbulent), looking down 0.59 (Δ/L)^¼. Radiation to walls at room
     * temperature.
     *
     * <p>Range: face 0 to 600 °C, L 0.2 to 1.5 m, still air. A draught can double it; brick resists about four times as
     * much as the film, so the loss then rises by a tenth.
     *
     * @param facing which way the face looks
     * @param lengthM L, height of a wall or width of a slab, m
     * @param emissivity of the face
     * @param faceK face, K
     * @param roomK room, K
     */
    public static double coefficient(Facing facing, double lengthM, double emissivity, double faceK, double roomK) {
        double d = Math.abs(faceK - roomK);
        double natural = switch (facing) {
            case SIDE -> 1.31 * Math.cbrt(d);
            case UP -> 1.52 * Math.cbrt(d);
            case DOWN -> 0.59 * Math.sqrt(Math.sqrt(d / lengthM));
        };
        return natural + Heat.radiationCoefficient(emissivity, faceK, roomK);
    }
}
