package portwright.layout;

/** Tells how far a search has come, stage by stage: each takes a part of what is left, so that the share never goes back. */
final class Course implements Progress {
    /** Nothing is done before the search ends. */
    private static final double MOST = 0.99;

    private final Progress hearer;
    private double from;
    private double span;
    private double reached;

    Course(Progress hearer) {
        this.hearer = hearer;
    }

    /**
     * Begins a stage; shares told from now on are its own.
     *
     * @param part how much of what is left it takes, 0 to 1
     */
    void stage(double part, String words) {
        from = reached;
        span = (MOST - reached) * part;
        at(0, words);
    }

    @Override
    public void at(double share, String words) {
        reached = Math.max(reached, from + span * Math.min(1, share));
        hearer.at(reached, words);
    }

    @Override
    public boolean cancelled() {
        return hearer.cancelled();
    }
}
