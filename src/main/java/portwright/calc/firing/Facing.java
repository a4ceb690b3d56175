package portwright.calc.firing;

/** Which way the cold face of a part looks. */
public enum Facing {
    /** A wall. */
    SIDE,
    /** The lid: the warm face looks up. */
    UP,
    /** The floor: the warm face looks down. */
    DOWN
}
