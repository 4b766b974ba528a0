# Plumbrow in a container. Alone it keeps its own PostgreSQL in /data; with SPRING_DATASOURCE_URL it uses that server.
FROM maven:3.9-eclipse-temurin-17 AS build
WORKDIR /build
COPY . .
RUN mvn -B -q -Dmaven.test.skip=true package \
    && java -Djarmode=tools -jar target/plumbrow-*.jar extract --layers --launcher --destination layers

# A glibc system: the PostgreSQL that comes with the program does not run on musl.
FROM eclipse-temurin:17-jre-noble
# PostgreSQL asks the system for the name of its user, so a bare number is not enough.
RUN useradd --uid 10001 --no-create-home --shell /usr/sbin/nologin plumbrow \
    && mkdir /data && chown plumbrow /data
WORKDIR /app
COPY --from=build /build/layers/dependencies/ ./
COPY --from=build /build/layers/spring-boot-loader/ ./
COPY --from=build /build/layers/snapshot-dependencies/ ./
COPY --from=build /build/layers/application/ ./
USER 10001
VOLUME /data
# Inside a container "this machine only" would be nobody: what may reach it is decided by the ports that are published.
ENV PLUMBROW_DATA_DIR=/data SERVER_ADDRESS=0.0.0.0
EXPOSE 8080
HEALTHCHECK --interval=10s --timeout=5s --start-period=90s --retries=6 \
    CMD ["bash", "-c", "exec 3<>/dev/tcp/127.0.0.1/8080 && printf 'GET /actuator/health HTTP/1.0\\r\\n\\r\\n' >&3 && grep -q '\"status\":\"UP\"' <&3"]
# Half of 2 GB is enough for a branch of 1,200 projects; PostgreSQL and what Java keeps beside its heap take the rest.
ENTRYPOINT ["java", "-XX:MaxRAMPercentage=50", "org.springframework.boot.loader.launch.JarLauncher"]
