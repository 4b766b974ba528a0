package org.plumbrow.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import jakarta.persistence.Entity;
import java.util.Set;
import org.jspecify.annotations.NullMarked;
import org.springframework.data.repository.Repository;
import org.springframework.stereotype.Controller;

/** The rules of the house that the compiler does not hold. Each is seen to fail in {@link HouseRulesTest}. */
final class HouseRules {

    private static final Set<String> CLOCK_READERS = Set.of("now", "currentTimeMillis", "nanoTime", "random");

    static final ArchRule THE_CORE_IS_PURE = classes()
            .that()
            .resideInAPackage("..calc..")
            .and()
            .doNotHaveSimpleName("package-info")
            .should()
            .onlyDependOnClassesThat(DescribedPredicate.or(
                            JavaClass.Predicates.resideInAnyPackage(
                                    "java..",
                                    "javax.xml.stream..",
                                    "org.plumbrow.calc..",
                                    "org.apache.commons.statistics..",
                                    "net.e175.."),
                            JavaClass.Predicates.resideInAnyPackage(
                                    "com.google.ortools..", "com.google.protobuf..", "org.jspecify.."))
                    .as("belong to the core, the JDK or a numeric library"))
            .because("a computation is tested, reused and moved without any framework");

    static final ArchRule THE_CORE_ASKS_NO_CLOCK_AND_NO_CHANCE = noClasses()
            .that()
            .resideInAPackage("..calc..")
            .should()
            .accessTargetWhere(readsClockOrChance())
            .because("the same input gives the same result");

    static final ArchRule THE_CORE_TOUCHES_NOTHING_OUTSIDE = noClasses()
            .that()
            .resideInAPackage("..calc..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.sql..", "java.net..", "java.nio.file..")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(java.io.File.class)
            .because("records in, records out");

    static final ArchRule TWO_PACKAGES_ASK_THE_SOLVER = noClasses()
            .that()
            .resideOutsideOfPackages("..calc.planning.exact..", "..calc.planning.singleproject.proof..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.google.ortools..")
            .because("the solver's library may be missing, and only those who say so may need it");

    /** A record's {@code setUpDays()} takes nothing and so sets nothing. */
    static final ArchRule NOTHING_IS_SET = noMethods()
            .that(DescribedPredicate.describe(
                    "take something",
                    (JavaMethod method) -> !method.getRawParameterTypes().isEmpty()))
            .should()
            .haveNameMatching("set[A-Z].*")
            .because("a change is a verb of the trade that checks, changes and says what happened");

    static final ArchRule NAMES_SAY_THE_THING = noClasses()
            .should()
            .haveNameMatching(".*(Manager|Helper|Util|Utils|Impl)(\\$.*)?")
            .orShould()
            .haveNameMatching(".*\\.[^.]*Common[^.]*")
            .because("a name that fits everything says nothing");

    static final ArchRule PACKAGES_ARE_NULL_MARKED = classes()
            .should(new ArchCondition<>("live in a package that is @NullMarked") {
                @Override
                public void check(JavaClass item, ConditionEvents events) {
                    if (!item.getPackage().isAnnotatedWith(NullMarked.class)) {
                        events.add(SimpleConditionEvent.violated(
                                item, item.getName() + " lives in " + item.getPackageName() + ", not @NullMarked"));
                    }
                }
            })
            .because("null is not passed around");

    static final ArchRule WHAT_A_ROOM_STORES_AND_SERVES_STAYS_INSIDE = noClasses()
            .that(DescribedPredicate.or(
                            annotated(Entity.class),
                            annotated(Controller.class),
                            JavaClass.Predicates.assignableTo(Repository.class))
                    .as("are entities, controllers or repositories"))
            .should()
            .haveModifier(JavaModifier.PUBLIC)
            .allowEmptyShould(true)
            .because("another room asks the service, it does not reach for the rows");

    private HouseRules() {}

    /** @param root package whose direct sub-packages are the rooms */
    static ArchRule noCyclesBelow(String root) {
        return slices().matching(root + ".(**)")
                .should()
                .beFreeOfCycles()
                .because("what depends on itself in a circle can only be read as one lump");
    }

    private static DescribedPredicate<JavaAccess<?>> readsClockOrChance() {
        return DescribedPredicate.describe("asks the clock or chance", access -> isClockOrChance(access.getTarget()));
    }

    private static boolean isClockOrChance(AccessTarget target) {
        String owner = target.getOwner().getName();
        boolean noSeed = owner.equals("java.util.Random")
                && target instanceof AccessTarget.ConstructorCallTarget made
                && made.getRawParameterTypes().isEmpty();
        boolean asked =
                (owner.startsWith("java.time.") || owner.equals("java.lang.System") || owner.equals("java.lang.Math"))
                        && CLOCK_READERS.contains(target.getName());
        return noSeed
                || asked
                || owner.equals("java.util.concurrent.ThreadLocalRandom")
                || owner.equals("java.security.SecureRandom");
    }

    private static DescribedPredicate<JavaClass> annotated(Class<? extends java.lang.annotation.Annotation> type) {
        return DescribedPredicate.describe(
                "annotated with @" + type.getSimpleName(), item -> item.isAnnotatedWith(type));
    }
}
