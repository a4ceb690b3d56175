package portwright.file;

import portwright.model.Design;

/** What spans several fields: names, references, places. */
final class CrossChecks {
    private CrossChecks() {}

    static void run(Design design, Faults faults) {
        return;
    }
}
