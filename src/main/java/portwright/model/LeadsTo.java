package portwright.model;

/** Where an opening of the room leads. */
public enum LeadsTo implements Ided {
    OUTDOORS("outdoors"),
    /** Another room: no fresh air for people, room volume for the burners. */
    ROOM("room");

    private final String id;

    LeadsTo(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
