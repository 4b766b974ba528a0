package org.plumbrow.estimate.savings;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.finance.Incentive;
import org.plumbrow.calc.finance.Loan;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The terms as they are kept. */
@Component
class SavingsRows {

    private static final List<String> COLUMNS = List.of(
            "years",
            "rate_per_kwh",
            "escalation_percent",
            "export_per_kwh",
            "export_escalation_percent",
            "fixed_before_usd",
            "fixed_after_usd",
            "degradation_percent",
            "upkeep_usd",
            "upkeep_escalation_percent",
            "discount_percent",
            "confidence_percent",
            "apart_percent",
            "loan_usd",
            "loan_percent",
            "loan_months");

    private static final String KEEP =
            """
            insert into savings_terms as s (project_id, branch_id, %1$s)
            select :project, :branch, %2$s
             where :version = -1 or exists (select 1 from savings_terms where project_id = :project)
            on conflict (project_id) do update set (%1$s, version) = (%3$s, s.version + 1) where s.version = :version
            """.formatted(String.join(", ", COLUMNS), each("cast(:%s as numeric)"), each("excluded.%s"));

    private final JdbcClient jdbc;

    SavingsRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    private static String each(String pattern) {
        return String.join(", ", COLUMNS.stream().map(pattern::formatted).toList());
    }

    /** @param version -1 while nobody has written any, and the usual ones count */
    record Kept(long version, SavingsTerms terms) {
        public boolean isUsual() {
            return version < 0;
        }
    }

    Optional<Kept> terms(UUID projectId) {
        return jdbc.sql("select * from savings_terms where project_id = ?")
                .param(projectId)
                .query((row, n) -> new Kept(row.getLong("version"), terms(row, incentives(projectId))))
                .optional();
    }

    private List<Incentive> incentives(UUID projectId) {
        return jdbc.sql("""
                select name, kind, amount, first_year, years from savings_incentive where project_id = ? order by place
                """)
                .param(projectId)
                .query((row, n) -> new Incentive(
                        row.getString("name"),
                        Incentive.Kind.valueOf(row.getString("kind")),
                        row.getDouble("amount"),
                        row.getInt("first_year"),
                        row.getInt("years")))
                .list();
    }

    private static SavingsTerms terms(ResultSet row, List<Incentive> incentives) throws SQLException {
        BigDecimal loan = row.getBigDecimal("loan_usd");
        return new SavingsTerms(
                row.getInt("years"),
                row.getDouble("rate_per_kwh"),
                row.getDouble("escalation_percent"),
                row.getDouble("export_per_kwh"),
                row.getDouble("export_escalation_percent"),
                row.getDouble("fixed_before_usd"),
                row.getDouble("fixed_after_usd"),
                row.getDouble("degradation_percent"),
                row.getDouble("upkeep_usd"),
                row.getDouble("upkeep_escalation_percent"),
                row.getDouble("discount_percent"),
                row.getDouble("confidence_percent"),
                row.getDouble("apart_percent"),
                incentives,
                loan == null
                        ? null
                        : new Loan(
                                loan.doubleValue(),
                                SavingsTerms.share(row.getBigDecimal("loan_percent")),
                                row.getInt("loan_months")));
    }

    /** @return false if somebody was faster */
    boolean keep(UUID projectId, UUID branchId, long version, SavingsTerms terms) {
        boolean kept = jdbc.sql(KEEP)
                        .param("project", projectId)
                        .param("branch", branchId)
                        .param("version", version)
                        .params(values(terms))
                        .update()
                == 1;
        if (kept) {
            jdbc.sql("delete from savings_incentive where project_id = ?")
                    .param(projectId)
                    .update();
            for (int place = 0; place < terms.incentives().size(); place++) {
                insert(projectId, branchId, place, terms.incentives().get(place));
            }
        }
        return kept;
    }

    private static Map<String, Object> values(SavingsTerms terms) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("years", terms.years());
        values.put("rate_per_kwh", terms.ratePerKwh());
        values.put("escalation_percent", terms.escalationPercent());
        values.put("export_per_kwh", terms.exportPerKwh());
        values.put("export_escalation_percent", terms.exportEscalationPercent());
        values.put("fixed_before_usd", terms.fixedBeforeUsd());
        values.put("fixed_after_usd", terms.fixedAfterUsd());
        values.put("degradation_percent", terms.degradationPercent());
        values.put("upkeep_usd", terms.upkeepUsd());
        values.put("upkeep_escalation_percent", terms.upkeepEscalationPercent());
        values.put("discount_percent", terms.discountPercent());
        values.put("confidence_percent", terms.confidencePercent());
        values.put("apart_percent", terms.apartPercent());
        Loan loan = terms.loan();
        values.put("loan_usd", loan == null ? null : loan.principalUsd());
        values.put("loan_percent", loan == null ? null : SavingsTerms.percent(loan.yearlyRate()));
        values.put("loan_months", loan == null ? null : loan.months());
        return values;
    }

    private void insert(UUID projectId, UUID branchId, int place, Incentive line) {
        jdbc.sql("""
                insert into savings_incentive (project_id, place, branch_id, name, kind, amount, first_year, years)
                values (:project, :place, :branch, :name, :kind, :amount, :first, :years)
                """)
                .param("project", projectId)
                .param("place", place)
                .param("branch", branchId)
                .param("name", line.name())
                .param("kind", line.kind().name())
                .param("amount", line.amount())
                .param("first", line.firstYear())
                .param("years", line.years())
                .update();
    }
}
