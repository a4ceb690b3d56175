package portwright.review;

import org.junit.jupiter.api.Tag;

/** Fifty of each fault. */
@Tag("slow")
class PlantedFaultsFiftyTest extends PlantedFaultsTest {
    @Override
    int cases() {
        return 50;
    }
}
