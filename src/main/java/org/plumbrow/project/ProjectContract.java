package org.plumbrow.project;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;

/** What the contract fixes: a part of its own version. */
@Entity
class ProjectContract {

    @Id
    private UUID projectId;

    @Version
    private long version;

    private UUID branchId;
    private @Nullable BigDecimal systemKwDc;
    private @Nullable BigDecimal systemKwAc;
    private @Nullable Integer inverters;
    private @Nullable BigDecimal inverterKwAc;
    private @Nullable Integer posts;
    private @Nullable Integer strings;
    private @Nullable Integer trenchFt;
    private @Nullable Integer boreFt;
    private @Nullable Integer guaranteedKwhPerYear;
    private @Nullable BigDecimal priceUsd;

    @ElementCollection(fetch = FetchType.EAGER)
    @CollectionTable(name = "project_array", joinColumns = @JoinColumn(name = "project_id"))
    @OrderColumn(name = "position")
    private List<ArrayRow> arrays = new ArrayList<>();

    @SuppressWarnings("NullAway")
    protected ProjectContract() {} // for JPA

    ProjectContract(UUID projectId, UUID branchId, ProjectFacts.Contract facts) {
        this.projectId = projectId;
        this.branchId = branchId;
        take(facts);
    }

    /** One array of the contract, as stored. */
    @Embeddable
    static class ArrayRow {
        private UUID branchId;

        @Enumerated(EnumType.STRING)
        private Mounting mounting;

        private @Nullable Integer modules;

        @Column(name = "module_w")
        private @Nullable BigDecimal moduleW;

        private @Nullable BigDecimal tiltDeg;
        private @Nullable BigDecimal azimuthDeg;

        @SuppressWarnings("NullAway")
        protected ArrayRow() {} // for JPA

        ArrayRow(UUID branchId, ProjectFacts.ArrayFacts facts) {
            this.branchId = branchId;
            this.mounting = facts.mounting();
            this.modules = facts.modules();
            this.moduleW = facts.moduleW();
            this.tiltDeg = facts.tiltDeg();
            this.azimuthDeg = facts.azimuthDeg();
        }

        ProjectFacts.ArrayFacts facts() {
            return new ProjectFacts.ArrayFacts(mounting, modules, moduleW, tiltDeg, azimuthDeg);
        }
    }

    /** @return what it was before */
    ProjectFacts.Contract correct(ProjectFacts.Contract to) {
        ProjectFacts.Contract from = facts();
        take(to);
        return from;
    }

    private void take(ProjectFacts.Contract facts) {
        systemKwDc = facts.systemKwDc();
        systemKwAc = facts.systemKwAc();
        inverters = facts.inverters();
        inverterKwAc = facts.inverterKwAc();
        posts = facts.posts();
        strings = facts.strings();
        trenchFt = facts.trenchFt();
        boreFt = facts.boreFt();
        guaranteedKwhPerYear = facts.guaranteedKwhPerYear();
        priceUsd = facts.priceUsd();
        List<ArrayRow> rows = facts.arrays().stream()
                .map(array -> new ArrayRow(branchId, array))
                .toList();
        if (!facts.arrays().equals(arrayFacts())) {
            arrays.clear();
            arrays.addAll(rows);
        }
    }

    ProjectFacts.Contract facts() {
        return new ProjectFacts.Contract(
                systemKwDc,
                systemKwAc,
                arrayFacts(),
                inverters,
                inverterKwAc,
                posts,
                strings,
                trenchFt,
                boreFt,
                guaranteedKwhPerYear,
                priceUsd);
    }

    private List<ProjectFacts.ArrayFacts> arrayFacts() {
        return arrays.stream().map(ArrayRow::facts).toList();
    }

    long version() {
        return version;
    }
}
