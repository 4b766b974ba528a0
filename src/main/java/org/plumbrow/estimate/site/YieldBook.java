package org.plumbrow.estimate.site;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.EnergyYield;
import org.plumbrow.calc.energy.SiteYear;
import org.plumbrow.calc.finance.SelfUse;
import org.plumbrow.database.ReadOnce;
import org.plumbrow.estimate.EnergyInputs;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.Estimates;
import org.plumbrow.estimate.site.EstimateSource.Gathered;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import tools.jackson.databind.json.JsonMapper;

/**
 * The estimates. A result is kept with the hash of its inputs and given back while they are the same; where they are not,
 * it is computed anew and kept, unless the transaction only reads: then the next writing one keeps it.
 */
@Service
@Transactional(readOnly = true)
class YieldBook implements Estimates {

    private static final int REMEMBERED = 64;

    private final Projects projects;
    private final ProjectAccess projectAccess;
    private final Access access;
    private final EstimateSource source;
    private final SiteYears years;
    private final YieldRows rows;
    private final UseYears use;
    private final JsonMapper json;
    private final Clock clock;
    /** What could not be written at once, by the hash of its inputs. */
    private final Map<String, EstimateFacts> computed = new LinkedHashMap<>(REMEMBERED, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, EstimateFacts> eldest) {
            return size() > REMEMBERED;
        }
    };

    YieldBook(
            Projects projects,
            ProjectAccess projectAccess,
            Access access,
            EstimateSource source,
            SiteYears years,
            YieldRows rows,
            UseYears use,
            JsonMapper json,
            Clock clock) {
        this.projects = projects;
        this.projectAccess = projectAccess;
        this.access = access;
        this.source = source;
        this.years = years;
        this.rows = rows;
        this.use = use;
        this.json = json;
        this.clock = clock;
    }

    @Override
    public Optional<EstimateFacts> of(UUID projectId) {
        projectAccess.require(projectId, May.SEE_ESTIMATE);
        return ofUnchecked(projectId);
    }

    @Override
    public Optional<EstimateFacts> ofUnchecked(UUID projectId) {
        return facts(gathered(projectId)).map(facts -> withUse(facts, use.of(projectId)));
    }

    @Override
    public List<EstimateFacts> ofBranch(UUID branchId) {
        access.require(branchId, May.SEE_ESTIMATE);
        Map<UUID, UseYears.SiteUse> uses = use.ofBranch(branchId).stream()
                .collect(Collectors.toMap(UseYears.OfProject::projectId, UseYears.OfProject::use));
        return rows.resultsOf(branchId).stream()
                .map(facts -> withUse(facts, Optional.ofNullable(uses.get(facts.projectId()))))
                .toList();
    }

    private static EstimateFacts withUse(EstimateFacts facts, Optional<UseYears.SiteUse> use) {
        return use.map(known -> facts.withUse(known.kwhOfYear(), known.kwhOrZero()))
                .orElse(facts);
    }

    @Override
    public List<String> missing(UUID projectId) {
        return gathered(projectId).missing();
    }

    @Override
    public Optional<EnergyInputs> inputs(UUID projectId) {
        return inputs(gathered(projectId));
    }

    Optional<EnergyInputs> inputs(Gathered gathered) {
        EstimateInputs inputs = gathered.inputs();
        WeatherCard card = gathered.card();
        if (inputs == null || card == null) {
            return Optional.empty();
        }
        SiteYear site = years.of(card, inputs.terms().sky(), inputs.terms().albedo());
        return Optional.of(new EnergyInputs(
                EstimateRun.weather(card, inputs),
                site,
                inputs.calcGroups(),
                inputs.terms().calcLosses(),
                inputs.terms().spread(card.fromMeans()),
                !inputs.horizon().isEmpty()));
    }

    @Override
    public Optional<double[]> useByHour(UUID projectId) {
        return use.hours(projectId);
    }

    @Override
    public Optional<SelfUse> selfUse(UUID projectId) {
        Gathered gathered = gathered(projectId);
        Optional<UseYears.SiteUse> known = use.of(projectId).filter(UseYears.SiteUse::isWhole);
        return known.isEmpty()
                ? Optional.empty()
                : facts(gathered).map(estimate -> selfUse(gathered, known.get(), estimate));
    }

    /** Hour by hour where both are known so, else month by month. */
    SelfUse selfUse(Gathered gathered, UseYears.SiteUse known, EstimateFacts estimate) {
        Optional<double[]> hours = known.hourly() ? use.hours(gathered.project().id()) : Optional.empty();
        Optional<EnergyInputs> inputs = hours.isPresent() ? inputs(gathered) : Optional.empty();
        if (hours.isPresent() && inputs.isPresent()) {
            return SelfUse.byHour(hours.get(), inputs.get().energyYield().kwhByHour());
        }
        return SelfUse.byMonth(doubles(known.kwhOrZero()), doubles(estimate.kwhByMonth()));
    }

    private static double[] doubles(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private record WhatIsGathered(UUID projectId) {}

    Gathered gathered(UUID projectId) {
        return ReadOnce.of(new WhatIsGathered(projectId), () -> source.of(projects.factsUnchecked(projectId)));
    }

    Optional<EstimateFacts> facts(Gathered gathered) {
        EstimateInputs inputs = gathered.inputs();
        if (inputs == null) {
            return Optional.empty();
        }
        byte[] hash = hash(inputs);
        ProjectFacts project = gathered.project();
        Optional<EstimateFacts> kept = rows.result(project.id())
                .filter(result -> result.isMadeFrom(hash))
                .map(YieldRows.Result::facts);
        return kept.isPresent() ? kept : Optional.of(computedAnew(gathered, inputs, hash));
    }

    private EstimateFacts computedAnew(Gathered gathered, EstimateInputs inputs, byte[] hash) {
        String key = gathered.project().id() + java.util.HexFormat.of().formatHex(hash);
        EstimateFacts facts = remembered(key, null);
        if (facts == null) {
            EnergyYield year = inputs(gathered).orElseThrow().energyYield();
            facts = EstimateRun.facts(
                    gathered.project().id(),
                    java.util.Objects.requireNonNull(gathered.card()),
                    inputs,
                    year,
                    clock.instant());
            remembered(key, facts);
        }
        if (!TransactionSynchronizationManager.isCurrentTransactionReadOnly()) {
            rows.keepResult(gathered.project().branchId(), hash, facts, facts.computedAt());
        }
        return facts;
    }

    private @Nullable EstimateFacts remembered(String key, @Nullable EstimateFacts facts) {
        synchronized (computed) {
            return facts == null ? computed.get(key) : computed.put(key, facts);
        }
    }

    /** After a change, in its transaction: what is kept is of now, also for the branch's book. */
    @Transactional
    public void refresh(UUID projectId) {
        Gathered gathered = source.of(projects.factsUnchecked(projectId));
        if (facts(gathered).isEmpty()) {
            rows.drop(projectId);
        }
    }

    /** @throws Range.OutOfRange if a length or rating is none that the chain takes */
    private byte[] hash(EstimateInputs inputs) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(json.writeValueAsBytes(inputs));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
