package portwright.model;

/** Atmosphere levels, rich to lean. */
public enum Atmosphere implements Ided {
    BEYOND("beyond"),
    HEAVY("heavy"),
    MEDIUM("medium"),
    LIGHT("light"),
    NEUTRAL("neutral"),
    OXIDIZING("oxidizing");

    private final String id;

    Atmosphere(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
