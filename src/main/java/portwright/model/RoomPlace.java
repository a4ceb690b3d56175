package portwright.model;

/** Where the kiln stands. */
public enum RoomPlace implements Ided {
    OUTDOORS("outdoors"),
    OPEN_SHED("open-shed"),
    STUDIO("studio"),
    GARAGE("garage"),
    HOUSE("house"),
    BASEMENT("basement");

    private final String id;

    RoomPlace(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
