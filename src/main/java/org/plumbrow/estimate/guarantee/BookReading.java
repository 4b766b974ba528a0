package org.plumbrow.estimate.guarantee;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.finance.GuaranteeBook;
import org.plumbrow.calc.finance.GuaranteeCost;
import org.plumbrow.calc.finance.GuaranteeRisk;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.Estimates;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Standing;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads the branch's book from yields as they were last computed: a number of queries that does not grow with it. */
@Service
@Transactional(readOnly = true)
class BookReading {

    /** The year to come is taken as the one that runs half a year from today. */
    private static final int MONTHS_AHEAD = 6;

    private final Access access;
    private final Projects projects;
    private final Estimates estimates;
    private final GuaranteeRows rows;
    private final Words words;

    BookReading(Access access, Projects projects, Estimates estimates, GuaranteeRows rows, Words words) {
        this.access = access;
        this.projects = projects;
        this.estimates = estimates;
        this.rows = rows;
        this.words = words;
    }

    BookView book(BookView.Question question) {
        BranchCard branch = access.require(May.SEE_BOOK);
        Map<UUID, PromiseTerms> terms = rows.ofBranch(branch.id());
        Map<UUID, EstimateFacts> yields = estimates.ofBranch(branch.id()).stream()
                .collect(Collectors.toMap(EstimateFacts::projectId, Function.identity()));
        LocalDate ahead = words.today().plusMonths(MONTHS_AHEAD);
        List<BookView.Line> lines = new ArrayList<>();
        List<BookView.LeftOut> leftOut = new ArrayList<>();
        for (ProjectFacts project : promising(branch.id(), terms.keySet())) {
            PromiseTerms own = terms.get(project.id());
            EstimateFacts yield = yields.get(project.id());
            Optional<String> why = missing(project, own, yield);
            if (why.isPresent()) {
                leftOut.add(new BookView.LeftOut(project.id(), project.number(), project.name(), why.get()));
            } else if (own.yearAt(ahead) <= own.years()) {
                lines.add(line(project, own, yield, ahead));
            }
        }
        return BookView.of(question, lines, leftOut);
    }

    /** Of signed projects whoever has terms, and every one in the plan whose contract promises kWh. */
    private List<ProjectFacts> promising(UUID branchId, Set<UUID> withTerms) {
        List<ProjectFacts> all = new ArrayList<>(projects.openUnchecked(branchId));
        all.removeIf(project -> project.contract().guaranteedKwhPerYear() == null);
        Set<UUID> others = new HashSet<>(withTerms);
        all.forEach(project -> others.remove(project.id()));
        projects.factsUnchecked(others).stream()
                .filter(project -> project.standing() == Standing.OPEN && project.stage() != null)
                .forEach(all::add);
        return all;
    }

    private static Optional<String> missing(
            ProjectFacts project, @Nullable PromiseTerms terms, @Nullable EstimateFacts yield) {
        if (project.contract().guaranteedKwhPerYear() == null) {
            return Optional.of("Its contract promises no kWh yet.");
        }
        if (terms == null) {
            return Optional.of("The terms of its guarantee are not written.");
        }
        return yield == null ? Optional.of("Its yield is not computed yet: open it once.") : Optional.empty();
    }

    private static BookView.Line line(ProjectFacts project, PromiseTerms terms, EstimateFacts yield, LocalDate ahead) {
        int year = terms.yearAt(ahead);
        int promised =
                Optional.ofNullable(project.contract().guaranteedKwhPerYear()).orElseThrow();
        GuaranteeRisk risk = new GuaranteeCost(
                        yield.kwh(), terms.systemFadesPercent() / 100, yield.spread(), promised, terms.calc())
                .year(year)
                .risk();
        return new BookView.Line(
                project.id(),
                project.number(),
                project.name(),
                yield.weather().name(),
                year,
                terms.years(),
                terms.beginsOn() != null,
                new GuaranteeBook.Contract(
                        project.name(),
                        risk.expectedKwh(),
                        risk.guaranteedKwh(),
                        terms.carriesWeather() ? yield.yearShare() : 0,
                        yield.modelShare(),
                        risk.ratePerKwh()));
    }
}
