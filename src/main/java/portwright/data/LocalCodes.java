package portwright.data;

/** Whose word comes before that of the program: one wording for screen, text and paper. */
public final class LocalCodes {
    /** In one line. */
    public static final String FIRST = "Local codes and licensed gas and electrical work come first.";

    private LocalCodes() {}

    /**
     * In full.
     *
     * @param what stands behind it, such as {@code this paper}
     */
    public static String before(String what) {
        return "Local codes, the fire authority, the insurer and licensed gas and electrical practice come before "
                + what
                + ". Where they say otherwise, they are right. The figures are a model's: they do not replace a qualified person's look at the kiln.";
    }
}
