package portwright.data;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BricksTest {
    @Test
    void aBrickIsFoundAsPeopleWriteIt() {
        for (String s : new String[] {"ifb-23", "IFB 23", "ifb23", " Ifb_23 "}) {
            assertThat(Bricks.load().find(s).orElseThrow().id()).isEqualTo("ifb-23");
        }
        assertThat(Bricks.load().find("23")).isEmpty();
        assertThat(Bricks.load().oneOf()).startsWith("one of ifb-20, ").contains("ifb-28");
    }
}
