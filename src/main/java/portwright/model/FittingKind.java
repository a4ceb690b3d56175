package portwright.model;

/** Kinds of fittings. */
public enum FittingKind implements Ided {
    THERMOCOUPLE("thermocouple"),
    SPYHOLE("spyhole"),
    TERMINALS("terminals"),
    CONTROL_BOX("control-box"),
    LEG("leg"),
    STAND_BAR("stand-bar"),
    HINGE("hinge"),
    HANDLE("handle"),
    LATCH("latch"),
    VENT("vent"),
    CRACK("crack"),
    OTHER("other");

    private final String id;

    FittingKind(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
