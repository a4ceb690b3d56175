package portwright.data;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class KilnTablesTest {
    @Test
    void bricksConesAndMaterialsLoad() {
        assertThat(Bricks.load().find("ifb-23").orElseThrow().conductivity()).hasSize(5);
        assertThat(Bricks.load().find("oak")).isEmpty();
        assertThat(Bricks.load().all())
                .filteredOn(b -> b.id().startsWith("fibre"))
                .hasSize(1);
        assertThat(Cones.load().all()).hasSize(36);
        assertThat(LoadMaterial.of("ware").heatCapacityJPerKgK()).isBetween(800.0, 1300.0);
    }

    @Test
    void conesAreFoundAsPeopleWriteThem() {
        Cones cones = Cones.load();
        assertThat(cones.find("cone 10").orElseThrow().name()).isEqualTo("10");
        assertThat(cones.find("Cone 010").orElseThrow().name()).isEqualTo("010");
        assertThat(cones.find("Δ06").orElseThrow().name()).isEqualTo("06");
        assertThat(cones.find("cone 99")).isEmpty();
    }

    @Test
    void brickConductivityConflictIsKept() {
        double cast = Bricks.load()
                .find("ifb-23-cast")
                .orElseThrow()
                .conductivity()
                .get(2)
                .wattsPerMetreKelvin();
        double line =
                Bricks.load().find("ifb-23").orElseThrow().conductivity().get(2).wattsPerMetreKelvin();
        assertThat(cast).isLessThan(line);
    }
}
