package portwright.app.doc;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which of the starter's values the template is drawn with. */
class OnTemplateTest {
    @ParameterizedTest
    @CsvSource({
        "kiln.plan.acrossFlats, true",
        "kiln.wall.thickness, true",
        "kiln.wall.brick, false",
        "kiln.floor.joints.row, true",
        "kiln.elements[0].height, true",
        "kiln.elements[0].coil, false",
        "kiln.fittings[2].at[0], true",
        "ports[1].diameter, true",
        "shelves[0].posts, true",
        "kiln.power, false",
        "kiln.lossFactor, false",
        "burners[0].heat, false",
        "room.volume, false",
        "portsmouth, false"
    })
    void linesOfTheTemplateAreToldFromFigures(String path, boolean matters) {
        assertThat(OnTemplate.matters(path)).isEqualTo(matters);
    }
}
