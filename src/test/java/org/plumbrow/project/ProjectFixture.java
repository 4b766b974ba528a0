package org.plumbrow.project;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.project.gate.GateRoad;
import org.springframework.stereotype.Component;

/**
 * Projects for tests, opened through the service as a person would: inject it, then
 * {@code projects.aDairyGroundMount().named("North barn").in(branch).reached(PERMITTED).build()}.
 */
@Component
public class ProjectFixture {

    private final TestWorld world;
    private final ProjectRegister register;
    private final GateRoad road;

    ProjectFixture(TestWorld world, ProjectRegister register, GateRoad road) {
        this.world = world;
        this.register = register;
        this.road = road;
    }

    /** 99 kW DC beside a dairy with a generator. */
    public Draft aDairyGroundMount() {
        return new Draft("Sedge Hollow Dairy", "4 Sedge Hollow Road", Set.of(SiteLoad.DAIRY, SiteLoad.HOME), true)
                .system("99", "75", Mounting.GROUND, 180, "550", "25", "180", 3, "25")
                .quantities(112, 10, 380, 40);
    }

    /** 9.2 kW DC on a pitched roof. */
    public Draft aHomeRoof() {
        return new Draft("Alder Lane 12", "12 Alder Lane", Set.of(SiteLoad.HOME), false)
                .system("9.2", "7.6", Mounting.PITCHED_ROOF, 23, "400", "30", "195", 1, "7.6");
    }

    /** 50 kW DC on the flat roof of a school with three phases. */
    public Draft aSchoolFlatRoof() {
        return new Draft("Quillback School", "1 School Hill", Set.of(), false)
                .system("49.5", "40", Mounting.FLAT_ROOF, 90, "550", "10", "180", 1, "40")
                .threePhase();
    }

    /** 60 kW DC in the field of four poultry houses with a generator. */
    public Draft aPoultryGroundMount() {
        return new Draft("Marl Creek Poultry", "88 Marl Creek Road", Set.of(SiteLoad.POULTRY), true)
                .system("60.5", "50", Mounting.GROUND, 110, "550", "25", "180", 2, "25")
                .quantities(68, 6, 420, 0);
    }

    /** What is known of the project that a test wants. */
    public final class Draft {

        private String name;
        private final String street;
        private final Set<SiteLoad> loads;
        private final boolean generator;
        private boolean threePhase;
        private @Nullable UUID utilityId;
        private @Nullable UUID permitOfficeId;
        private List<String> meters = List.of("55 120 " + System.nanoTime() % 1_000_000);
        private ProjectFacts.Contract contract =
                new ProjectFacts.Contract(null, null, List.of(), null, null, null, null, null, null, null, null);
        private NewProject.@Nullable NewPromise promise =
                new NewProject.NewPromise(Milestone.SYSTEM_ON, LocalDate.of(2027, 4, 16), 0, "Ines", "");
        private final Map<Duty, ProjectFacts.InCharge> people = new EnumMap<>(Duty.class);
        private @Nullable String reference;
        private @Nullable TestBranch branch;
        private @Nullable Stage reached;

        private Draft(String name, String street, Set<SiteLoad> loads, boolean generator) {
            this.name = name;
            this.street = street;
            this.loads = loads;
            this.generator = generator;
        }

        private Draft system(
                String kwDc,
                String kwAc,
                Mounting mounting,
                int modules,
                String moduleW,
                String tilt,
                String azimuth,
                int inverters,
                String inverterKwAc) {
            contract = new ProjectFacts.Contract(
                    new BigDecimal(kwDc),
                    new BigDecimal(kwAc),
                    List.of(new ProjectFacts.ArrayFacts(
                            mounting, modules, new BigDecimal(moduleW), new BigDecimal(tilt), new BigDecimal(azimuth))),
                    inverters,
                    new BigDecimal(inverterKwAc),
                    null,
                    null,
                    null,
                    null,
                    (int) (Double.parseDouble(kwDc) * 1200),
                    new BigDecimal(kwDc).multiply(new BigDecimal("2000")));
            return this;
        }

        private Draft quantities(int posts, int strings, int trenchFt, int boreFt) {
            ProjectFacts.Contract c = contract;
            contract = new ProjectFacts.Contract(
                    c.systemKwDc(),
                    c.systemKwAc(),
                    c.arrays(),
                    c.inverters(),
                    c.inverterKwAc(),
                    posts,
                    strings,
                    trenchFt,
                    boreFt,
                    c.guaranteedKwhPerYear(),
                    c.priceUsd());
            return this;
        }

        public Draft named(String other) {
            name = other;
            return this;
        }

        public Draft in(TestBranch where) {
            branch = where;
            return this;
        }

        public Draft threePhase() {
            threePhase = true;
            return this;
        }

        public Draft at(UUID utility, @Nullable UUID permitOffice) {
            utilityId = utility;
            permitOfficeId = permitOffice;
            return this;
        }

        public Draft meters(String... numbers) {
            meters = List.of(numbers);
            return this;
        }

        public Draft promised(Milestone milestone, LocalDate day) {
            promise = new NewProject.NewPromise(milestone, day, 0, "Ines", "");
            return this;
        }

        public Draft withoutPrice() {
            ProjectFacts.Contract c = contract;
            contract = new ProjectFacts.Contract(
                    c.systemKwDc(),
                    c.systemKwAc(),
                    c.arrays(),
                    c.inverters(),
                    c.inverterKwAc(),
                    c.posts(),
                    c.strings(),
                    c.trenchFt(),
                    c.boreFt(),
                    c.guaranteedKwhPerYear(),
                    null);
            return this;
        }

        public Draft withoutPromise() {
            promise = null;
            return this;
        }

        public Draft inCharge(Duty duty, UUID personId, String personName) {
            people.put(duty, new ProjectFacts.InCharge(personId, personName));
            return this;
        }

        public Draft known(String as) {
            reference = as;
            return this;
        }

        /** Answers each item and passes each gate on the way, as people would. */
        public Draft reached(Stage stage) {
            reached = stage;
            return this;
        }

        /** Opens it as the branch's project manager, who is in charge of it unless somebody else is. @return its id */
        public UUID build() {
            TestBranch where = branch == null ? world.branch() : branch;
            people.putIfAbsent(
                    Duty.PROJECT_MANAGER,
                    new ProjectFacts.InCharge(
                            where.projectManager().personId(),
                            where.projectManager().name()));
            UUID id = world.as(where.projectManager(), () -> register.open(where.id(), begun()));
            if (reached != null) {
                road.walk(where, id, reached);
            }
            return id;
        }

        private NewProject begun() {
            return new NewProject(
                    name,
                    reference,
                    name + ", owner",
                    List.of(new NewProject.NewContact(
                            "Perrin Ash", "owner", "555-0100", "perrin@ash.example", "en", true)),
                    new ProjectFacts.Site(
                            street,
                            "Quillback",
                            "PA",
                            "16801",
                            new BigDecimal("40.79"),
                            new BigDecimal("-77.86"),
                            loads,
                            generator,
                            threePhase,
                            false,
                            utilityId,
                            permitOfficeId,
                            meters),
                    contract,
                    promise,
                    people);
        }
    }
}
