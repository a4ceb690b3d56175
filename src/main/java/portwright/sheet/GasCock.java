package portwright.sheet;

import java.util.List;

/** The card's words for gas that comes by pipe: what shuts it is the gas cock, not the cylinder. */
final class GasCock {
    private GasCock() {}

    static String words(String text) {
        return text.replace(CardLists.WHY, "wind, no gas in the pipe, hose, jet")
                .replace(" and at each cylinder change", "")
                .replace("close the bottle", "close the gas cock")
                .replaceAll("Cylinder( valve)?", "Gas cock")
                .replaceAll("cylinder( valve)?", "gas cock");
    }

    static List<String> words(List<String> list) {
        return list.stream().map(GasCock::words).toList();
    }

    /** Whether words are about a cylinder, which is not there. */
    static boolean aboutCylinder(String text) {
        return !words(text).equals(text);
    }

    /** The rows of the steps with what is shut between them. */
    static List<CardData.Step> rows(List<CardData.Step> steps) {
        return steps.stream()
                .map(s -> aboutCylinder(s.across()) ? CardData.Step.across(words(s.across())) : s)
                .toList();
    }
}
