package portwright.calc.firing;

/** Looks at the kiln where a step begins and where it ends; changes nothing. */
interface StepWatch {

    /**
     * Called twice a step.
     *
     * @param damperShare open share of the flues in the step
     * @param state of chamber, walls and load
     */
    void look(Step step, double damperShare, Balance state);
}
