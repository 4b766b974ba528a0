package org.plumbrow.project.gate;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.DayWords;

/** What the journal says of an answer: figures, never names or words that somebody typed about a person. */
final class GateLines {

    private GateLines() {}

    /** "“Bonding continuity”: 0.4 Ω, photo." */
    static String answered(AskedItem item, List<Given> parts) {
        return "“" + item.words() + "”: "
                + parts.stream().map(given -> words(item, given)).distinct().collect(Collectors.joining(", ")) + ".";
    }

    /** Whom is not said: it may be a person of the customer's. */
    static String waits(AskedItem item, @Nullable String on, @Nullable LocalDate promised) {
        String whom = on == null ? "waits on nobody" : "waits on somebody outside";
        return "“" + item.words() + "” " + whom
                + (promised == null ? "." : ", promised for " + DayWords.withYear(promised) + ".");
    }

    private static String words(AskedItem item, Given given) {
        if (given instanceof Given.Read read && read.value() != null) {
            String label = read.label().isBlank() ? "" : read.label().strip() + " ";
            String outside = !item.isOutside(read.value())
                    ? ""
                    : " (outside " + item.limits() + (read.explanation().isBlank() ? ")" : ", explained)");
            return label + AskedItem.plain(read.value()) + " " + item.unit() + outside;
        }
        if (given instanceof Given.OnDate on) {
            return DayWords.withYear(on.date());
        }
        return given instanceof Given.Confirmed ? "confirmed" : given.kind().words();
    }
}
