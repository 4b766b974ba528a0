package org.plumbrow.calc.outage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.calc.electrical.Service.Band;
import org.plumbrow.calc.electrical.ServiceVoltage;
import org.plumbrow.calc.electrical.ServiceVoltage.Judged;

/**
 * Hold point H4: is the voltage right after the utility has closed? Refused when a pair lies outside Range B, when it
 * lies outside Range A though the reading before lay inside, or when the phases turn the other way. A pair outside
 * Range A that was so before is a remark.
 *
 * @param missing pairs not read yet
 * @param refusals why the service must be opened again
 * @param remarks what to tell the utility
 */
public record SupplyRestored(List<String> missing, List<String> refusals, List<String> remarks) {

    public SupplyRestored {
        missing = List.copyOf(missing);
        refusals = List.copyOf(refusals);
        remarks = List.copyOf(remarks);
    }

    public boolean isRight() {
        return missing.isEmpty() && refusals.isEmpty();
    }

    /** Volts by pair, and which way three phases turn ("ABC" or "CBA"). */
    public record Reading(Map<String, Double> volts, Optional<String> rotation) {}

    public static SupplyRestored judge(Service service, Reading before, Reading after) {
        ServiceVoltage.Result was = ServiceVoltage.judge(service, before.volts());
        ServiceVoltage.Result now = ServiceVoltage.judge(service, after.volts());
        List<String> missing = new ArrayList<>();
        List<String> refusals = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        now.missing().forEach(pair -> missing.add(pair.words()));
        now.warning().ifPresent(refusals::add);
        for (Judged judged : now.readings()) {
            if (judged.band() == Band.OUTSIDE) {
                refusals.add(judged.sentence());
            } else if (judged.band() == Band.B) {
                boolean wasInside = was.readings().stream()
                        .anyMatch(earlier -> earlier.pair().equals(judged.pair()) && earlier.band() == Band.A);
                (wasInside ? refusals : remarks)
                        .add(judged.sentence() + (wasInside ? " Before the work it lay inside." : " It did before."));
            }
        }
        judgeRotation(service, before, after, missing, refusals);
        return new SupplyRestored(missing, refusals, remarks);
    }

    private static void judgeRotation(
            Service service, Reading before, Reading after, List<String> missing, List<String> refusals) {
        if (!service.isThreePhase()) {
            return;
        }
        if (before.rotation().isEmpty() || after.rotation().isEmpty()) {
            missing.add("Phase rotation, before and after");
        } else if (!before.rotation().equals(after.rotation())) {
            refusals.add("The phases turn %s; before the work they turned %s."
                    .formatted(after.rotation().get(), before.rotation().get()));
        }
    }
}
