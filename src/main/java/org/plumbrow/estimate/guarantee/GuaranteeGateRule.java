package org.plumbrow.estimate.guarantee;

import java.util.Locale;
import java.util.Set;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.plumbrow.web.Entered;
import org.springframework.stereotype.Component;

/** Estimate and terms of the guarantee, as the gate to signed asks for them: written once, on the page of the guarantee. */
@Component
class GuaranteeGateRule implements GateRule {

    private final GuaranteeRows rows;

    GuaranteeGateRule(GuaranteeRows rows) {
        this.rows = rows;
    }

    @Override
    public String item() {
        return "signed.7";
    }

    /** Says no rate: who looks at the gate may not see money. */
    @Override
    public Finding check(GateLook look) {
        PromiseTerms terms =
                rows.of(look.projectId()).map(GuaranteeRows.Kept::terms).orElse(null);
        if (terms == null) {
            return new Finding.CannotTell(
                    "The terms of the guarantee are not written.",
                    "They are written on the project’s page “Guarantee”.");
        }
        Integer kwh = look.project().contract().guaranteedKwhPerYear();
        if (kwh == null) {
            return new Finding.CannotTell(
                    "The contract promises no kWh.", "Choose a promise on the project’s page “Guarantee”.");
        }
        return new Finding.Recorded(
                String.format(
                        Locale.US,
                        "%,d kWh in the first year, %s; %d years, settled %s, rate agreed; %s; surplus %s.",
                        kwh,
                        terms.fadesPercent() == 0
                                ? "the same in all years"
                                : "%s %% less each later year".formatted(Entered.written(terms.fadesPercent())),
                        terms.years(),
                        terms.settledWords(),
                        terms.weatherWords(),
                        terms.surplusWords()),
                Set.of(AnswerKind.READING));
    }
}
