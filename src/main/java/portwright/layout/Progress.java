package portwright.layout;

/** Hears how far a search has come, and may end it. Called from the thread that searches. */
public interface Progress {
    /**
     * Tells how far the search is.
     *
     * @param share done, 0 to 1
     * @param words what is being tried
     */
    void at(double share, String words);

    /** Whether to end the search now; the best found so far is answered. */
    boolean cancelled();

    /** Nobody listens. */
    static Progress none() {
        return new Progress() {
            @Override
            public void at(double share, String words) {}

            @Override
            public boolean cancelled() {
                return false;
            }
        };
    }
}
