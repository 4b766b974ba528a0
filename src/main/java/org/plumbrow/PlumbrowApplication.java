package org.plumbrow;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts Plumbrow: one process, one PostgreSQL, any number of such processes beside each other. */
@SpringBootApplication
public class PlumbrowApplication {

    public static void main(String[] args) {
        SpringApplication.run(PlumbrowApplication.class, args);
    }
}
