package org.trammel.shop.routes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;

/** The routes the program ships for a shop that has none: one for each metal and kind, to be released by its QA lead. */
final class StarterRoutes {

    private static final String FOLDER = "classpath:/routes/";

    private StarterRoutes() {}

    /** All of them, children before the routes that name them. */
    static List<RouteFile> all() {
        PathMatchingResourcePatternResolver resources = new PathMatchingResourcePatternResolver();
        RouteFiles files = new RouteFiles(path -> text(resources.getResource(FOLDER + path)));
        try {
            return Arrays.stream(resources.getResources(FOLDER + "*.yaml"))
                    .map(Resource::getFilename)
                    .sorted()
                    .map(files::read)
                    .sorted(Comparator.comparing(file -> !file.children().isEmpty()))
                    .toList();
        } catch (IOException e) {
            throw new IllegalStateException("The starter routes cannot be read", e);
        }
    }

    private static @Nullable String text(Resource resource) {
        try {
            return resource.exists() ? resource.getContentAsString(StandardCharsets.UTF_8) : null;
        } catch (IOException e) {
            throw new IllegalStateException(resource + " cannot be read", e);
        }
    }
}
