package org.plumbrow.demo;

import java.util.Map;
import org.springframework.boot.EnvironmentPostProcessor;
import org.springframework.boot.SpringApplication;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.MapPropertySource;

/** With the demo the server listens on this machine only, unless an address is set. */
public class LoopbackWithDemo implements EnvironmentPostProcessor {

    @Override
    public void postProcessEnvironment(ConfigurableEnvironment environment, SpringApplication application) {
        boolean demo = environment.getProperty("plumbrow.demo", Boolean.class, true);
        if (demo && !environment.containsProperty("server.address")) {
            environment
                    .getPropertySources()
                    .addLast(new MapPropertySource("demo", Map.of("server.address", "127.0.0.1")));
        }
    }
}
