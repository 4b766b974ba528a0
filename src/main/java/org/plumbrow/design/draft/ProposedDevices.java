package org.plumbrow.design.draft;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.electrical.Overcurrent;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.Run;
import org.plumbrow.design.part.Cells;
import org.plumbrow.survey.SurveyFacts;

/** Devices that follow from inverters, runs and survey. Pure. */
final class ProposedDevices {

    private final DesignFacts design;
    private final SurveyFacts survey;

    ProposedDevices(DesignFacts design, SurveyFacts survey) {
        this.design = design;
        this.survey = survey;
    }

    /**
     * A breaker at each inverter, the array's panel, the disconnect that the utility asks for (as far from the meter as the
     * survey says), the meter.
     */
    List<Cells> rows() {
        List<Cells> rows = new ArrayList<>();
        double volts = design.inverters().isEmpty()
                ? 240
                : design.inverters().get(0).type().acV();
        double all = 0;
        for (PlacedInverter inverter : design.inverters()) {
            double amperes = inverter.type().acA();
            all += amperes;
            rows.add(device(
                    rows, "BREAKER", "Breaker of " + inverter.mark(), runFrom(inverter.mark()), sized(amperes), volts));
        }
        if (design.inverters().size() > 1) {
            rows.add(device(rows, "PANEL", "AC panel of the array", "", panelA(all), volts)
                    .with("mark", "AC panel"));
        }
        rows.add(device(rows, "FUSED_DISCONNECT", "AC disconnect of the array", runFrom("AC panel"), sized(all), volts)
                .with("utilityDisconnect", "yes")
                .with("whoMayOpen", "anybody")
                .with("toMeterFt", survey.distances().disconnectToMeterFt()));
        rows.add(device(rows, "METER", "Production meter", "", sized(all), volts));
        return rows;
    }

    private String runFrom(String mark) {
        return design.runs().stream()
                .filter(run -> run.from().equals(mark))
                .map(Run::mark)
                .findFirst()
                .orElse("");
    }

    private static double sized(double amperes) {
        return Overcurrent.sizeFor(Overcurrent.CONTINUOUS * amperes).orElse(0);
    }

    private static double panelA(double amperes) {
        return Math.max(100, sized(amperes));
    }

    private static Cells device(List<Cells> rows, String kind, String name, String run, double amperes, double volts) {
        return Cells.of(
                "mark", "D" + (rows.size() + 1),
                "kind", kind,
                "name", name,
                "inRun", run,
                "ratedA", amperes,
                "ratedV", volts,
                "whoMayOpen", "qualified people",
                "utilityDisconnect", "no",
                "utilityLetter", "no");
    }
}
