package portwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import portwright.model.Port;

class PortsTextTest {
    /** A port told anew keeps its burner, whose name told the same place; no burner is lost. */
    @Test
    void burnersFollowAPortThatIsToldAnew() {
        DesignText before = Starters.find("octagon-17").orElseThrow();
        List<Port> ports = before.read().design().ports().stream()
                .map(p -> p.name().equals("inlet front")
                        ? new Port("inlet left", p.role(), p.on(), p.panel(), p.at(), p.diameter())
                        : p)
                .toList();
        DesignText after = PortsText.put(before, ports, Map.of("inlet front", "inlet left"));
        assertThat(after.size("burners")).isEqualTo(2);
        assertThat(after.get("burners[0].port")).contains("inlet left");
        assertThat(after.get("burners[0].name")).contains("burner left");
        assertThat(after.get("burners[1].port")).contains("inlet back");
        assertThat(after.get("burners[1].name")).contains("burner back");
        assertThat(PortsText.put(before, ports, Map.of()).size("burners")).isEqualTo(1);
    }
}
