package org.plumbrow.estimate.site;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.plumbrow.calc.energy.EnergyYield;
import org.plumbrow.calc.energy.GroupYield;
import org.plumbrow.calc.energy.LossLadder;
import org.plumbrow.calc.energy.SectionYield;
import org.plumbrow.calc.energy.Stage;
import org.plumbrow.calc.energy.YearSpread;
import org.plumbrow.estimate.EstimateFacts;

/** Turns a computed year into the figures that are kept. */
final class EstimateRun {

    private EstimateRun() {}

    static EstimateFacts facts(UUID projectId, WeatherCard card, EstimateInputs inputs, EnergyYield year, Instant at) {
        YearSpread spread = inputs.terms().spread(card.fromMeans());
        return new EstimateFacts(
                projectId,
                weather(card, inputs),
                inputs.source(),
                arrays(year),
                year.kwDc(),
                year.groups().stream()
                        .mapToDouble(group -> group.group().inverter().acKw())
                        .sum(),
                year.kwhOfYear(),
                Arrays.stream(year.kwhByMonth()).boxed().toList(),
                spread.yearShare(),
                spread.modelShare(),
                steps(year),
                inputs.terms().losses().stream()
                        .map(loss -> new EstimateFacts.Loss(loss.name(), loss.percent()))
                        .toList(),
                inputs.terms().snowPercent(),
                !inputs.horizon().isEmpty(),
                inputs.rowsApplied(),
                remarks(card, inputs),
                at,
                null,
                List.of());
    }

    private static List<EstimateFacts.Step> steps(EnergyYield year) {
        return LossLadder.of(year).stream()
                .map(step -> new EstimateFacts.Step(step.name(), step.lostPercent(), step.kwh()))
                .toList();
    }

    static EstimateFacts.Weather weather(WeatherCard card, EstimateInputs inputs) {
        return new EstimateFacts.Weather(
                card.id(),
                card.name(),
                card.kind(),
                card.invented(),
                card.fromMeans(),
                inputs.kmAway(),
                inputs.weatherChosen());
    }

    private static List<String> remarks(WeatherCard card, EstimateInputs inputs) {
        List<String> remarks = new ArrayList<>();
        if (card.invented()) {
            remarks.add("The weather “%s” is invented: the figures are for practice only.".formatted(card.name()));
        }
        card.summary().warnings().forEach(said -> remarks.add(said.sentence()));
        remarks.addAll(inputs.remarks());
        return remarks;
    }

    private static List<EstimateFacts.Array> arrays(EnergyYield year) {
        List<EstimateFacts.Array> arrays = new ArrayList<>();
        for (GroupYield group : year.groups()) {
            double toAc = group.dcKwh() > 0 ? group.acKwh() / group.dcKwh() : 0;
            for (SectionYield section : group.sections()) {
                arrays.add(new EstimateFacts.Array(
                        section.section().name(),
                        section.section().kwDc(),
                        section.section().plane().tiltDeg(),
                        section.section().plane().azimuthDeg(),
                        section.kwh(Stage.DC) * toAc));
            }
        }
        return arrays;
    }
}
