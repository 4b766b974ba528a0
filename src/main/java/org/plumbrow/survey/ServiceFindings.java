package org.plumbrow.survey;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import org.plumbrow.calc.electrical.Service.Band;
import org.plumbrow.calc.electrical.ServiceVoltage;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.survey.SurveyLook.Seen;

/** What the gate to surveyed finds in the readings at the service. Pure. */
final class ServiceFindings {

    private static final String AGAIN = "Read it again; if it stays, call the utility before design.";

    private ServiceFindings() {}

    static Finding voltages(Seen seen) {
        var type = seen.facts().service().type();
        if (type == null || !Needs.voltagesRead(seen.facts())) {
            return Findings.notRead("The service type with every voltage", SurveyPart.SERVICE);
        }
        ServiceVoltage.Result result =
                ServiceVoltage.judge(type, seen.facts().service().volts());
        if (result.warning().isPresent()) {
            return new Finding.Broken(result.warning().get(), AGAIN);
        }
        Optional<ServiceVoltage.Judged> outside = result.readings().stream()
                .filter(one -> one.band() == Band.OUTSIDE)
                .findFirst();
        return outside.<Finding>map(one -> new Finding.Broken(one.sentence(), AGAIN))
                .orElseGet(() -> Findings.read("%s: all %d voltages lie within the limits of ANSI C84.1."
                        .formatted(type.words(), result.readings().size())));
    }

    static Finding ratings(Seen seen) {
        SurveyFacts.Service service = seen.facts().service();
        Double main = service.mainA();
        Double bus = service.busA();
        Double gear = service.interruptingKa();
        if (main == null || bus == null || gear == null) {
            return Findings.notRead("The ratings of main, busbar and gear", SurveyPart.SERVICE, "are");
        }
        Double fault = service.faultKa();
        if (fault != null && fault > gear) {
            return new Finding.Broken(
                    "The gear interrupts %s kA, and %s kA can flow there."
                            .formatted(Findings.figure(gear), Findings.figure(fault)),
                    "Read the label and the utility’s letter again; the designer must know.");
        }
        String sentence = "%s A main, %s A busbar, %s kA."
                .formatted(Findings.figure(main), Findings.figure(bus), Findings.figure(gear));
        return Findings.read(sentence, seen, PhotoItem.PANEL_LABEL);
    }

    static Finding transformer(Seen seen) {
        Double kva = seen.facts().service().transformer().kva();
        BigDecimal kwAc = seen.project().contract().systemKwAc();
        if (kva == null) {
            return Findings.notRead("The transformer’s rating", SurveyPart.SERVICE);
        }
        if (kwAc == null) {
            return new Finding.CannotTell("The contract has no kW AC.", "It is written on the contract’s page.");
        }
        String both = "Transformer %s kVA, system %s kW AC".formatted(Findings.figure(kva), kwAc.toPlainString());
        return kva >= kwAc.doubleValue()
                ? Findings.read(both + ".")
                : new Finding.Broken(
                        both + ": the transformer is smaller.", "Ask the utility what it allows, or for a larger one.");
    }

    static Finding faultCurrent(Seen seen) {
        Double fault = seen.facts().service().faultKa();
        return fault == null
                ? Findings.notRead("The fault current", SurveyPart.SERVICE)
                : Findings.read("%s kA can flow at the service.".formatted(Findings.figure(fault)));
    }

    static Finding rotation(Seen seen) {
        String rotation = seen.facts().service().rotation();
        return rotation == null
                ? Findings.notRead("The phase rotation", SurveyPart.SERVICE)
                : Findings.read("Phase rotation " + rotation + ".");
    }

    static Finding grounding(Seen seen) {
        return seen.has(PhotoItem.GROUNDING)
                ? new Finding.Recorded("The grounding is in the survey’s photos.", Set.of(AnswerKind.PHOTO))
                : new Finding.CannotTell(
                        "No photo of the grounding is there yet.", "It is item 24 of the survey’s photos.");
    }

    static Finding generator(Seen seen) {
        SurveyFacts.Generator generator = seen.facts().service().generator();
        if (Boolean.FALSE.equals(generator.present())) {
            return new Finding.Broken(
                    "The site is said to have a generator; the survey found none.",
                    "Correct the site’s page, or look again.");
        }
        Double kva = generator.kva();
        if (kva == null || generator.switchKind() == null || generator.place() == null) {
            return Findings.notRead("The generator’s rating, switch and place", SurveyPart.SERVICE, "are");
        }
        return Findings.read(
                "Generator %s kVA, connects at: %s.".formatted(Findings.figure(kva), generator.place()),
                seen,
                PhotoItem.GENERATOR);
    }

    static Finding otherSources(Seen seen) {
        String sources = seen.facts().service().otherSources();
        return sources == null
                ? new Finding.CannotTell(
                        "Nobody has said yet whether there are other sources.",
                        "It is written on the survey’s page “Service”.")
                : new Finding.Recorded("Other sources: " + sources + ".", Set.of(AnswerKind.CONFIRMATION));
    }

    static Finding distances(Seen seen) {
        SurveyFacts.Distances distances = seen.facts().distances();
        Double toMeter = distances.disconnectToMeterFt();
        if (!Needs.distancesRead(distances) || toMeter == null) {
            return Findings.notRead("The distances to inverter, meter and disconnect", SurveyPart.SERVICE, "are");
        }
        int mostFt = seen.sheet().disconnectMostFt();
        String why = seen.explained(SurveyPart.SERVICE, ServiceSheet.DISCONNECT_TO_METER.name());
        if (toMeter > mostFt && why.isEmpty()) {
            return new Finding.Broken(
                    "The disconnect would be %s ft from the meter; the utility allows %d ft."
                            .formatted(Findings.figure(toMeter), mostFt),
                    "Move it, or say on the survey’s page by whom it is agreed in writing.");
        }
        String agreed = why.isEmpty() ? "" : " (" + why + ")";
        return Findings.read("Disconnect %s ft from the meter%s; all distances are read."
                .formatted(Findings.figure(toMeter), agreed));
    }
}
