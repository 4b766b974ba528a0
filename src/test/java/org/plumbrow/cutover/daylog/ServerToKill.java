package org.plumbrow.cutover.daylog;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.UUID;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.web.SignedIn;
import org.plumbrow.web.Visitor;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.core.env.Environment;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.session.Session;
import org.springframework.session.SessionRepository;
import org.springframework.stereotype.Component;

/**
 * In a server that is to be killed: says where it listens. At its first start it also makes a project whose day log is
 * open, signs its project manager in, and says so.
 */
@Component
class ServerToKill implements ApplicationRunner {

    static final String START = "plumbrow.test.start";
    static final String FIRST = "first";
    static final String AGAIN = "again";
    static final String LISTENS = "to kill, port: ";
    static final String WORLD = "to kill, world: ";

    private final TestWorld world;
    private final ProjectFixture projects;
    private final CutoverRoad road;
    private final DayLogBook book;
    private final SessionRepository<? extends Session> sessions;
    private final Environment environment;

    ServerToKill(
            TestWorld world,
            ProjectFixture projects,
            CutoverRoad road,
            DayLogBook book,
            SessionRepository<? extends Session> sessions,
            Environment environment) {
        this.world = world;
        this.projects = projects;
        this.road = road;
        this.book = book;
        this.sessions = sessions;
        this.environment = environment;
    }

    @Override
    public void run(ApplicationArguments started) {
        List<String> start = started.getOptionValues(START);
        if (start == null) {
            return;
        }
        if (start.contains(FIRST)) {
            TestBranch branch = world.branch();
            Visitor person = branch.projectManager();
            UUID project = projects.aHomeRoof().in(branch).build();
            road.windowOfToday(project, branch.id());
            world.as(person, () -> book.open(project, Service.SINGLE_PHASE_120_240, "Tamsin"));
            System.out.println(WORLD + project + " " + person.personId() + " " + signedIn(sessions, person));
        }
        System.out.println(LISTENS + environment.getProperty("local.server.port"));
    }

    /** @return the cookie of a session of this person */
    private static <S extends Session> String signedIn(SessionRepository<S> sessions, Visitor person) {
        S session = sessions.createSession();
        session.setAttribute(
                HttpSessionSecurityContextRepository.SPRING_SECURITY_CONTEXT_KEY,
                new SecurityContextImpl(UsernamePasswordAuthenticationToken.authenticated(
                        new SignedIn(person.personId()), null, List.of())));
        sessions.save(session);
        return Base64.getEncoder().encodeToString(session.getId().getBytes(StandardCharsets.UTF_8));
    }
}
