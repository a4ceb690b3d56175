package portwright.model;

import java.util.List;
import portwright.units.Quantity;

/**
 * The room round the kiln. {@code openings}: null unknown, empty none. {@code family}: family of exposure limits, null strictest. {@code infiltration}: air
 * that a closed room leaks, as measured. {@code noCeiling}: whether nothing hangs over the kiln, then {@code ceiling} is null. {@code joinedVolume}: rooms that openings to "room" lead to. {@code building}, {@code ledBy}: null unknown.
 */
public record Room(
        RoomPlace place,
        Quantity volume,
        Quantity temperature,
        Quantity outdoor,
        Quantity wind,
        Quantity altitude,
        List<Opening> openings,
        Quantity ventilator,
        Hood hood,
        Quantity ledOutdoors,
        Quantity burntAtFlue,
        String floor,
        Quantity ceiling,
        Boolean coAlarm,
        Boolean gasAlarm,
        String family,
        Quantity infiltration,
        Quantity joinedVolume,
        RoomBuilding building,
        boolean noCeiling,
        LedBy ledBy) {}
