package portwright.units;

/** What a quantity measures. {@code base} names the unit in which {@link Quantity#base()} is kept. */
public enum Kind {
    LENGTH("length", "mm", "32 mm or 1 1/4 in"),
    AREA("area", "m2", "5 cm2 or 1.77 in2"),
    VOLUME("volume", "m3", "60 m3, 190 L or 6.7 ft3"),
    MASS("mass", "kg", "11.3 kg or 25 lb"),
    TEMPERATURE("temperature", "K", "900 °C or 1650 °F"),
    TEMPERATURE_DIFFERENCE("temperature difference", "K", "50 K or 100 °F"),
    TEMPERATURE_RATE("rate of temperature", "K/s", "80 °C/h or 150 °F/h"),
    PRESSURE("pressure", "Pa", "28 mbar, 2.7 kPa, 11 inH2O or 5 psi"),
    POWER("power", "W", "4.5 kW or 15000 Btu/h"),
    ANGLE("angle", "rad", "90 deg"),
    SHARE("share", "1", "50 %"),
    DURATION("time", "s", "6 h or 2 h 30 min"),
    FLOW("volume flow", "m3/s", "900 m3/h or 530 cfm"),
    SPEED("speed", "m/s", "1.5 m/s or 3 mph"),
    HEATING_VALUE("heating value by volume", "J/m3", "38 MJ/m3 or 1030 Btu/ft3"),
    DENSITY("density", "kg/m3", "0.74 kg/m3"),
    RESISTANCE("resistance", "ohm", "22 ohm");

    private final String word;
    private final String baseUnit;
    private final String example;

    Kind(String word, String baseUnit, String example) {
        this.word = word;
        this.baseUnit = baseUnit;
        this.example = example;
    }

    /** The kind in words, for messages. */
    public String word() {
        return word;
    }

    /** Unit of {@link Quantity#base()}. */
    public String baseUnit() {
        return baseUnit;
    }

    /** How such a quantity is written. */
    public String example() {
        return example;
    }
}
