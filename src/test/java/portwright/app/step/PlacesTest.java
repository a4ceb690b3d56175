package portwright.app.step;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PlacesTest {
    @Test
    void wordsThatHaveRoomStayWhereTheyAre() {
        double[] heights = {10, 40, 70};
        Places.spread(heights, 18, 0, 100);
        assertArrayEquals(new double[] {10, 40, 70}, heights, 1e-9);
    }

    @Test
    void crowdedWordsGiveWayUpAndDownAlike() {
        double[] heights = {50, 50, 90};
        Places.spread(heights, 18, 0, 200);
        assertArrayEquals(new double[] {41, 59, 90}, heights, 1e-9);
    }

    @Test
    void theyStayBetweenTopAndBottom() {
        double[] heights = {95, 96, 97};
        Places.spread(heights, 18, 0, 100);
        assertEquals(100, heights[2], 1e-9);
        double[] high = {1, 2, 3};
        Places.spread(high, 18, 5, 100);
        assertEquals(5, high[0], 1e-9);
        assertTrue(high[2] - high[1] >= 18 - 1e-9);
    }
}
