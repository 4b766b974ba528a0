package org.plumbrow.branch.rate;

import java.util.Map;
import java.util.stream.Collectors;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.WorkRate;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Component;

/** Figures of the tables as people write them; in templates {@code ${@rateFigures.figure(…)}}. */
@Component
class RateFigures {

    private final Words words;

    RateFigures(Words words) {
        this.words = words;
    }

    /** As many decimals as the figure has: 45, 0.375, 1,200. */
    public String figure(double figure) {
        return words.number(figure, Math.max(0, Written.figure(figure).scale()));
    }

    /** "2 post drivers" is written "post driver × 2"; nothing is a dash. */
    public String equipment(WorkRate rate) {
        String all = rate.equipment().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(RateFigures::piece)
                .collect(Collectors.joining(", "));
        return all.isEmpty() ? "–" : all;
    }

    private static String piece(Map.Entry<EquipmentKind, Integer> kind) {
        return kind.getKey().words() + (kind.getValue() == 1 ? "" : " × " + kind.getValue());
    }
}
