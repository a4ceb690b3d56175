package portwright.model;

/** Whether the ports stand open or plugged in a step. */
public enum PortsState implements Ided {
    OPEN("open"),
    PLUGGED("plugged");

    private final String id;

    PortsState(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
