package org.plumbrow.project.intake;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.evidence.table.UserTable;
import org.plumbrow.project.NewProject;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.project.SiteLoad;

/** What the rows of a file mean under the choices made, against what is here already. Pure: nothing is stored. */
final class IntakeReading {

    /** Files write north as 0 or as 360; the second becomes the first. */
    private static final Range AZIMUTH_AS_WRITTEN = new Range(0, 360, ProjectLimits.AZIMUTH_DEG.unit());

    private static final BigDecimal KW_PER_W = new BigDecimal("0.001");
    private static final LocalDate FIRST_DAY = LocalDate.of(1970, 1, 1);

    private final IntakeChoices choices;
    private final Here here;
    private final Map<String, Integer> lineOfReference = new HashMap<>();

    /**
     * What the branch has already.
     *
     * @param references in lower case
     * @param utilities name in lower case → id; permit offices likewise
     * @param today in the branch
     */
    record Here(
            Set<String> references, Map<String, UUID> utilities, Map<String, UUID> permitOffices, LocalDate today) {}

    private IntakeReading(IntakeChoices choices, Here here) {
        this.choices = choices;
        this.here = here;
    }

    static List<IntakeRow> read(UserTable table, IntakeChoices choices, Here here) {
        IntakeReading reading = new IntakeReading(choices, here);
        return table.rows().stream().map(reading::row).toList();
    }

    private IntakeRow row(UserTable.Row row) {
        RowReader cells = new RowReader(choices, row);
        String reference = cells.text(IntakeField.REFERENCE, 80);
        if (!reference.isEmpty() && here.references.contains(reference.toLowerCase(Locale.ROOT))) {
            return new IntakeRow.IsHere(row.line(), reference);
        }
        Integer before = reference.isEmpty()
                ? null
                : lineOfReference.putIfAbsent(reference.toLowerCase(Locale.ROOT), row.line());
        if (before != null) {
            cells.isWrong("reference " + reference + " stands in line " + before + " too; keep one of them");
        }
        List<String> notes = new ArrayList<>();
        NewProject project = project(cells, reference, notes);
        LocalDate operatingSince = operatingSince(cells);
        return cells.wrong().isEmpty()
                ? new IntakeRow.Ready(row.line(), project, operatingSince, notes)
                : new IntakeRow.LeftOut(row.line(), row.cells(), cells.wrong());
    }

    private NewProject project(RowReader cells, String reference, List<String> notes) {
        String named = cells.text(IntakeField.NAME, ProjectLimits.LONGEST_NAME);
        String customer = cells.text(IntakeField.CUSTOMER, ProjectLimits.LONGEST_NAME);
        String name = named.isEmpty() ? (customer.isEmpty() ? reference : customer) : named;
        if (name.isEmpty()) {
            cells.isWrong("it has neither a name nor a reference to be called by; fill in one of them");
        }
        LocalDate promised = cells.date(IntakeField.PROMISED_ON);
        return new NewProject(
                name,
                reference.isEmpty() ? null : reference,
                customer,
                List.of(),
                site(cells),
                contract(cells, notes),
                promised == null
                        ? null
                        : new NewProject.NewPromise(
                                Milestone.SYSTEM_ON, promised, 0, "brought in", "Brought in from a file."),
                Map.of());
    }

    private @Nullable LocalDate operatingSince(RowReader cells) {
        LocalDate day = cells.date(IntakeField.OPERATING_SINCE);
        if (day != null && day.isAfter(here.today)) {
            cells.isWrong(
                    IntakeField.OPERATING_SINCE.words() + ": " + day + " has not come yet; leave it empty until then");
        }
        if (day != null && day.isBefore(FIRST_DAY)) {
            cells.isWrong(IntakeField.OPERATING_SINCE.words() + ": " + day + " is before 1970; look at the year");
        }
        return day;
    }

    private ProjectFacts.Site site(RowReader cells) {
        BigDecimal latitude = cells.number(IntakeField.LATITUDE, ProjectLimits.LATITUDE_DEG);
        BigDecimal longitude = cells.number(IntakeField.LONGITUDE, ProjectLimits.LONGITUDE_DEG);
        String meter = cells.text(IntakeField.METER, 40);
        return new ProjectFacts.Site(
                orNull(cells.text(IntakeField.STREET, 160)),
                orNull(cells.text(IntakeField.TOWN, 80)),
                orNull(cells.text(IntakeField.STATE, 40)),
                orNull(cells.text(IntakeField.ZIP, 12)),
                latitude,
                longitude,
                loads(cells),
                false,
                false,
                false,
                known(cells, IntakeField.UTILITY, here.utilities, "utilities"),
                known(cells, IntakeField.PERMIT_OFFICE, here.permitOffices, "permit offices"),
                meter.isEmpty() ? List.of() : List.of(meter));
    }

    private static @Nullable UUID known(RowReader cells, IntakeField field, Map<String, UUID> ids, String settings) {
        String name = cells.text(field);
        if (name.isEmpty()) {
            return null;
        }
        UUID id = ids.get(name.toLowerCase(Locale.ROOT));
        if (id == null) {
            cells.isWrong(field.words() + ": the branch knows no “" + name + "”; add it under " + settings
                    + " or correct the name");
        }
        return id;
    }

    /** The words people use for what stands on a site; a word that says nothing of it is no mistake. */
    private static Set<SiteLoad> loads(RowReader cells) {
        String words = cells.text(IntakeField.ON_SITE).toLowerCase(Locale.ROOT);
        Set<SiteLoad> loads = EnumSet.noneOf(SiteLoad.class);
        Map.of(
                        "poultry", SiteLoad.POULTRY,
                        "dairy", SiteLoad.DAIRY,
                        "swine", SiteLoad.SWINE,
                        "cold", SiteLoad.COLD_STORE,
                        "greenhouse", SiteLoad.GREENHOUSE,
                        "home", SiteLoad.HOME)
                .forEach((word, load) -> {
                    if (words.contains(word)) {
                        loads.add(load);
                    }
                });
        if (words.equals("res") || words.startsWith("resid")) {
            loads.add(SiteLoad.HOME);
        }
        return loads;
    }

    private ProjectFacts.Contract contract(RowReader cells, List<String> notes) {
        Integer modules = cells.whole(IntakeField.MODULES, ProjectLimits.MODULES);
        BigDecimal moduleW = cells.number(IntakeField.MODULE_W, ProjectLimits.MODULE_W);
        BigDecimal tilt = cells.number(IntakeField.TILT, ProjectLimits.TILT_DEG);
        BigDecimal azimuth = cells.number(IntakeField.AZIMUTH, AZIMUTH_AS_WRITTEN);
        if (azimuth != null && azimuth.compareTo(BigDecimal.valueOf(360)) == 0) {
            azimuth = BigDecimal.ZERO;
        }
        boolean watts = choices.sizeUnit() == IntakeChoices.SizeUnit.WATTS;
        BigDecimal size = cells.number(IntakeField.SIZE_DC, ProjectLimits.SYSTEM_KW, watts ? KW_PER_W : BigDecimal.ONE);
        Optional<Mounting> mounting = mounting(cells, notes);
        boolean anyOfArray = modules != null || tilt != null || azimuth != null;
        List<ProjectFacts.ArrayFacts> arrays = mounting.isPresent() && anyOfArray
                ? List.of(new ProjectFacts.ArrayFacts(mounting.get(), modules, moduleW, tilt, azimuth))
                : List.of();
        return new ProjectFacts.Contract(
                size,
                cells.number(IntakeField.SIZE_AC, ProjectLimits.SYSTEM_KW),
                arrays,
                cells.whole(IntakeField.INVERTERS, ProjectLimits.INVERTERS),
                cells.number(IntakeField.INVERTER_KW_AC, ProjectLimits.INVERTER_KW),
                null,
                null,
                null,
                null,
                cells.whole(IntakeField.GUARANTEED_KWH, ProjectLimits.GUARANTEED_KWH),
                cells.number(IntakeField.PRICE, ProjectLimits.PRICE_USD));
    }

    private Optional<Mounting> mounting(RowReader cells, List<String> notes) {
        String said = cells.text(IntakeField.MOUNTING).toLowerCase(Locale.ROOT);
        Boolean ground = cells.yesOrNo(IntakeField.GROUND_MOUNTED);
        if (said.contains("ground") || Boolean.TRUE.equals(ground)) {
            return Optional.of(Mounting.GROUND);
        }
        if (said.contains("flat")) {
            return Optional.of(Mounting.FLAT_ROOF);
        }
        if (said.contains("roof") || said.contains("pitch")) {
            return Optional.of(Mounting.PITCHED_ROOF);
        }
        if (Boolean.FALSE.equals(ground) && choices.unsaidMounting() == IntakeChoices.Unsaid.GROUND) {
            return Optional.empty();
        }
        Optional<Mounting> assumed = choices.unsaidMounting().mounting();
        assumed.ifPresent(mounting -> notes.add("mounting not said, taken as " + mounting.words()));
        return assumed;
    }

    private static @Nullable String orNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
