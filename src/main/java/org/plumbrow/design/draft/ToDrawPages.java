package org.plumbrow.design.draft;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.Place;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** What a designer has to draw. */
@Controller
class ToDrawPages {

    private static final int ORDER = 25;

    private final Access access;
    private final JdbcClient jdbc;

    ToDrawPages(Access access, JdbcClient jdbc) {
        this.access = access;
        this.jdbc = jdbc;
    }

    @Bean
    static Place designsPlace() {
        return Place.inTheRow(ORDER, "design.todraw.place", "/designs", May.WRITE_DESIGN);
    }

    /** @param stage as it is kept; SURVEYED means that the survey is enough */
    record Line(
            UUID projectId,
            String number,
            String name,
            String stage,
            boolean begun,
            @Nullable LocalDate wantedOn) {
        public boolean isSurveyed() {
            return stage.equals("SURVEYED");
        }
    }

    @GetMapping("/designs")
    @Transactional(readOnly = true)
    public String toDraw(Model model) {
        UUID branch = access.require(May.WRITE_DESIGN).id();
        List<Line> lines = jdbc.sql("""
                select p.id as project_id, p.number, p.name, p.stage, d.project_id is not null as begun, d.wanted_on
                  from project p left join design d on d.project_id = p.id
                 where p.branch_id = ? and p.standing = 'OPEN' and p.stage in ('SIGNED', 'SURVEYED')
                   and not exists (select 1 from design_revision r where r.project_id = p.id)
                 order by p.stage desc, d.wanted_on nulls last, p.number
                 limit 300
                """).param(branch).query(Line.class).list();
        model.addAttribute("lines", lines);
        return "design/to-draw";
    }
}
