package portwright.model;

/** Whether the building of the kiln's room is joined to a dwelling: by a wall, floor, door, duct or shaft. */
public enum RoomBuilding implements Ided {
    DETACHED("detached"),
    JOINED("joined");

    private final String id;

    RoomBuilding(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
